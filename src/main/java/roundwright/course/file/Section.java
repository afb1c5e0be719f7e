package roundwright.course.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import roundwright.notation.Span;

/**
 * A heading of the file and all that stands below it up to the next.
 *
 * @param kind what the heading says it is
 * @param title the name after {@code Part:}, {@code Lesson 3:}, {@code Technique:}, or the whole heading of any other kind
 * @param number the number that a lesson's heading gives
 * @param form whether the heading is written as it should be
 * @param heading the heading's line or lines; empty at the file's start where the file begins without one
 * @param span heading and all below it
 * @param entries list items and lines of paragraphs, in order
 * @param settings those of the entries that have the form {@code key: value}
 * @param passedOver blocks that are set apart, so that they are kept and not read: code and quotations
 */
public record Section(
        Kind kind,
        Written title,
        OptionalInt number,
        Form form,
        Span heading,
        Span span,
        List<Entry> entries,
        List<Setting> settings,
        List<Span> passedOver) {
    /** What a section holds. */
    public enum Kind {
        COURSE,
        PART,
        LESSON,
        TECHNIQUE,
        OTHER
    }

    /** How well a heading keeps to its form. */
    public enum Form {
        RIGHT,
        /** The colon after the word is missing. */
        NO_COLON,
        /** A lesson without its number. */
        NO_NUMBER,
        /** Not a heading of two marks. */
        WRONG_LEVEL,
        /** The word before the colon is not one of the three, but close to one. */
        MISSPELT
    }

    public Section {
        entries = List.copyOf(entries);
        settings = List.copyOf(settings);
        passedOver = List.copyOf(passedOver);
    }

    Section(
            Kind kind,
            Written title,
            OptionalInt number,
            Form form,
            Span heading,
            Span span,
            List<Entry> entries,
            List<Span> passedOver) {
        this(kind, title, number, form, heading, span, entries, settings(entries), passedOver);
    }

    private static List<Setting> settings(List<Entry> entries) {
        return entries.stream().flatMap(entry -> entry.setting().stream()).toList();
    }

    /** The first setting of a key. */
    public Optional<Setting> setting(String key) {
        return settings.stream().filter(setting -> setting.key().equals(key)).findFirst();
    }

    /** The paragraphs, each with its lines joined. */
    public List<String> paragraphs() {
        Map<Integer, String> paragraphs = new TreeMap<>();
        for (Entry entry : entries) {
            if (!entry.item()) {
                paragraphs.merge(entry.block(), entry.written().text(), (above, line) -> above + " " + line);
            }
        }
        return List.copyOf(paragraphs.values());
    }
}
