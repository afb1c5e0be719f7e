package roundwright.desktop.ask;

import javax.swing.JTextArea;
import roundwright.desktop.desk.Desk;
import roundwright.group.GroupId;
import roundwright.group.RoundPlace;
import roundwright.group.Student;
import roundwright.wording.Wording;
import roundwright.workbook.CountEdit;

/** The teacher's own words on one student's round. */
public final class NoteCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");

    public NoteCard(Desk desk, Asking asking, Student student, RoundPlace place) {
        super(WORDS.say("note-head", student.name(), place.part(), place.round()), 460);
        GroupId group = desk.choice().group().orElseThrow();
        String before = desk.group()
                .flatMap(found -> found.note(student.id(), place.part(), place.round()))
                .orElse("");
        JTextArea text = row(WORDS.say("note"), Fields.lines(before, 4), WORDS.say("note-hint"));
        answer(WORDS.say("keep"), () -> {
            asking.close();
            desk.apply(new CountEdit.SetNote(
                    group,
                    student.id(),
                    place.part(),
                    place.round(),
                    text.getText().strip()));
        });
        cancel(asking);
    }
}
