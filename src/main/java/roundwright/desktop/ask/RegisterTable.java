package roundwright.desktop.ask;

import java.awt.Dimension;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Type;
import roundwright.group.Attendance;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.wording.Wording;

/**
 * The register as a table: a student a row, and in it the ways to have been there. The arrow keys move; the space bar chooses, or takes
 * back; the first letter of a way chooses it and goes on to the next student.
 */
final class RegisterTable extends JTable {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double ROW = 34;
    private static final double NAME = 110;
    private static final double MARK = 30;
    private static final Attendance[] WAYS = Attendance.values();

    private final transient List<Student> students;
    private final transient Function<Student, String> names;
    private final transient Map<StudentId, Attendance> marks = new HashMap<>();

    RegisterTable(List<Student> students, Function<Student, String> names) {
        this.students = students;
        this.names = names;
        setModel(new Marks());
        setTableHeader(null);
        setShowGrid(false);
        setIntercellSpacing(new Dimension(0, 0));
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellSelectionEnabled(true);
        setOpaque(false);
        setDefaultRenderer(Object.class, new RegisterCell(this));
        getAccessibleContext().setAccessibleName(WORDS.say("register-table"));
        getAccessibleContext().setAccessibleDescription(WORDS.say("register-keys"));
        putClientProperty("JTable.autoStartsEdit", false);
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), "none");
        Keys.leaveByTab(this);
        Keys.bind(this, "SPACE", this::turn);
        addKeyListener(new Letters());
        addMouseListener(new Mouse());
        addFocusListener(new Keys.RepaintOnFocus(this));
        if (!students.isEmpty()) {
            changeSelection(0, 1, false, false);
        }
        dress();
    }

    /** The word for a way to have been there. */
    static String words(Attendance attendance) {
        return WORDS.say(
                "attendance." + attendance.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    String name(int row) {
        return names.apply(students.get(row));
    }

    /** The way that a column stands for; empty for the names. */
    static Optional<Attendance> way(int column) {
        return column == 0 ? Optional.empty() : Optional.of(WAYS[column - 1]);
    }

    Optional<Attendance> mark(StudentId student) {
        return Optional.ofNullable(marks.get(student));
    }

    boolean chosen(int row, int column) {
        return way(column).isPresent() && mark(students.get(row).id()).equals(way(column));
    }

    /** Shows these marks instead. */
    void show(Map<StudentId, Attendance> shown) {
        marks.clear();
        marks.putAll(shown);
        repaint();
    }

    private void choose(int row, Optional<Attendance> way) {
        StudentId student = students.get(row).id();
        way.ifPresentOrElse(mark -> marks.put(student, mark), () -> marks.remove(student));
        repaint();
    }

    private void turn() {
        turn(getSelectedRow(), getSelectedColumn());
    }

    private void turn(int row, int column) {
        if (row >= 0 && column >= 1) {
            choose(row, chosen(row, column) ? Optional.empty() : way(column));
        }
    }

    private void dress() {
        setRowHeight(Space.points(ROW));
        var metrics = getFontMetrics(Type.SECOND.font());
        for (int column = 0; column < getColumnCount(); column++) {
            int words = way(column)
                    .map(way -> metrics.stringWidth(words(way)) + Space.points(MARK))
                    .orElse(Space.points(NAME));
            getColumnModel().getColumn(column).setPreferredWidth(words);
            getColumnModel().getColumn(column).setMinWidth(column == 0 ? Space.points(NAME) / 2 : words);
            getColumnModel().getColumn(column).setMaxWidth(column == 0 ? Integer.MAX_VALUE : words);
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (students != null) {
            dress();
        }
    }

    private final class Letters extends KeyAdapter {
        @Override
        public void keyTyped(KeyEvent event) {
            String letter = String.valueOf(event.getKeyChar()).toLowerCase(Locale.ROOT);
            int row = getSelectedRow();
            Arrays.stream(WAYS)
                    .filter(way ->
                            row >= 0 && words(way).toLowerCase(Locale.ROOT).startsWith(letter))
                    .findFirst()
                    .ifPresent(way -> {
                        choose(row, Optional.of(way));
                        changeSelection(Math.min(row + 1, getRowCount() - 1), getSelectedColumn(), false, false);
                    });
        }
    }

    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            turn(rowAtPoint(event.getPoint()), columnAtPoint(event.getPoint()));
        }
    }

    private final class Marks extends AbstractTableModel {
        @Override
        public int getRowCount() {
            return students.size();
        }

        @Override
        public int getColumnCount() {
            return WAYS.length + 1;
        }

        @Override
        public Object getValueAt(int row, int column) {
            return students.get(row);
        }
    }
}
