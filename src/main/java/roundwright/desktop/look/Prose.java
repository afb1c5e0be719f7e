package roundwright.desktop.look;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.awt.font.FontRenderContext;
import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.text.AttributedString;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/**
 * A paragraph that breaks its lines to its width. Words between two pairs of stars are strong:
 * {@code "**Pull back** to round 12"}.
 */
public class Prose extends JComponent implements Flowing {
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
    private static final double LEADING = 1.42;
    private static final int WIDEST = 90;

    private final Type type;
    private final Type strong;
    private final Tone tone;
    private String text;
    private transient List<Paragraph> paragraphs = List.of();
    private final transient Map<Integer, Integer> heights = new HashMap<>();
    private transient List<TextLayout> drawn = List.of();
    private int drawnAt = -1;
    private Font measuredIn;

    /** Measures words once, for whatever width they are broken to. */
    private record Paragraph(LineBreakMeasurer words, int end) {
        int lines(int width) {
            int lines = 0;
            for (int at = 0; at < end; lines++) {
                words.setPosition(at);
                at = words.nextOffset(width);
            }
            return lines;
        }

        List<TextLayout> broken(int width) {
            List<TextLayout> lines = new ArrayList<>();
            words.setPosition(0);
            while (words.getPosition() < end) {
                lines.add(words.nextLayout(width));
            }
            return lines;
        }
    }

    public Prose(String text, Type type, Type strong, Tone tone) {
        this.type = type;
        this.strong = strong;
        this.tone = tone;
        this.text = text;
    }

    /** Words that are all of one type. */
    public static Prose of(String text, Type type, Tone tone) {
        return new Prose(text, type, type, tone);
    }

    public static Prose heading(String text) {
        return of(text, Type.HEADING, Tone.INK);
    }

    public static Prose body(String text) {
        return new Prose(text, Type.BODY, Type.STRONG, Tone.INK);
    }

    public static Prose muted(String text) {
        return new Prose(text, Type.SECOND, Type.SMALL_STRONG, Tone.MUTED);
    }

    public static Prose page(String text) {
        return new Prose(text, Type.PAGE, Type.PAGE_STRONG, Tone.INK);
    }

    /** Ties the words to the field that they name, as a label. */
    public Prose nameOf(JComponent field) {
        field.putClientProperty("labeledBy", this);
        field.getAccessibleContext().setAccessibleName(text());
        return this;
    }

    /** The text without its stars. */
    public String text() {
        return text.replace("**", "");
    }

    public void setText(String text) {
        if (!text.equals(this.text)) {
            this.text = text;
            measuredIn = null;
            revalidate();
            repaint();
        }
    }

    @Override
    public int heightFor(int width) {
        Insets insets = getInsets();
        measure();
        int lines = heights.computeIfAbsent(width - insets.left - insets.right, this::countLines);
        return lines == 0 ? 0 : (int) Math.ceil(lines * lineHeight()) + insets.top + insets.bottom;
    }

    private double lineHeight() {
        return type.font().getSize2D() * LEADING;
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : naturalWidth();
        return new Dimension(width, heightFor(width));
    }

    private int naturalWidth() {
        Insets insets = getInsets();
        double natural = 0;
        for (TextLayout line : lines(Space.of(WIDEST))) {
            natural = Math.max(natural, line.getAdvance());
        }
        return (int) Math.ceil(natural) + 1 + insets.left + insets.right;
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Space.of(6), getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        Insets insets = getInsets();
        smooth.setColor(tone.color());
        Font font = type.font();
        double ascent = font.getLineMetrics("x", CONTEXT).getAscent();
        double y = insets.top + (lineHeight() - font.getSize2D() * 1.2) / 2 + ascent;
        for (TextLayout line : lines(getWidth() - insets.left - insets.right)) {
            line.draw(smooth, insets.left, (float) y);
            y += lineHeight();
        }
        smooth.dispose();
    }

    /** Measuring words takes long, and a layout asks for one width and another again and again. */
    private void measure() {
        Font font = type.font();
        if (!font.equals(measuredIn)) {
            measuredIn = font;
            heights.clear();
            drawnAt = -1;
            paragraphs = Stream.of(text.split("\n"))
                    .filter(paragraph -> !paragraph.isBlank())
                    .map(this::paragraph)
                    .toList();
        }
    }

    private Paragraph paragraph(String words) {
        AttributedString styled = styled(words);
        return new Paragraph(
                new LineBreakMeasurer(styled.getIterator(), CONTEXT),
                styled.getIterator().getEndIndex());
    }

    private int countLines(int width) {
        return paragraphs.stream()
                .mapToInt(paragraph -> paragraph.lines(atLeast(width)))
                .sum();
    }

    private List<TextLayout> lines(int width) {
        measure();
        if (drawnAt != width) {
            drawnAt = width;
            drawn = paragraphs.stream()
                    .flatMap(paragraph -> paragraph.broken(atLeast(width)).stream())
                    .toList();
        }
        return drawn;
    }

    private static int atLeast(int width) {
        return Math.max(width, Space.of(4));
    }

    private AttributedString styled(String paragraph) {
        String[] runs = paragraph.split("\\*\\*", -1);
        AttributedString styled = new AttributedString(String.join("", runs));
        int at = 0;
        for (int i = 0; i < runs.length; i++) {
            if (!runs[i].isEmpty()) {
                Font font = (i % 2 == 0 ? type : strong).font();
                styled.addAttribute(TextAttribute.FONT, font, at, at + runs[i].length());
                at += runs[i].length();
            }
        }
        return styled;
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.LABEL;
                }

                @Override
                public String getAccessibleName() {
                    return text();
                }
            };
        }
        return accessibleContext;
    }
}
