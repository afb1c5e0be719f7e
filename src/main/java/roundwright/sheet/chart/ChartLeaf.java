package roundwright.sheet.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import roundwright.notation.Terms;
import roundwright.pattern.Step;
import roundwright.pattern.Steps;
import roundwright.pattern.chart.ChartSetting;
import roundwright.pattern.chart.ChartWords;
import roundwright.sheet.markup.Picture;
import roundwright.sheet.markup.Stroke;

/**
 * A chart on a leaf of its own: what it is of, the chart, and the key to its signs. Words are drawn as outlines, so that the leaf looks the
 * same wherever it is opened.
 */
public final class ChartLeaf {
    private static final double WIDTH = 480;
    private static final double PAD = 24;
    private static final double LINE = 24;
    private static final float TITLE = 18;
    private static final float TEXT = 13;
    private static final Color INK = new Color(0x2A2521);
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    private final Font font;
    private final List<Stroke> strokes = new ArrayList<>();
    private double y = PAD;

    private ChartLeaf(Font font) {
        this.font = font;
    }

    /**
     * The leaf of a round.
     *
     * @param title what the chart is of
     * @param font for every word
     */
    public static Picture of(String title, Steps steps, Terms terms, ChartSetting setting, Font font) {
        ChartLeaf leaf = new ChartLeaf(font);
        leaf.strokes.add(new Stroke(new Rectangle2D.Double(), Color.WHITE, 0));
        leaf.words(title, TITLE, PAD);
        leaf.y += LINE / 2;
        Picture chart = ChartPicture.of(steps, terms, WIDTH - 2 * PAD, setting);
        leaf.put(chart, PAD);
        leaf.y += chart.height() + LINE / 2;
        leaf.key(ChartWords.signs(steps, terms));
        double height = leaf.y + PAD;
        leaf.strokes.set(0, new Stroke(new Rectangle2D.Double(0, 0, WIDTH, height), Color.WHITE, 0));
        return new Picture(WIDTH, height, leaf.strokes, title + ". " + chart.words());
    }

    private void put(Picture picture, double x) {
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        for (Stroke stroke : picture.strokes()) {
            Shape shape = place.createTransformedShape(stroke.shape());
            strokes.add(new Stroke(shape, stroke.color(), stroke.width()));
        }
    }

    private void words(String text, float size, double x) {
        y += size;
        outline(text, size, x, y);
    }

    private void outline(String text, float size, double x, double baseline) {
        Shape outline = font.deriveFont(size).createGlyphVector(CONTEXT, text).getOutline((float) x, (float) baseline);
        strokes.add(new Stroke(outline, INK, 0));
    }

    /** The signs with their names, going on below where the leaf's width is used up. */
    private void key(Map<String, Step> signs) {
        double x = PAD;
        for (Map.Entry<String, Step> sign : signs.entrySet()) {
            Picture drawn = ChartPicture.sign(sign.getValue(), sign.getKey());
            double words = font.deriveFont(TEXT)
                    .getStringBounds(sign.getKey(), CONTEXT)
                    .getWidth();
            if (x > PAD && x + drawn.width() + words > WIDTH - PAD) {
                x = PAD;
                y += LINE;
            }
            put(drawn, x);
            outline(sign.getKey(), TEXT, x + drawn.width() + 6, y + drawn.height() * 0.8);
            x += drawn.width() + words + LINE;
        }
        y += LINE;
    }
}
