package roundwright.desktop.strip;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.wording.Wording;

/** The edges of the lesson in hand moved by a round at a time, with the keyboard. What is chosen stays in that lesson. */
final class EdgeKeys {
    private static final Wording WORDS = Wording.of("desktop");

    private LessonEdges edges = LessonEdges.FIXED;
    private OptionalInt lesson = OptionalInt.empty();

    void use(LessonEdges newEdges) {
        edges = newEdges;
    }

    /** Makes the lesson of a column begin so many rounds later. The first lesson begins where the piece does. */
    void moveStart(StripPiece piece, int chosen, int by) {
        int place = place(piece, chosen);
        if (place > 0) {
            move(piece, chosen, piece.brackets().get(place), by);
        }
    }

    /** Makes the lesson of a column end so many rounds later: the next one begins there. The last lesson has no next. */
    void moveEnd(StripPiece piece, int chosen, int by) {
        int place = place(piece, chosen);
        if (place >= 0 && place + 1 < piece.brackets().size()) {
            move(piece, chosen, piece.brackets().get(place + 1), by);
        }
    }

    private void move(StripPiece piece, int chosen, StripPiece.Bracket bracket, int by) {
        int first = bracket.from() + by;
        if (edges.movable() && first > 0 && first < piece.columns().size()) {
            lesson = piece.bracketOf(chosen).stream()
                    .mapToInt(StripPiece.Bracket::lesson)
                    .findFirst();
            edges.move(bracket.lesson(), first);
        }
    }

    private static int place(StripPiece piece, int chosen) {
        return piece.bracketOf(chosen).map(piece.brackets()::indexOf).orElse(-1);
    }

    /** The column to choose so that the lesson whose edge was moved stays in hand, where the chosen one has left it. */
    OptionalInt follow(StripPiece piece, int chosen) {
        boolean left = lesson.isPresent()
                && piece.bracketOf(chosen)
                        .filter(bracket -> bracket.lesson() == lesson.getAsInt())
                        .isEmpty();
        if (!left) {
            return OptionalInt.empty();
        }
        int wanted = lesson.getAsInt();
        lesson = OptionalInt.empty();
        List<StripPiece.Bracket> stretches = piece.brackets().stream()
                .filter(bracket -> bracket.lesson() == wanted)
                .toList();
        return stretches.stream()
                .mapToInt(bracket -> Math.max(bracket.from(), Math.min(chosen, bracket.to())))
                .reduce((one, other) -> Math.abs(one - chosen) <= Math.abs(other - chosen) ? one : other);
    }

    /** Forgets the lesson in hand: another round has been chosen. */
    void letGo() {
        lesson = OptionalInt.empty();
    }

    /** Which keys move the edges of a column's lesson, to be told after what the column shows; nothing where they stay. */
    String told(StripPiece piece, int chosen) {
        Optional<StripPiece.Bracket> bracket = piece.bracketOf(chosen).filter(found -> edges.movable());
        return bracket.map(found -> " · " + WORDS.say("strip-edge-keys")).orElse("");
    }
}
