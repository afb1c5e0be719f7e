package roundwright.desktop.safety;

import javax.swing.JCheckBox;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.look.Prose;
import roundwright.desktop.work.Asked;
import roundwright.group.Student;
import roundwright.wording.Wording;
import roundwright.workbook.Erased;

/** Asks before a student is erased for good; Enter keeps them. */
final class EraseCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient Desk desk;
    private final transient Asking asking;
    private final transient Student student;
    private final JCheckBox backups = new JCheckBox(WORDS.say("erase-backups"), true);

    EraseCard(Desk desk, Asking asking, Student student) {
        super(WORDS.say("erase-head", student.name()), 520);
        this.desk = desk;
        this.asking = asking;
        this.student = student;
        body().below(0, Prose.body(WORDS.say("erase-what", student.name())));
        body().below(1.5, backups);
        say(WORDS.say("erase-elsewhere"));
        answer(WORDS.say("erase-keep"), asking::close);
        other(WORDS.say("erase-do"), this::erase);
    }

    private void erase() {
        boolean fromBackups = backups.isSelected();
        asking.close();
        desk.work()
                .submit(new Asked<>(
                        () -> desk.workbook().erase(student.id(), fromBackups),
                        erased -> tell(erased, fromBackups),
                        failure -> desk.tell(String.valueOf(failure.getMessage()))));
    }

    private void tell(Erased erased, boolean fromBackups) {
        StringBuilder said = new StringBuilder(String.join(" ", erased.sentences(fromBackups)));
        erased.backupsLeft().forEach(left -> said.append(' ').append(WORDS.say("erase-left", left)));
        desk.tell(said.toString());
    }
}
