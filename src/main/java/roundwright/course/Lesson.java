package roundwright.course;

import java.util.List;
import java.util.Optional;

/**
 * One session of a course as the teacher wrote it.
 *
 * @param number from 1
 * @param name its title
 * @param rounds the stretches of the pattern worked in class
 * @param homework the stretches of the pattern worked at home after it
 * @param introduces ids of techniques the teacher says are new
 * @param minutes length of the session, where it differs from the course's
 * @param words what to bring, recap, homework, caution, note, and whether it is locked: the lesson's own words by key, in the file's order
 */
public record Lesson(
        int number,
        String name,
        List<RoundRange> rounds,
        List<RoundRange> homework,
        List<String> introduces,
        Optional<Integer> minutes,
        List<Entry> words) {
    /** The key under which a lesson says that it is locked. */
    public static final String LOCKED = "locked";

    public Lesson {
        rounds = List.copyOf(rounds);
        homework = List.copyOf(homework);
        introduces = List.copyOf(introduces);
        words = List.copyOf(words);
    }

    /** What the lesson says under a key, in the file's order. */
    public List<String> words(String key) {
        return words.stream()
                .filter(entry -> entry.key().equals(key))
                .map(Entry::value)
                .toList();
    }

    /** Whether it keeps its rounds when the course is split anew: it says {@code locked: yes}, or anything but no. */
    public boolean locked() {
        return words(LOCKED).stream().anyMatch(value -> !value.isBlank() && !value.equalsIgnoreCase("no"));
    }

    /** The same lesson under another number. */
    public Lesson numbered(int other) {
        return new Lesson(other, name, rounds, homework, introduces, minutes, words);
    }

    /** A {@code - key: value} of the lesson that is for people: bring, recap, homework, caution, note. */
    public record Entry(String key, String value) {}
}
