package roundwright.desktop.counts;

import java.awt.Dimension;
import java.util.List;
import javax.swing.JTable;
import javax.swing.table.AbstractTableModel;
import roundwright.desktop.look.Space;
import roundwright.group.Student;
import roundwright.wording.Wording;

/** The students' names at the left of the grid; they stay where they are while the rounds scroll. */
final class NamesTable extends JTable {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double WIDTH = 176;
    private static final double NARROW = 128;

    private final transient CountsPresenter presenter;
    private int chosen = -1;
    private boolean narrow;

    NamesTable(CountsPresenter presenter) {
        super(new Model(presenter));
        this.presenter = presenter;
        setDefaultRenderer(Student.class, new StudentCellView(presenter));
        setShowGrid(false);
        setIntercellSpacing(new Dimension(0, 0));
        setOpaque(false);
        setFocusable(false);
        setRowSelectionAllowed(false);
        getAccessibleContext().setAccessibleName(WORDS.say("students"));
    }

    void refresh() {
        ((Model) getModel()).refresh();
        repaint();
    }

    /** Another student may be chosen. */
    void follow() {
        int now = presenter.chosenRow();
        if (now != chosen) {
            repaint(getCellRect(chosen, 0, true));
            repaint(getCellRect(now, 0, true));
            chosen = now;
        }
    }

    /** With little width only the names have room. */
    void setNarrow(boolean narrow) {
        this.narrow = narrow;
    }

    /** The rows are as high as those of the grid beside it. */
    void rowsAs(JTable grid) {
        if (getRowHeight() != grid.getRowHeight()) {
            setRowHeight(grid.getRowHeight());
        }
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(Space.points(narrow ? NARROW : WIDTH), getPreferredSize().height);
    }

    private static final class Model extends AbstractTableModel {
        private final transient CountsPresenter presenter;
        private transient List<Student> rows = List.of();

        Model(CountsPresenter presenter) {
            this.presenter = presenter;
        }

        void refresh() {
            boolean others = !rows.equals(presenter.rows());
            rows = presenter.rows();
            if (others) {
                fireTableDataChanged();
            }
        }

        @Override
        public int getRowCount() {
            return rows.size();
        }

        @Override
        public int getColumnCount() {
            return 1;
        }

        @Override
        public Object getValueAt(int row, int column) {
            return rows.get(row);
        }

        @Override
        public Class<?> getColumnClass(int column) {
            return Student.class;
        }
    }
}
