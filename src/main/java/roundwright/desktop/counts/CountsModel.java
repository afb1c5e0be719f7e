package roundwright.desktop.counts;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.table.AbstractTableModel;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.RoundPlace;
import roundwright.group.RoundStanding;
import roundwright.group.Standing;
import roundwright.group.Student;
import roundwright.wording.Wording;
import roundwright.workbook.GroupView;

/** Students down, rounds across. */
final class CountsModel extends AbstractTableModel {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient CountsPresenter presenter;
    private transient List<Student> rows = List.of();
    private transient List<RoundPlace> columns = List.of();
    private transient List<Standing> standings = List.of();
    private transient Optional<OpenCourse> course = Optional.empty();
    private transient Optional<GroupView> group = Optional.empty();

    CountsModel(CountsPresenter presenter) {
        this.presenter = presenter;
        refresh();
    }

    /**
     * Takes in the students, rounds and counts of now and tells of those that are others than before; says whether the rounds are, of
     * which it does not tell.
     */
    boolean refresh() {
        List<RoundPlace> columnsBefore = columns;
        columns = presenter.columns();
        boolean others = !columns.equals(columnsBefore);
        if (!isOf(presenter.course(), presenter.group())) {
            takeIn(others);
        }
        return others;
    }

    private boolean isOf(Optional<OpenCourse> courseNow, Optional<GroupView> groupNow) {
        return course.orElse(null) == courseNow.orElse(null) && group.orElse(null) == groupNow.orElse(null);
    }

    private void takeIn(boolean silently) {
        List<Student> rowsBefore = rows;
        List<Standing> standingsBefore = standings;
        course = presenter.course();
        group = presenter.group();
        rows = presenter.rows();
        standings = rows.stream().map(presenter::standing).toList();
        if (silently) {
            return;
        }
        if (!rows.equals(rowsBefore)) {
            fireTableDataChanged();
        } else {
            tellOfCounts(standingsBefore);
        }
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
