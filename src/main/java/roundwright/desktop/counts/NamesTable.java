package roundwright.desktop.counts;

import java.awt.Dimension;
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

    private boolean narrow;

    NamesTable(CountsPresenter presenter) {
        super(new Model(presenter));
        setDefaultRenderer(Student.class, new StudentCellView(presenter));
        setShowGrid(false);
        setIntercellSpacing(new Dimension(0, 0));
        setOpaque(false);
        setFocusable(false);
        setRowSelectionAllowed(false);
        getAccessibleContext().setAccessibleName(WORDS.say("students"));
    }

    void refresh() {
        ((AbstractTableModel) getModel()).fireTableDataChanged();
        setRowHeight(Space.points(CountsTable.ROW));
    }

    /** With little width only the names have room. */
    void setNarrow(boolean narrow) {
        this.narrow = narrow;
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(Space.points(narrow ? NARROW : WIDTH), getPreferredSize().height);
    }

    private static final class Model extends AbstractTableModel {
        private final transient CountsPresenter presenter;

        Model(CountsPresenter presenter) {
            this.presenter = presenter;
        }

        @Override
        public int getRowCount() {
            return presenter.rows().size();
        }

        @Override
        public int getColumnCount() {
            return 1;
        }

        @Override
        public Object getValueAt(int row, int column) {
            return presenter.rows().get(row);
        }

        @Override
        public Class<?> getColumnClass(int column) {
            return Student.class;
        }
    }
}
