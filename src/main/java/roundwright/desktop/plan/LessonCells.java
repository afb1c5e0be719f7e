package roundwright.desktop.plan;

import java.awt.Component;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import javax.swing.JTable;
import roundwright.desktop.look.Bar;
import roundwright.desktop.look.Cut;
import roundwright.desktop.look.Figures;
import roundwright.desktop.look.PaintedCell;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.wording.Wording;

/** Paints a cell of the lessons' table: the title with its remark, the date, the rounds, what is new, the minutes. */
final class LessonCells extends PaintedCell {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double PAD = 8;
    private static final double MORE = 32;
    private static final double CHIP = 22;
    private static final double CHIP_PAD = 16;
    private static final double BETWEEN = 6;
    private static final double LEAST_BAR = 24;

    private final transient LessonsPresenter presenter;
    private transient LessonRow row;
    private LessonColumn column = LessonColumn.LESSON;
    private boolean chosen;
    private boolean current;

    LessonCells(LessonsPresenter presenter) {
        this.presenter = presenter;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean hasFocus, int rowIndex, int columnIndex) {
        row = (LessonRow) value;
        column = LessonColumn.values()[columnIndex];
        chosen = rowIndex == presenter.chosen();
        current = rowIndex == presenter.current();
        return this;
    }

    @Override
    protected String told() {
        return column.told(row);
    }

    /** The width in pixels in which a column shows all that a row has in it. */
    int wanted(LessonRow of, LessonColumn in) {
        return switch (in) {
            case LESSON ->
                titleLeft(of)
                        + Space.points(PAD)
                        + Math.max(width(of.name(), Type.BODY), width(of.remark(), Type.SMALL));
            case DATE -> 2 * Space.points(PAD) + (int) Math.ceil(Figures.width(of.date(), Type.BODY.font()));
            case ROUNDS -> 2 * Space.points(PAD) + (int) Math.ceil(Figures.width(of.rounds(), Type.BODY.font()));
            case NEW -> chipsLeft() + chipsWidth(of.introduces());
            case MINUTES -> 0;
        };
    }

    private int width(String words, Type type) {
        return getFontMetrics(type.font()).stringWidth(words);
    }

    private int chipsWidth(List<String> names) {
        int width = 0;
        for (String name : names) {
            width += width(name, Type.SMALL_STRONG) + Space.points(CHIP_PAD + BETWEEN);
        }
        return width;
    }

    private static int titleLeft(LessonRow of) {
        return Space.points(PAD + (of.number() > 9 ? 24 : 17));
    }

    private static int chipsLeft() {
        return Space.points(PAD * 2);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        if (chosen) {
            smooth.setColor(Tone.WASH.color());
            smooth.fillRect(0, 0, getWidth(), getHeight());
        }
        smooth.setColor(Tone.LINE.color());
        smooth.draw(new Line2D.Double(0, getHeight() - 0.5, getWidth(), getHeight() - 0.5));
        switch (column) {
            case LESSON -> paintTitle(smooth);
            case DATE -> right(smooth, row.date(), row.held() ? Tone.INK : Tone.MUTED);
            case ROUNDS -> right(smooth, row.rounds(), Tone.INK);
            case NEW -> paintChips(smooth);
            case MINUTES -> paintMinutes(smooth);
        }
        smooth.dispose();
    }

    private float baseline(Font font) {
        return getHeight() / 2f + font.getSize2D() * 0.36f;
    }

    private void paintTitle(Graphics2D graphics) {
        boolean remarked = !row.remark().isEmpty();
        double lift = remarked ? Space.points(9) : 0;
        Font strong = Type.STRONG.font();
        float base = (float) (baseline(strong) - lift);
        graphics.setColor((current ? Tone.PINE : Tone.INK).color());
        Figures.paint(graphics, String.valueOf(row.number()), strong, Space.points(PAD), base);
        graphics.setFont(Type.BODY.font());
        graphics.setColor(Tone.INK.color());
        int x = titleLeft(row);
        int room = getWidth() - x - Space.points(PAD);
        graphics.drawString(Cut.to(row.name(), graphics.getFontMetrics(), room), x, base);
        if (remarked) {
            graphics.setFont(Type.SMALL.font());
            graphics.setColor((row.over() > 0 ? Tone.MARIGOLD : Tone.MUTED).color());
            graphics.drawString(Cut.to(row.remark(), graphics.getFontMetrics(), room), x, base + Space.points(18));
        }
    }

