package roundwright.sheet;

import java.text.Normalizer;
import java.util.Locale;

/** Names of files that every system takes, made of the names of courses and people. */
final class FileNames {
    private static final int LONGEST = 40;

    private final String course;

    FileNames(String courseName) {
        String plain = plain(courseName);
        course = plain.isEmpty() ? "course" : plain;
    }

    /** Letters, digits and hyphens; empty where a name has none that can be kept. */
    static String plain(String name) {
        String folded = Normalizer.normalize(name, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        return folded.length() <= LONGEST
                ? folded
                : folded.substring(0, LONGEST).replaceAll("-+$", "");
    }

    String of(String what, String ending) {
        return course + "-" + what + ending;
    }

    String lesson(int number) {
        return "lesson-" + number;
    }

    /** Numbered, for two students may have one name, or one that leaves no letter. */
    String student(int place, String name) {
        String plain = plain(name);
        String number = String.format(Locale.ROOT, "%02d", place);
        return plain.isEmpty() ? number : number + "-" + plain;
    }
}
