package roundwright.desktop.ask;

import java.util.List;
import java.util.Optional;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import roundwright.desktop.desk.Desk;
import roundwright.group.Group;
import roundwright.group.Student;
import roundwright.wording.Wording;
import roundwright.workbook.Edit;
import roundwright.workbook.GroupEdit;
import roundwright.workbook.Several;
import roundwright.workbook.StudentEdit;

/** Asks for the names of new students, one a line; where the course has no group yet, for the group's name too. */
public final class AddStudentsCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient Desk desk;
    private final transient Asking asking;
    private final JTextArea names = Fields.lines("", 8);
    private final JTextField group = new JTextField(WORDS.say("add-students-group-usual"));

    public AddStudentsCard(Desk desk, Asking asking) {
        super(WORDS.say("add-students-head"), 460);
        this.desk = desk;
        this.asking = asking;
        row(WORDS.say("add-students-names"), names, WORDS.say("add-students-hint"));
        if (desk.group().isEmpty()) {
            row(WORDS.say("add-students-group"), group, WORDS.say("group-name-hint"));
        }
        answer(WORDS.say("add-students-answer"), this::add);
        cancel(asking);
    }

    private void add() {
        List<String> given = names.getText()
                .lines()
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .toList();
        if (given.isEmpty()) {
            wrong(WORDS.say("add-students-none"), names);
            return;
        }
        if (group.getText().isBlank()) {
            wrong(WORDS.say("name-needed"), group);
            return;
        }
        List<Student> students = given.stream()
                .map(name -> new Student(desk.workbook().newStudent(), name, false, false, ""))
                .toList();
        asking.close();
        desk.choice()
                .group()
                .ifPresentOrElse(id -> desk.apply(new StudentEdit.AddStudents(id, students)), () -> addWith(students));
    }

    /** The first students of a course come with their group, in one step. */
    private void addWith(List<Student> students) {
        Group first = new Group(
                desk.workbook().newGroup(),
                desk.choice().course().orElseThrow(),
                group.getText().strip(),
                Optional.empty(),
                "");
        Edit both = new Several(
                WORDS.say("add-students-step", first.name()),
                List.of(new GroupEdit.AddGroup(first), new StudentEdit.AddStudents(first.id(), students)));
        desk.apply(both, () -> desk.chooseGroup(first.id()));
    }
}
