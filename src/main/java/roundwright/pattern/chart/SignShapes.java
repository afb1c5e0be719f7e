package roundwright.pattern.chart;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import roundwright.notation.Stitch;
import roundwright.pattern.Step;

/**
 * The shapes of the trade's signs, as the Japanese standard and the craft councils draw them. A sign stands on the origin and grows
 * towards negative y; a double crochet (US single) is one unit high.
 */
public final class SignShapes {
    private final List<SignMark> marks = new ArrayList<>();

    private SignShapes() {}

    /** Height of a sign in units: a taller stitch has a taller sign. */
    public static double height(Step step) {
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

    /** The sign of a step: its stitch, and where the hook goes in. */
    public static List<SignMark> of(Step step) {
        SignShapes shapes = new SignShapes();
        shapes.stitch(step.stitch(), height(step));
        shapes.loop(step.loop());
        return List.copyOf(shapes.marks);
    }

    private void line(Shape shape) {
        marks.add(SignMark.line(shape));
    }

    private void line(double fromX, double fromY, double toX, double toY) {
        line(new Line2D.Double(fromX, fromY, toX, toY));
    }

    private void stitch(Stitch stitch, double height) {
        switch (stitch) {
            case CHAIN -> line(new Ellipse2D.Double(-0.5, -0.5, 1, 0.5));
            case SLIP_STITCH -> marks.add(SignMark.dot(new Ellipse2D.Double(-0.3, -0.5, 0.6, 0.5)));
            case HALF_TREBLE -> upright(height, 0);
            case TREBLE -> upright(height, 1);
            case DOUBLE_TREBLE -> upright(height, 2);
            case TRIPLE_TREBLE -> upright(height, 3);
            case QUADRUPLE_TREBLE -> upright(height, 4);
            case CRAB_STITCH -> crab();
            case BOBBLE -> pod(height, true);
            case POPCORN -> popcorn(height);
            case PUFF -> pod(height, false);
            case CLUSTER -> cluster(height);
            case SHELL -> fan(height, 5);
            case V_STITCH -> fan(height, 2);
            case PICOT -> picot();
            default -> cross();
        }
    }

    private void cross() {
        line(-0.36, -0.86, 0.36, -0.14);
        line(0.36, -0.86, -0.36, -0.14);
    }

    private void upright(double height, int slashes) {
        line(0, 0, 0, -height);
        line(-0.4, -height, 0.4, -height);
        slashes(0, height, slashes);
    }

    private void slashes(double x, double height, int slashes) {
        for (int i = 0; i < slashes; i++) {
            double y = -height * 0.72 + i * 0.3;
            line(x - 0.24, y - 0.13, x + 0.24, y + 0.13);
        }
    }

    private void crab() {
        cross();
        Path2D tilde = new Path2D.Double();
        tilde.moveTo(-0.4, -1.05);
        tilde.curveTo(-0.2, -1.3, 0.2, -0.85, 0.4, -1.1);
        line(tilde);
    }

    /** Uprights that share foot and head. */
    private void pod(double height, boolean slashed) {
        for (int i = -1; i <= 1; i++) {
            double lean = i * 0.5;
            Path2D strand = new Path2D.Double();
            strand.moveTo(0, 0);
            strand.curveTo(lean, -height * 0.3, lean, -height * 0.7, 0, -height);
            line(strand);
            slashes(lean * 0.75, height * 0.8, slashed ? 1 : 0);
        }
        line(-0.35, -height, 0.35, -height);
    }

    private void popcorn(double height) {
        pod(height * 0.85, true);
        line(new Ellipse2D.Double(-0.28, -height, 0.56, height * 0.15));
    }

    /** Slashed uprights that stand apart and meet at the top. */
    private void cluster(double height) {
        for (int i = -1; i <= 1; i++) {
            line(i * 0.45, 0, 0, -height);
            slashes(i * 0.16, height, 1);
        }
        line(-0.35, -height, 0.35, -height);
    }

    /** Slashed uprights that fan out from one foot. */
    private void fan(double height, int strands) {
        SignShapes one = new SignShapes();
        one.upright(height, 1);
        for (int i = 0; i < strands; i++) {
            AffineTransform turn = AffineTransform.getRotateInstance((i - (strands - 1) / 2.0) * 0.32);
            one.marks.forEach(mark -> line(turn.createTransformedShape(mark.shape())));
        }
    }

    private void picot() {
        for (int i = 0; i < 3; i++) {
            AffineTransform place = AffineTransform.getTranslateInstance(0, -0.45);
            place.rotate(Math.toRadians(60 + 120 * i));
            line(place.createTransformedShape(new Ellipse2D.Double(-0.28, -0.5, 0.56, 0.28)));
        }
        marks.add(SignMark.dot(new Ellipse2D.Double(-0.1, -0.1, 0.2, 0.2)));
    }

    private void loop(Step.Loop loop) {
        switch (loop) {
            case BACK -> line(new Arc2D.Double(-0.35, 0.06, 0.7, 0.4, 0, 180, Arc2D.OPEN));
            case FRONT -> line(new Arc2D.Double(-0.35, -0.1, 0.7, 0.4, 180, 180, Arc2D.OPEN));
            case THIRD -> line(-0.35, 0.15, 0.35, 0.15);
            case FRONT_POST -> line(new Arc2D.Double(-0.1, -0.15, 0.5, 0.45, 90, -230, Arc2D.OPEN));
            case BACK_POST -> line(new Arc2D.Double(-0.4, -0.15, 0.5, 0.45, 90, 230, Arc2D.OPEN));
            default -> {
                // both loops, or a space: the bare sign
            }
        }
    }
}
