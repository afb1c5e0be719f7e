package roundwright.desktop.strip;

import java.util.ArrayList;
import java.util.List;
import roundwright.wording.Wording;

/** The strip told in words: for the pointer's hint and for those who listen to the window. */
final class StripWords {
    private static final Wording WORDS = Wording.of("desktop");

    private final StripPiece piece;
    private final StripMarks marks;

    StripWords(StripPiece piece, StripMarks marks) {
        this.piece = piece;
        this.marks = marks;
    }

    /** The whole piece: how many rounds, parts and lessons. */
    String whole() {
        long parts = piece.columns().stream()
                .map(column -> column.place().part())
                .distinct()
                .count();
        long lessons = piece.brackets().stream()
                .map(StripPiece.Bracket::lesson)
                .distinct()
                .count();
        return WORDS.say("strip-whole", piece.columns().size(), parts, lessons);
    }

    /** One column: the round, its count, its lesson, what is new in it, who is there. */
    String of(int index) {
        if (index < 0 || index >= piece.columns().size()) {
            return WORDS.say("strip-empty");
        }
        StripPiece.Column column = piece.columns().get(index);
        List<String> said = new ArrayList<>();
        said.add(WORDS.say("part-round", column.place().part(), column.place().round()));
        said.add(
                column.count().isPresent()
                        ? WORDS.say("stitches", column.count().getAsInt())
                        : WORDS.say("count-unknown"));
        column.across().ifPresent(across -> said.add(WORDS.say("strip-across", Math.max(1, Math.round(across / 10)))));
        piece.bracketOf(index)
                .ifPresent(bracket -> said.add(WORDS.say("strip-lesson", bracket.lesson(), bracket.name())));
        List<String> names = marks.flags().getOrDefault(index, List.of());
        if (!names.isEmpty()) {
            said.add(WORDS.say("strip-new", Wording.list(names)));
        }
        List<String> students = marks.students().getOrDefault(index, List.of());
        if (!students.isEmpty()) {
            said.add(
                    WORDS.say("strip-here", students.size(), students.size() > 6 ? "" : ": " + Wording.list(students)));
        }
        if (marks.troubles().contains(index)) {
            said.add(WORDS.say("strip-trouble"));
        }
        return String.join(" · ", said);
    }
}
