package roundwright.workbook;

import java.nio.file.Path;
import java.util.List;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.store.ErasedBackups;

/**
 * What was erased of a student.
 *
 * @param name what they were called
 * @param reports reports, those taken back among them
 * @param marks marks in registers
 * @param notes notes on their rounds
 * @param mentions other places of the file whose words still have the name in them, for the teacher to look at
 * @param backups how many dated copies they were erased from
 * @param backupsLeft dated copies that could not be changed
 */
public record Erased(
        String name, int reports, int marks, int notes, List<String> mentions, int backups, List<Path> backupsLeft) {
    static Erased planned(WorkbookView view, StudentId id) {
        Student student = Lookup.student(view, id);
        List<Held> held = Held.about(view, id);
        return new Erased(
                student.name(),
                held.stream().mapToInt(each -> each.reports().size()).sum(),
                held.stream().mapToInt(each -> each.marks().size()).sum(),
                held.stream().mapToInt(each -> each.notes().size()).sum(),
                Mentions.of(view, student),
                0,
                List.of());
    }

    Erased withBackups(ErasedBackups copies) {
        return new Erased(name, reports, marks, notes, mentions, copies.changed(), copies.left());
    }
}
