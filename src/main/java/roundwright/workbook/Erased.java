package roundwright.workbook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.store.ErasedBackups;
import roundwright.wording.Wording;

/**
 * What was erased of a student.
 *
 * @param name what they were called
 * @param reports reports, those taken back among them
 * @param marks marks in registers
 * @param notes notes on their rounds
 * @param mentions other places of the file whose words still have the name in them, for the teacher to look at
 * @param setAside damaged files beside this one, which may hold the student still
 * @param notAnew why the file could not be written anew, where it could not
 * @param backups how many dated copies they were erased from
 * @param backupsLeft dated copies that could not be changed
 */
public record Erased(
        String name,
        int reports,
        int marks,
        int notes,
        List<String> mentions,
        List<Path> setAside,
        Optional<String> notAnew,
        int backups,
        List<Path> backupsLeft) {
    private static final Wording WORDS = Wording.of("workbook");

    static Erased planned(WorkbookView view, StudentId id, List<Path> setAside) {
        Student student = Lookup.student(view, id);
        List<Held> held = Held.about(view, id);
        return new Erased(
                student.name(),
                held.stream().mapToInt(each -> each.reports().size()).sum(),
                held.stream().mapToInt(each -> each.marks().size()).sum(),
                held.stream().mapToInt(each -> each.notes().size()).sum(),
                Mentions.of(view, student),
                setAside,
                Optional.empty(),
                0,
                List.of());
    }

    /**
     * What the person is told, a sentence each.
     *
     * @param fromBackups whether the dated copies were gone through, too
     */
    public List<String> sentences(boolean fromBackups) {
        List<String> said = new ArrayList<>();
        said.add(WORDS.say("erased.what", name, reports, marks, notes));
        said.add(fromBackups ? WORDS.say("erased.backups", backups) : WORDS.say("erased.not-from-backups"));
        if (!mentions.isEmpty()) {
            said.add(WORDS.say("erased.mentions", Wording.list(mentions)));
        }
        notAnew.ifPresent(why -> said.add(WORDS.say("erased.not-anew", why)));
        setAside.forEach(file -> said.add(WORDS.say("erased.set-aside", file)));
        return said;
    }

    Erased writtenAnew(Optional<String> whyNot) {
        return new Erased(name, reports, marks, notes, mentions, setAside, whyNot, backups, backupsLeft);
    }

    Erased withBackups(ErasedBackups copies) {
        return new Erased(name, reports, marks, notes, mentions, setAside, notAnew, copies.changed(), copies.left());
    }
}
