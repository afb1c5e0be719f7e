package roundwright.desktop.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import roundwright.group.RoundPlace;
import roundwright.group.Student;
import roundwright.group.counts.Column;
import roundwright.wording.Wording;

/** What a column can be taken for, in words. */
final class ColumnWords {
    private static final Wording WORDS = Wording.of("desktop");

    private ColumnWords() {}

    /** A meaning to choose. */
    record Meaning(Column column) {
        @Override
        public String toString() {
            return of(column);
        }
    }

    static String of(Column column) {
        return switch (column.kind()) {
            case COUNTS_OF_ROUND ->
                column.part()
                        .map(part -> WORDS.say("column-counts-of-place", part, column.round()))
                        .orElse(WORDS.say("column-counts-of-round", column.round()));
            case COUNTS_OF_STUDENT ->
                WORDS.say("column-counts-of-student", column.student().orElse(""));
            default ->
                WORDS.say("column-is."
                        + column.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        };
    }

    /** Everything a column can be: first the kinds, then the counts of each round, then those of each student. */
    static List<Meaning> all(List<RoundPlace> places, List<Student> students) {
        List<Meaning> meanings = new ArrayList<>();
        for (Column.Kind kind : Column.Kind.values()) {
            if (kind != Column.Kind.COUNTS_OF_ROUND && kind != Column.Kind.COUNTS_OF_STUDENT) {
                meanings.add(new Meaning(Column.of(kind)));
            }
        }
        places.forEach(place -> meanings.add(new Meaning(Column.ofRound(Optional.of(place.part()), place.round()))));
        students.forEach(student -> meanings.add(new Meaning(Column.ofStudent(student.name()))));
        return meanings;
    }
}
