package roundwright.desktop.ask;

import java.util.List;
import javax.swing.JTextArea;
import roundwright.desktop.desk.Desk;
import roundwright.group.GroupId;
import roundwright.group.Student;
import roundwright.wording.Wording;
import roundwright.workbook.StudentEdit;

/** Asks for the names of new students, one a line. */
public final class AddStudentsCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient Desk desk;
    private final transient Asking asking;
    private final JTextArea names = Fields.lines("", 8);

    public AddStudentsCard(Desk desk, Asking asking) {
        super(WORDS.say("add-students-head"), 460);
        this.desk = desk;
        this.asking = asking;
        row(WORDS.say("add-students-names"), names, WORDS.say("add-students-hint"));
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
        GroupId group = desk.choice().group().orElseThrow();
        List<Student> students = given.stream()
                .map(name -> new Student(desk.workbook().newStudent(), name, false, false, ""))
                .toList();
        asking.close();
        desk.apply(new StudentEdit.AddStudents(group, students));
    }
}
