package roundwright.desktop.counts;

import java.util.List;
import java.util.stream.IntStream;
import javax.swing.table.AbstractTableModel;
import roundwright.group.RoundPlace;
import roundwright.group.RoundStanding;
import roundwright.group.Standing;
import roundwright.group.Student;
import roundwright.wording.Wording;

/** Students down, rounds across. */
final class CountsModel extends AbstractTableModel {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient CountsPresenter presenter;
    private transient List<Student> rows = List.of();
    private transient List<RoundPlace> columns = List.of();
    private transient List<Standing> standings = List.of();

    CountsModel(CountsPresenter presenter) {
        this.presenter = presenter;
        refresh();
    }

    /**
     * Takes in the students, rounds and counts of now and tells of those that are others than before; says whether the rounds are, of
     * which it does not tell.
     */
    boolean refresh() {
        List<Student> rowsBefore = rows;
        List<RoundPlace> columnsBefore = columns;
        List<Standing> standingsBefore = standings;
        rows = presenter.rows();
        columns = presenter.columns();
        standings = rows.stream().map(presenter::standing).toList();
        if (!columns.equals(columnsBefore)) {
            return true;
        }
        if (!rows.equals(rowsBefore)) {
            fireTableDataChanged();
        } else {
            tellOfCounts(standingsBefore);
        }
        return false;
    }

    private void tellOfCounts(List<Standing> before) {
        int[] others = IntStream.range(0, rows.size())
                .filter(row -> standings.get(row) != before.get(row))
                .toArray();
        if (others.length > 0) {
            fireTableRowsUpdated(others[0], others[others.length - 1]);
        }
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
        return CountsPresenter.cell(standings.get(row), columns.get(column));
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
