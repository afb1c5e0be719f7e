package roundwright.desktop.tables;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import roundwright.group.RoundPlace;
import roundwright.group.counts.ColumnMatch;
import roundwright.group.counts.RollDecisions;

/**
 * What the teacher has said of a file so far.
 *
 * @param sheet which of its tables is meant, from 0
 * @param match what the columns are, where that was put right by hand
 * @param students who is meant by a name that nobody has, by the name as written; a name that stands for itself is a new student
 * @param parts which part is meant by a name that none has
 * @param places which round is meant by one that the pattern lacks
 * @param usualPart the part that is meant where none is named
 */
record ImportWish(
        int sheet,
        Optional<ColumnMatch> match,
        Map<String, String> students,
        Map<String, String> parts,
        Map<RoundPlace, RoundPlace> places,
        Optional<String> usualPart) {
    static final ImportWish NOTHING =
            new ImportWish(0, Optional.empty(), Map.of(), Map.of(), Map.of(), Optional.empty());

    ImportWish ofSheet(int other) {
        return new ImportWish(other, Optional.empty(), Map.of(), Map.of(), Map.of(), usualPart);
    }

    ImportWish matched(ColumnMatch other) {
        return new ImportWish(sheet, Optional.of(other), students, parts, places, usualPart);
    }

    ImportWish student(String written, Optional<String> meant) {
        return new ImportWish(sheet, match, with(students, written, meant), parts, places, usualPart);
    }

    ImportWish part(String written, Optional<String> meant) {
        return new ImportWish(sheet, match, students, with(parts, written, meant), places, usualPart);
    }

    ImportWish place(RoundPlace written, Optional<RoundPlace> meant) {
        return new ImportWish(sheet, match, students, parts, with(places, written, meant), usualPart);
    }

    ImportWish usualPart(Optional<String> part) {
        return new ImportWish(sheet, match, students, parts, places, part);
    }

    private static <K> Map<K, K> with(Map<K, K> before, K written, Optional<K> meant) {
        Map<K, K> after = new HashMap<>(before);
        meant.ifPresentOrElse(value -> after.put(written, value), () -> after.remove(written));
        return Map.copyOf(after);
    }

    /** For reading rows of a course of that name. */
    RollDecisions decisions(String course) {
        return new RollDecisions(students, parts, places, usualPart, Optional.of(course));
    }
}
