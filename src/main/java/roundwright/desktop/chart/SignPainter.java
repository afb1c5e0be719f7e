package roundwright.desktop.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import roundwright.notation.Stitch;
import roundwright.pattern.Step;

/**
 * Draws the trade's signs, as the Japanese standard and the craft councils draw them. A sign stands on the origin and grows
 * towards negative y; a double crochet (US single) is one unit high.
 */
final class SignPainter {
    private SignPainter() {}

    /** Height of a sign in units: a taller stitch has a taller sign. */
    static double height(Step step) {
        return switch (step.stitch()) {
            case CHAIN, SLIP_STITCH -> 0.55;
            case HALF_TREBLE -> 1.4;
            case TREBLE, BOBBLE, POPCORN, PUFF, CLUSTER, SHELL, V_STITCH -> 1.8;
            case DOUBLE_TREBLE -> 2.3;
            case TRIPLE_TREBLE -> 2.8;
            case QUADRUPLE_TREBLE -> 3.2;
            default -> 1;
        };
    }

    /** Draws the sign of a step at a size in pixels a unit. */
    static void paint(Graphics2D graphics, Step step, double unit) {
        Graphics2D copy = (Graphics2D) graphics.create();
        copy.scale(unit, unit);
        copy.setStroke(
                new BasicStroke((float) (1.7 / Math.max(unit, 6)), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        paintStitch(copy, step.stitch(), height(step));
        paintLoop(copy, step.loop());
        copy.dispose();
    }

    private static void paintStitch(Graphics2D graphics, Stitch stitch, double height) {
        switch (stitch) {
            case CHAIN -> graphics.draw(new Ellipse2D.Double(-0.5, -0.5, 1, 0.5));
            case SLIP_STITCH -> graphics.fill(new Ellipse2D.Double(-0.3, -0.5, 0.6, 0.5));
            case HALF_TREBLE -> upright(graphics, height, 0);
            case TREBLE -> upright(graphics, height, 1);
            case DOUBLE_TREBLE -> upright(graphics, height, 2);
            case TRIPLE_TREBLE -> upright(graphics, height, 3);
            case QUADRUPLE_TREBLE -> upright(graphics, height, 4);
            case CRAB_STITCH -> crab(graphics);
            case BOBBLE -> pod(graphics, height, 3, true);
            case POPCORN -> popcorn(graphics, height);
            case PUFF -> pod(graphics, height, 3, false);
            case CLUSTER -> cluster(graphics, height);
            case SHELL -> fan(graphics, height, 5);
            case V_STITCH -> fan(graphics, height, 2);
            case PICOT -> picot(graphics);
            default -> cross(graphics);
        }
    }

    private static void cross(Graphics2D graphics) {
        graphics.draw(new Line2D.Double(-0.36, -0.86, 0.36, -0.14));
        graphics.draw(new Line2D.Double(0.36, -0.86, -0.36, -0.14));
    }

    private static void upright(Graphics2D graphics, double height, int slashes) {
        graphics.draw(new Line2D.Double(0, 0, 0, -height));
        graphics.draw(new Line2D.Double(-0.4, -height, 0.4, -height));
        slashes(graphics, 0, height, slashes);
    }

    private static void slashes(Graphics2D graphics, double x, double height, int slashes) {
        for (int i = 0; i < slashes; i++) {
            double y = -height * 0.72 + i * 0.3;
            graphics.draw(new Line2D.Double(x - 0.24, y - 0.13, x + 0.24, y + 0.13));
        }
    }

    private static void crab(Graphics2D graphics) {
        cross(graphics);
        Path2D tilde = new Path2D.Double();
        tilde.moveTo(-0.4, -1.05);
        tilde.curveTo(-0.2, -1.3, 0.2, -0.85, 0.4, -1.1);
        graphics.draw(tilde);
    }

    /** Uprights that share foot and head. */
    private static void pod(Graphics2D graphics, double height, int strands, boolean slashed) {
        for (int i = 0; i < strands; i++) {
            double lean = (i - (strands - 1) / 2.0) * 0.5;
            Path2D strand = new Path2D.Double();
            strand.moveTo(0, 0);
            strand.curveTo(lean, -height * 0.3, lean, -height * 0.7, 0, -height);
            graphics.draw(strand);
            slashes(graphics, lean * 0.75, height * 0.8, slashed ? 1 : 0);
        }
        graphics.draw(new Line2D.Double(-0.35, -height, 0.35, -height));
    }

    private static void popcorn(Graphics2D graphics, double height) {
        pod(graphics, height * 0.85, 3, true);
        graphics.draw(new Ellipse2D.Double(-0.28, -height, 0.56, height * 0.15));
    }

    /** Slashed uprights that stand apart and meet at the top. */
    private static void cluster(Graphics2D graphics, double height) {
        for (int i = -1; i <= 1; i++) {
            graphics.draw(new Line2D.Double(i * 0.45, 0, 0, -height));
            slashes(graphics, i * 0.16, height, 1);
        }
        graphics.draw(new Line2D.Double(-0.35, -height, 0.35, -height));
    }

    /** Slashed uprights that fan out from one foot. */
    private static void fan(Graphics2D graphics, double height, int strands) {
        for (int i = 0; i < strands; i++) {
            Graphics2D turned = (Graphics2D) graphics.create();
            turned.rotate((i - (strands - 1) / 2.0) * 0.32);
            upright(turned, height, 1);
            turned.dispose();
        }
    }

    private static void picot(Graphics2D graphics) {
        for (int i = 0; i < 3; i++) {
            Graphics2D turned = (Graphics2D) graphics.create();
            turned.translate(0, -0.45);
            turned.rotate(Math.toRadians(60 + 120 * i));
            turned.draw(new Ellipse2D.Double(-0.28, -0.5, 0.56, 0.28));
            turned.dispose();
        }
        graphics.fill(new Ellipse2D.Double(-0.1, -0.1, 0.2, 0.2));
    }

    private static void paintLoop(Graphics2D graphics, Step.Loop loop) {
        switch (loop) {
            case BACK -> graphics.draw(new Arc2D.Double(-0.35, 0.06, 0.7, 0.4, 0, 180, Arc2D.OPEN));
            case FRONT -> graphics.draw(new Arc2D.Double(-0.35, -0.1, 0.7, 0.4, 180, 180, Arc2D.OPEN));
            case THIRD -> graphics.draw(new Line2D.Double(-0.35, 0.15, 0.35, 0.15));
            case FRONT_POST -> graphics.draw(new Arc2D.Double(-0.1, -0.15, 0.5, 0.45, 90, -230, Arc2D.OPEN));
            case BACK_POST -> graphics.draw(new Arc2D.Double(-0.4, -0.15, 0.5, 0.45, 90, 230, Arc2D.OPEN));
            default -> {
                // both loops, or a space: the bare sign
            }
        }
    }
}
