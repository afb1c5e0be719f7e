package roundwright.desktop.ask;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.Optional;
import javax.swing.JTable;
import roundwright.desktop.look.Cut;
import roundwright.desktop.look.PaintedCell;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.group.Attendance;
import roundwright.wording.Wording;

/** Paints a name of the register, or a way to have been there with a ring that is filled where it holds. */
final class RegisterCell extends PaintedCell {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double RING = 13;

    private final RegisterTable register;
    private int row;
    private String words = "";
    private boolean mark;
    private boolean chosen;
    private boolean focused;

    RegisterCell(RegisterTable register) {
        this.register = register;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean hasFocus, int rowIndex, int column) {
        row = rowIndex;
        Optional<Attendance> way = RegisterTable.way(column);
        mark = way.isPresent();
        chosen = register.chosen(row, column);
        focused = selected && register.hasFocus();
        words = way.map(RegisterTable::words).orElseGet(() -> register.name(row));
        return this;
    }

    @Override
    protected String told() {
        String told = chosen ? WORDS.say("register-chosen", words) : words;
        return mark ? register.name(row) + ": " + told : words;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        float baseline = getHeight() / 2f + Type.SECOND.font().getSize2D() * 0.36f;
        int left = mark ? Space.points(RING + 9) : 0;
        if (mark) {
            ring(smooth);
        }
        smooth.setFont((chosen ? Type.SMALL_STRONG : mark ? Type.SECOND : Type.BODY).font());
        smooth.setColor((chosen ? Tone.PINE : mark ? Tone.MUTED : Tone.INK).color());
        smooth.drawString(Cut.to(words, smooth.getFontMetrics(), getWidth() - left - Space.points(2)), left, baseline);
        smooth.setColor(Tone.LINE.color());
        smooth.draw(new Line2D.Double(0, getHeight() - 0.5, getWidth(), getHeight() - 0.5));
        if (focused) {
            smooth.setColor(Tone.PINE.color());
            smooth.setStroke(new BasicStroke(Space.points(2)));
            int arc = Space.smallArc();
            smooth.drawRoundRect(1, 1, getWidth() - 3, getHeight() - 3, arc, arc);
        }
        smooth.dispose();
    }

    private void ring(Graphics2D graphics) {
        double side = Space.points(RING);
        double x = Space.points(5);
        double y = (getHeight() - side) / 2;
        graphics.setColor((chosen ? Tone.PINE : Tone.EDGE).color());
        graphics.setStroke(new BasicStroke(Space.points(chosen ? 1.8 : 1.2)));
        graphics.draw(new Ellipse2D.Double(x, y, side, side));
        if (chosen) {
            double in = side * 0.28;
            graphics.fill(new Ellipse2D.Double(x + in, y + in, side - 2 * in, side - 2 * in));
        }
    }
}
