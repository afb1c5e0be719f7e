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
        return columns.size() + 1;
    }

    @Override
    public Object getValueAt(int row, int column) {
        Student student = rows.get(row);
        return column == 0 ? student : presenter.cell(student, columns.get(column - 1));
    }

    @Override
    public String getColumnName(int column) {
        return column == 0
                ? WORDS.say("student")
                : WORDS.say("round", columns.get(column - 1).round());
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return column == 0 ? Student.class : RoundStanding.class;
    }
}
