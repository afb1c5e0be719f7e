package roundwright.desktop.ask;

import javax.swing.JCheckBox;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import roundwright.desktop.desk.Desk;
import roundwright.group.Student;
import roundwright.wording.Wording;
import roundwright.workbook.StudentEdit;

/** What is kept of a student, to be changed; the student can be taken out of the group here. */
public final class StudentCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient Desk desk;
    private final transient Asking asking;
    private final transient Student student;
    private final JTextField name;
    private final JCheckBox leftHanded = new JCheckBox(WORDS.say("student-left-handed"));
    private final JCheckBox largePrint = new JCheckBox(WORDS.say("student-large-print"));
    private final JTextArea note;

    public StudentCard(Desk desk, Asking asking, Student student) {
        super(WORDS.say("student-head", student.name()), 460);
        this.desk = desk;
        this.asking = asking;
        this.student = student;
        name = row(WORDS.say("student-name"), new JTextField(student.name()), WORDS.say("student-name-hint"));
        leftHanded.setSelected(student.leftHanded());
        largePrint.setSelected(student.largePrint());
        body().below(2, leftHanded);
        body().below(1, largePrint);
        note = row(WORDS.say("note"), Fields.lines(student.note(), 3), WORDS.say("student-note-hint"));
        answer(WORDS.say("keep"), this::keep);
        other(WORDS.say("student-remove"), this::remove);
        cancel(asking);
    }

    private void keep() {
        if (name.getText().isBlank()) {
            wrong(WORDS.say("name-needed"), name);
            return;
        }
        Student changed = new Student(
                student.id(),
                name.getText().strip(),
                leftHanded.isSelected(),
                largePrint.isSelected(),
                note.getText().strip());
        asking.close();
        if (!changed.equals(student)) {
            desk.apply(new StudentEdit.ChangeStudent(changed));
        }
    }

    /** No question is asked: it can be undone. */
    private void remove() {
        asking.close();
        desk.apply(new StudentEdit.RemoveStudent(desk.choice().group().orElseThrow(), student.id()));
        desk.tell(WORDS.say("student-removed", student.name()));
    }
}
