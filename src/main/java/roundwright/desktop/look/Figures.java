package roundwright.desktop.look;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Paints numbers with every digit as wide as the widest, so that figures below each other line up. */
public final class Figures {
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
    private static final int PLAIN = 128;
    private static final Map<Font, double[]> ADVANCES = new ConcurrentHashMap<>();

    private Figures() {}

    /** Width in pixels of the text in a font, its digits all alike. */
    public static double width(String text, Font font) {
        double digit = digit(font);
        return text.chars()
                .mapToDouble(character -> Character.isDigit(character) ? digit : advance((char) character, font))
                .sum();
    }

    /** Paints the text with its left end at x. */
    public static void paint(Graphics2D graphics, String text, Font font, double x, double baseline) {
        graphics.setFont(font);
        double digit = digit(font);
        double at = x;
        for (char character : text.toCharArray()) {
            double own = advance(character, font);
            double given = Character.isDigit(character) ? digit : own;
            graphics.drawString(String.valueOf(character), (float) (at + (given - own) / 2), (float) baseline);
            at += given;
        }
    }

    /** Paints the text with its right end at x. */
    public static void paintRight(Graphics2D graphics, String text, Font font, double x, double baseline) {
        paint(graphics, text, font, x - width(text, font), baseline);
    }

    private static double digit(Font font) {
        return advance('0', font);
    }

    /** Measuring takes long, and a grid of counts asks for the same few figures over and over. */
    private static double advance(char character, Font font) {
        if (character >= PLAIN) {
            return measured(character, font);
        }
        double[] known = ADVANCES.computeIfAbsent(font, absent -> unmeasured());
        if (Double.isNaN(known[character])) {
            known[character] = measured(character, font);
        }
        return known[character];
    }

    private static double[] unmeasured() {
        double[] advances = new double[PLAIN];
        Arrays.fill(advances, Double.NaN);
        return advances;
    }

    private static double measured(char character, Font font) {
        return font.getStringBounds(String.valueOf(character), CONTEXT).getWidth();
    }
}
