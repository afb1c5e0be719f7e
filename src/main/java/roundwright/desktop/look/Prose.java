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
    private static final int MOST_WIDTHS = 6;

    private final Type type;
    private final Type strong;
    private final Tone tone;
    private String text;
    private final transient Map<Integer, List<TextLayout>> broken = new HashMap<>();
    private Font brokenIn;

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
            broken.clear();
            revalidate();
            repaint();
        }
    }

    @Override
    public int heightFor(int width) {
        Insets insets = getInsets();
        int lines = lines(width - insets.left - insets.right).size();
        return lines == 0 ? 0 : (int) Math.ceil(lines * lineHeight()) + insets.top + insets.bottom;
    }

    private double lineHeight() {
        return type.font().getSize2D() * LEADING;
    }

    @Override
    public Dimension getPreferredSize() {
        Insets insets = getInsets();
        double natural = 0;
        for (TextLayout line : lines(Space.of(WIDEST))) {
            natural = Math.max(natural, line.getAdvance());
        }
        int width = getWidth() > 0 ? getWidth() : (int) Math.ceil(natural) + 1 + insets.left + insets.right;
        return new Dimension(width, heightFor(width));
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

    /** Breaking lines takes long, and a layout asks for the same width again and again. */
    private List<TextLayout> lines(int width) {
        Font font = type.font();
        if (!font.equals(brokenIn) || broken.size() > MOST_WIDTHS) {
            broken.clear();
            brokenIn = font;
        }
        return broken.computeIfAbsent(width, this::breakLines);
    }

    private List<TextLayout> breakLines(int width) {
        List<TextLayout> lines = new ArrayList<>();
        for (String paragraph : text.split("\n")) {
            if (!paragraph.isBlank()) {
                lines.addAll(broken(paragraph, Math.max(width, Space.of(4))));
            }
        }
        return lines;
    }

    private List<TextLayout> broken(String paragraph, int width) {
        AttributedString styled = styled(paragraph);
        LineBreakMeasurer measurer = new LineBreakMeasurer(styled.getIterator(), CONTEXT);
        List<TextLayout> lines = new ArrayList<>();
        int end = styled.getIterator().getEndIndex();
        while (measurer.getPosition() < end) {
            lines.add(measurer.nextLayout(width));
        }
        return lines;
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
