package roundwright.desktop.counts;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import javax.swing.JTable;
import roundwright.desktop.look.Figures;
import roundwright.desktop.look.PaintedCell;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.group.RoundPlace;

/** Paints the head of a round's column: its number, and below it the count to reach. */
final class RoundHeadView extends PaintedCell {
    private static final double HEIGHT = 46;
    private static final double NUMBER_RIGHT = 44;

    private final transient CountsPresenter presenter;
    private String above = "";
    private String below = "";
    private boolean chosen;

    RoundHeadView(CountsPresenter presenter) {
        this.presenter = presenter;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean hasFocus, int row, int column) {
        RoundPlace place = presenter.columns().get(column);
        above = String.valueOf(place.round());
        below = presenter.expected(place).isPresent()
                ? String.valueOf(presenter.expected(place).getAsInt())
                : "–";
        chosen = column == presenter.chosenColumn();
        return this;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Space.of(8), Space.points(HEIGHT));
    }

    @Override
    protected String told() {
        return above + ", " + below;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        Font strong = Type.SMALL_STRONG.font();
        Font second = Type.SECOND.font();
        int low = getHeight() - Space.of(1.5);
        double right = getWidth() - Space.points(NUMBER_RIGHT);
        smooth.setColor((chosen ? Tone.PINE : Tone.INK).color());
        Figures.paintRight(smooth, above, strong, right, low - Space.points(18));
        smooth.setColor(Tone.MUTED.color());
        Figures.paintRight(smooth, below, second, right, low);
        smooth.setColor(Tone.LINE.color());
        smooth.draw(new Line2D.Double(0, getHeight() - 0.5, getWidth(), getHeight() - 0.5));
        smooth.dispose();
    }
}
