package roundwright.desktop.counts;

import java.awt.Component;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import javax.swing.JTable;
import roundwright.desktop.look.PaintedCell;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.group.Student;

/** Paints a student's name with what is worth knowing beside it. */
final class StudentCellView extends PaintedCell {
    private final transient CountsPresenter presenter;
    private String name = "";
    private String remark = "";
    private boolean chosen;

    StudentCellView(CountsPresenter presenter) {
        this.presenter = presenter;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean hasFocus, int row, int column) {
        Student student = (Student) value;
        name = presenter.name(student);
        remark = presenter.remark(student);
        chosen = presenter.chosen(row);
        return this;
    }

    @Override
    protected String told() {
        return remark.isEmpty() ? name : name + ", " + remark;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        int left = Space.of(1);
        int baseline = getHeight() / 2 + Math.round(Type.BODY.font().getSize2D() * 0.36f);
        smooth.setFont((chosen ? Type.STRONG : Type.BODY).font());
        FontMetrics metrics = smooth.getFontMetrics();
        smooth.setColor(Tone.INK.color());
        smooth.drawString(name, left, baseline);
        int after = left + metrics.stringWidth(name) + Space.of(0.75);
        smooth.setFont(Type.SMALL.font());
        if (after + smooth.getFontMetrics().stringWidth(remark) <= getWidth()) {
            smooth.setColor(Tone.MUTED.color());
            smooth.drawString(remark, after, baseline);
        }
        smooth.setColor(Tone.LINE.color());
        smooth.draw(new Line2D.Double(0, getHeight() - 0.5, getWidth(), getHeight() - 0.5));
        smooth.dispose();
    }
}
