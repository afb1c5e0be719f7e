package roundwright.workbook;

import java.text.Normalizer;
import java.time.LocalDate;
import java.util.Locale;
import roundwright.group.StudentId;

/**
 * All that the file holds about one student.
 *
 * @param name what they are called
 * @param text to be read by them
 * @param json the same, to be read by a program
 */
public record HeldAbout(String name, String text, String json) {
    private static final int LONGEST = 40;

    /** A name for a file with it, which every system takes. */
    public String fileName() {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        return "kept-about-" + (plain.isEmpty() ? "student" : plain.substring(0, Math.min(LONGEST, plain.length())));
    }

    /** @param today the date that is written on it */
    public static HeldAbout of(WorkbookView view, StudentId id, LocalDate today) {
        var student = Lookup.student(view, id);
        return new HeldAbout(student.name(), HeldText.of(view, student, today), HeldJson.of(view, student, today));
    }
}
