package roundwright.desktop.counts;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import javax.swing.JTable;
import roundwright.desktop.look.Figures;
import roundwright.desktop.look.Mark;
import roundwright.desktop.look.PaintedCell;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.group.RoundStanding;

/** Paints one student's count of one round: the number, its mark, the difference; what is being typed instead, where it is. */
final class CountCellView extends PaintedCell {
    private static final double MARK = 11;
    private static final double NUMBER_RIGHT = 44;
    private static final double MARK_LEFT = 38;
    private static final int LONG = 3;
    private static final double LONG_RIGHT = 12;

    private final transient CountsPresenter presenter;
    private transient RoundStanding cell;
    private boolean chosen;
    private boolean focused;

    CountCellView(CountsPresenter presenter) {
        this.presenter = presenter;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean hasFocus, int row, int column) {
        cell = (RoundStanding) value;
        chosen = presenter.chosen(row, column);
        focused = table.hasFocus();
        return this;
    }

    @Override
    protected String told() {
        return CountWords.of(cell);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        paintGround(smooth);
        Optional<String> typed = chosen ? presenter.typed() : Optional.empty();
        if (typed.isPresent()) {
            paintTyped(smooth, typed.get());
        } else {
            paintCount(smooth);
        }
        if (chosen) {
            paintChosen(smooth);
        }
        smooth.dispose();
    }

    private void paintGround(Graphics2D graphics) {
        switch (cell.state()) {
            case OVER -> fill(graphics, Tone.OVER_WASH);
            case UNDER -> fill(graphics, Tone.UNDER_WASH);
            default -> {
                // the paper shows
            }
        }
        graphics.setColor(Tone.LINE.color());
        graphics.draw(new Line2D.Double(0, getHeight() - 0.5, getWidth(), getHeight() - 0.5));
    }

    private void fill(Graphics2D graphics, Tone tone) {
        graphics.setColor(tone.color());
        graphics.fillRect(0, 0, getWidth(), getHeight());
    }

    private double baseline(Font font) {
        return getHeight() / 2.0 + font.getSize2D() * 0.36;
    }

    private void paintCount(Graphics2D graphics) {
        Font font = Type.BODY.font();
        double numberRight = getWidth() - Space.points(NUMBER_RIGHT);
        cell.count().ifPresent(count -> {
            graphics.setColor(Tone.INK.color());
            Figures.paintRight(graphics, String.valueOf(count), font, numberRight, baseline(font));
        });
        double side = Space.points(MARK);
        double left = getWidth() - Space.points(MARK_LEFT);
        Mark mark = mark();
        mark.paint(graphics, left, (getHeight() - side) / 2, side);
        if (cell.difference() != 0) {
            Font strong = Type.STRONG.font();
            graphics.setColor(mark.tone().color());
            String difference = String.valueOf(Math.abs(cell.difference()));
            Figures.paint(graphics, difference, strong, left + side + Space.points(2), baseline(strong));
        }
    }

    private Mark mark() {
        return switch (cell.state()) {
            case RIGHT, COUNTED -> Mark.RIGHT;
            case OVER -> Mark.OVER;
            case UNDER -> Mark.UNDER;
            case UNFINISHED -> Mark.UNFINISHED;
            case PULLED_BACK -> Mark.PULLED_BACK;
            case NOT_YET, NOT_REPORTED -> Mark.NOT_YET;
        };
    }

    private void paintTyped(Graphics2D graphics, String typed) {
        fill(graphics, Tone.WASH);
        Font font = Type.STRONG.font();
        // what is longer than a count needs the room of the mark, too
        double right = getWidth() - Space.points(typed.length() > LONG ? LONG_RIGHT : NUMBER_RIGHT);
        graphics.setColor(Tone.INK.color());
        Figures.paintRight(graphics, typed, font, right, baseline(font));
        graphics.setColor(Tone.PINE.color());
        graphics.setStroke(new BasicStroke(Space.points(1.5)));
        double caret = right + Space.points(2);
        graphics.draw(new Line2D.Double(caret, getHeight() * 0.28, caret, getHeight() * 0.72));
    }

    private void paintChosen(Graphics2D graphics) {
        graphics.setColor((focused ? Tone.PINE : Tone.EDGE).color());
        graphics.setStroke(new BasicStroke(Space.points(focused ? 3 : 1)));
        double in = Space.points(2);
        double arc = Space.points(8);
        graphics.draw(new RoundRectangle2D.Double(in, in, getWidth() - 2 * in, getHeight() - 2 * in, arc, arc));
    }
}
