package roundwright.desktop.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.util.OptionalInt;
import roundwright.desktop.look.Tone;
import roundwright.pattern.chart.ChartDrawing;

/** Draws a chart in the tones of the window; the chosen step lies on a wash with an edge. */
record ChartPainter(ChartDrawing drawing, OptionalInt chosen) {
    void paint(Graphics2D graphics) {
        chosen.ifPresent(step -> drawing.standsOf(step).forEach(stand -> halo(graphics, stand)));
        drawing.strokes().forEach(stroke -> paint(graphics, stroke));
    }

    private void halo(Graphics2D graphics, ChartDrawing.Stand stand) {
        double reach = stand.reach();
        Ellipse2D halo = new Ellipse2D.Double(stand.x() - reach, stand.y() - reach, 2 * reach, 2 * reach);
        graphics.setColor(Tone.WASH.color());
        graphics.fill(halo);
        graphics.setColor(Tone.PINE.color());
        graphics.setStroke(new BasicStroke((float) (drawing.width() / 200)));
        graphics.draw(halo);
    }

    private void paint(Graphics2D graphics, ChartDrawing.Stroke stroke) {
        graphics.setColor(color(stroke));
        if (stroke.mark().filled()) {
            graphics.fill(stroke.mark().shape());
        } else {
            graphics.setStroke(new BasicStroke((float) stroke.width(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            graphics.draw(stroke.mark().shape());
        }
    }

    private Color color(ChartDrawing.Stroke stroke) {
        boolean ofChosen = chosen.isPresent() && chosen.getAsInt() == stroke.step();
        Tone tone = switch (stroke.ink()) {
            case PLAIN -> ofChosen ? Tone.PINE : Tone.INK;
            case SHAPING -> ofChosen ? Tone.PINE : Tone.MARIGOLD;
            case BELOW -> ofChosen ? Tone.PINE : Tone.MUTED;
            case START -> Tone.PINE;
            case WRONG -> Tone.OVER;
        };
        return tone.color();
    }
}
