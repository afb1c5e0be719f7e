package roundwright.workbook;

import java.time.LocalDate;
import roundwright.group.StudentId;

/**
 * All that the file holds about one student.
 *
 * @param name what they are called
 * @param text to be read by them
 * @param json the same, to be read by a program
 */
public record HeldAbout(String name, String text, String json) {
    /** @param today the date that is written on it */
    public static HeldAbout of(WorkbookView view, StudentId id, LocalDate today) {
        var student = Lookup.student(view, id);
        return new HeldAbout(student.name(), HeldText.of(view, student, today), HeldJson.of(view, student, today));
    }
}