    private void right(Graphics2D graphics, String text, Tone tone) {
        Font font = Type.BODY.font();
        graphics.setFont(font);
        graphics.setColor(tone.color());
        String cut = Cut.to(text, graphics.getFontMetrics(), getWidth() - Space.points(PAD));
        Figures.paintRight(graphics, cut, font, getWidth() - Space.points(PAD), baseline(font));
    }

    private void paintChips(Graphics2D graphics) {
        List<String> names = row.introduces();
        if (names.isEmpty()) {
            Font font = Type.SECOND.font();
            graphics.setFont(font);
            graphics.setColor(Tone.MUTED.color());
            graphics.drawString(WORDS.say("nothing-new"), chipsLeft(), baseline(font));
            return;
        }
        double x = chipsLeft();
        for (int i = 0; i < names.size(); i++) {
            boolean last = i == names.size() - 1;
            double after = chip(
                    graphics,
                    i == 0 ? shortened(graphics, names.get(0), last) : names.get(i),
                    x,
                    last ? 0 : Space.points(MORE));
            if (after < 0) {
                more(graphics, names.size() - i, x);
                return;
            }
            x = after + Space.points(BETWEEN);
        }
    }

    /** The first name is cut where it has to be: one name says more than a number. */
    private String shortened(Graphics2D graphics, String name, boolean alone) {
        double room = getWidth() - Space.points(PAD * 2 + 18 + (alone ? 0 : MORE));
        return Cut.to(name, graphics.getFontMetrics(Type.SMALL_STRONG.font()), room);
    }

    /** Paints a chip where there is room for it and something more; the right edge, or -1. */
    private double chip(Graphics2D graphics, String name, double x, double more) {
        graphics.setFont(Type.SMALL_STRONG.font());
        FontMetrics metrics = graphics.getFontMetrics();
        double width = metrics.stringWidth(name) + Space.points(CHIP_PAD);
        if (x + width + more > getWidth()) {
            return -1;
        }
        double height = Space.points(CHIP);
        double y = (getHeight() - height) / 2;
        graphics.setColor(Tone.MARIGOLD.color());
        graphics.draw(new RoundRectangle2D.Double(x, y, width, height, Space.points(10), Space.points(10)));
        graphics.drawString(name, (float) (x + Space.points(CHIP_PAD / 2)), baseline(Type.SMALL_STRONG.font()));
        return x + width;
    }

    private void more(Graphics2D graphics, int howMany, double x) {
        graphics.setFont(Type.SMALL_STRONG.font());
        graphics.setColor(Tone.MARIGOLD.color());
        graphics.drawString(WORDS.say("and-more", howMany), (float) x, baseline(Type.SMALL_STRONG.font()));
    }

    private void paintMinutes(Graphics2D graphics) {
        if (row.minutes() == 0) {
            return;
        }
        Font font = Type.BODY.font();
        double bar = getWidth() - Space.points(PAD * 2 + 36);
        Tone tone = row.over() > 0 ? Tone.MARIGOLD : Tone.PINE;
        double share = row.minutes() / (double) row.session();
        if (bar >= Space.points(LEAST_BAR)) {
            Bar.paint(graphics, Space.points(PAD), getHeight() / 2.0 - Space.points(4), bar, share, tone);
        }
        graphics.setColor((row.over() > 0 ? Tone.MARIGOLD : Tone.INK).color());
        Figures.paintRight(
                graphics, String.valueOf(row.minutes()), font, getWidth() - Space.points(PAD), baseline(font));
    }
}
