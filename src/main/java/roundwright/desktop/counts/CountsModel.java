package roundwright.desktop.counts;

import java.util.List;
import javax.swing.table.AbstractTableModel;
import roundwright.group.RoundPlace;
import roundwright.group.RoundStanding;
import roundwright.group.Student;
import roundwright.wording.Wording;

/** Students down, rounds across. */
final class CountsModel extends AbstractTableModel {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient CountsPresenter presenter;
    private transient List<Student> rows = List.of();
    private transient List<RoundPlace> columns = List.of();

    CountsModel(CountsPresenter presenter) {
        this.presenter = presenter;
        refresh();
    }

    /** Takes in the students and rounds of now; says whether the rounds are others than before. */
    boolean refresh() {
        List<RoundPlace> before = columns;
        rows = presenter.rows();
        columns = presenter.columns();
        return !columns.equals(before);
    }

    @Override
    public int getRowCount() {
        return rows.size();
    }

    @Override
    public int getColumnCount() {
        return columns.size();
    }

    @Override
    public Object getValueAt(int row, int column) {
        return presenter.cell(rows.get(row), columns.get(column));
    }

    @Override
    public String getColumnName(int column) {
        return WORDS.say("round", columns.get(column).round());
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return RoundStanding.class;
    }
}
