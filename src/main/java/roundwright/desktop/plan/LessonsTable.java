package roundwright.desktop.plan;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.PaintedCell;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.wording.Wording;

/** The table of lessons; choosing a lesson chooses its first round. */
final class LessonsTable extends JTable {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double ROW = 44;

    private final transient LessonsPresenter presenter;
    private final transient IntConsumer chosenByHand;
    private final transient Model model;

    /** Tells the listener of every row that a person chooses here. */
    LessonsTable(LessonsPresenter presenter, IntConsumer chosenByHand) {
        super(new Model(presenter));
        this.presenter = presenter;
        this.chosenByHand = chosenByHand;
        this.model = (Model) getModel();
        setDefaultRenderer(Object.class, new LessonCells(presenter));
        setShowGrid(false);
        setIntercellSpacing(new Dimension(0, 0));
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setOpaque(false);
        getTableHeader().setReorderingAllowed(false);
        getTableHeader().setResizingAllowed(false);
        getTableHeader().setOpaque(false);
        getTableHeader().setDefaultRenderer(new Head());
        getAccessibleContext().setAccessibleName(WORDS.say("lessons-table"));
        getAccessibleContext().setAccessibleDescription(WORDS.say("lessons-table-told"));
        Keys.bind(this, "UP", () -> choose(presenter.chosen() - 1));
        Keys.bind(this, "DOWN", () -> choose(presenter.chosen() + 1));
        Keys.bind(this, "HOME", () -> choose(0));
        Keys.bind(this, "END", () -> choose(getRowCount() - 1));
        addFocusListener(new Keys.RepaintOnFocus(this));
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                choose(rowAtPoint(event.getPoint()));
            }
        });
        dress();
    }

    /** The whole of what a cell may have cut off. */
    @Override
    public String getToolTipText(MouseEvent event) {
        int row = rowAtPoint(event.getPoint());
        int column = columnAtPoint(event.getPoint());
        if (row < 0 || column < 0) {
            return null;
        }
        String told = LessonColumn.values()[column].told((LessonRow) getValueAt(row, column));
        return told.isEmpty() ? null : told;
    }

    private void choose(int row) {
        if (row >= 0 && row < getRowCount()) {
            chosenByHand.accept(row);
        }
    }

    void refresh() {
        model.refresh();
        int chosen = presenter.chosen();
        if (chosen >= 0 && chosen < getRowCount()) {
            getSelectionModel().setSelectionInterval(chosen, chosen);
            if (isShowing()) {
                scrollRectToVisible(getCellRect(chosen, 0, true));
            }
        } else {
            clearSelection();
        }
        repaint();
    }

    /** The right-hand cells stand on the width of the columns, which is that of the card. */
    @Override
    public Dimension getPreferredSize() {
        return new Dimension(leastWidth(), super.getPreferredSize().height);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() == null || getParent().getWidth() >= leastWidth();
    }

    private void dress() {
        setRowHeight(Space.points(ROW));
        setAutoResizeMode(AUTO_RESIZE_OFF);
    }

    /** Every column gets its least width, and what is left is shared out. */
    @Override
    public void doLayout() {
        double shares = 0;
        for (LessonColumn column : LessonColumn.values()) {
            shares += column.share();
        }
        int left = Math.max(0, getWidth() - leastWidth());
        for (LessonColumn column : LessonColumn.values()) {
            int width = Space.points(column.least()) + (int) (left * column.share() / shares);
            getColumnModel().getColumn(column.ordinal()).setMinWidth(width);
            getColumnModel().getColumn(column.ordinal()).setPreferredWidth(width);
            getColumnModel().getColumn(column.ordinal()).setWidth(width);
        }
    }

    private static int leastWidth() {
        int least = 0;
        for (LessonColumn column : LessonColumn.values()) {
            least += Space.points(column.least());
        }
        return least;
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (model != null) {
            dress();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        if (hasFocus() && presenter.chosen() >= 0) {
            Graphics2D smooth = Space.smooth(graphics);
            smooth.setColor(Tone.PINE.color());
            smooth.setStroke(new java.awt.BasicStroke(Space.points(2)));
            int in = Space.points(1);
            int top = presenter.chosen() * getRowHeight();
            int arc = Space.points(8);
            smooth.drawRoundRect(in, top + in, getWidth() - 2 * in - 1, getRowHeight() - 2 * in - 1, arc, arc);
            smooth.dispose();
        }
    }

    private static final class Model extends AbstractTableModel {
        private final transient LessonsPresenter presenter;
        private transient List<LessonRow> rows;

        Model(LessonsPresenter presenter) {
            this.presenter = presenter;
            this.rows = presenter.rows();
        }

        void refresh() {
            rows = presenter.rows();
            fireTableDataChanged();
        }

        @Override
        public int getRowCount() {
            return rows.size();
        }

        @Override
        public int getColumnCount() {
            return LessonColumn.values().length;
        }

        @Override
        public Object getValueAt(int row, int column) {
            return rows.get(row);
        }

        @Override
        public String getColumnName(int column) {
            return LessonColumn.values()[column].heading();
        }
    }

    private static final class Head extends PaintedCell {
        private String heading = "";
        private boolean right;

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean hasFocus, int row, int column) {
            heading = String.valueOf(value);
            right = LessonColumn.values()[column].right();
            return this;
        }

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(Space.of(8), Space.points(32));
        }

        @Override
        protected String told() {
            return heading;
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D smooth = Space.smooth(graphics);
            smooth.setFont(Type.SMALL_STRONG.font());
            smooth.setColor(Tone.MUTED.color());
            int width = smooth.getFontMetrics().stringWidth(heading);
            int left = heading.equals(LessonColumn.NEW.heading()) ? Space.of(2) : Space.of(1);
            smooth.drawString(heading, right ? getWidth() - Space.of(1) - width : left, getHeight() - Space.points(11));
            smooth.setColor(Tone.LINE.color());
            smooth.draw(new Line2D.Double(0, getHeight() - 0.5, getWidth(), getHeight() - 0.5));
            smooth.dispose();
        }
    }
}
