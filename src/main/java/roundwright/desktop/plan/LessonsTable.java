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
import java.util.stream.Stream;
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
    private final transient LessonCells cells;

    /** Tells the listener of every row that a person chooses here. */
    LessonsTable(LessonsPresenter presenter, IntConsumer chosenByHand) {
        super(new Model(presenter));
        this.presenter = presenter;
        this.chosenByHand = chosenByHand;
        this.model = (Model) getModel();
        this.cells = new LessonCells(presenter);
        setDefaultRenderer(Object.class, cells);
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

    /** As wide as what it stands in, unless that is too narrow even without the dates. */
    @Override
    public Dimension getPreferredSize() {
        return new Dimension(leastWidth(), super.getPreferredSize().height);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() == null || getParent().getWidth() >= leastWidth();
    }

    private int leastWidth() {
        return Stream.of(LessonColumn.values())
                .filter(column -> column != LessonColumn.DATE)
                .mapToInt(this::leastOfWords)
                .sum();
    }

    private void dress() {
        setRowHeight(Space.points(ROW));
        setAutoResizeMode(AUTO_RESIZE_OFF);
    }

    @Override
    public void doLayout() {
        int[] widths = ColumnWidths.of(wishes(), getWidth());
        for (int column = 0; column < widths.length; column++) {
            getColumnModel().getColumn(column).setMinWidth(widths[column]);
            getColumnModel().getColumn(column).setPreferredWidth(widths[column]);
            getColumnModel().getColumn(column).setWidth(widths[column]);
        }
    }

    /** Without dates there is no column of them; and where not every column can say something, they go: they stand beside the table too. */
    private List<ColumnWidths.Wish> wishes() {
        List<ColumnWidths.Wish> all =
                Stream.of(LessonColumn.values()).map(this::wish).toList();
        boolean dated = model.rows.stream().anyMatch(row -> !row.date().isEmpty());
        return dated && least(all) <= getWidth()
                ? all
                : Stream.of(LessonColumn.values())
                        .map(column -> column == LessonColumn.DATE
                                ? new ColumnWidths.Wish(0, 0, 0)
                                : all.get(column.ordinal()))
                        .toList();
    }

    /** A date says nothing when it is cut; of the rest, the beginning does. */
    private ColumnWidths.Wish wish(LessonColumn column) {
        int wanted =
                model.rows.stream().mapToInt(row -> cells.wanted(row, column)).reduce(head(column), Math::max);
        int least = column == LessonColumn.DATE ? wanted : leastOfWords(column);
        return new ColumnWidths.Wish(least, wanted, column.share());
    }

    private int leastOfWords(LessonColumn column) {
        return Math.max(head(column), Space.points(column.least()));
    }

    private int head(LessonColumn column) {
        return getFontMetrics(Type.SMALL_STRONG.font()).stringWidth(column.heading()) + Space.of(2);
    }

    private static int least(List<ColumnWidths.Wish> wishes) {
        return wishes.stream().mapToInt(ColumnWidths.Wish::least).sum();
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
