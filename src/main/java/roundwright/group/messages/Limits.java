package roundwright.group.messages;

import java.util.List;
import java.util.Optional;
import roundwright.group.messages.Mark.Kind;

/** How far something is said to hold: "right up to round 12", "up to and including round 8 all is well". */
record Limits(List<Token> tokens, List<Mark> marks) {
    /** The round up to which a sentence says that all is right. */
    Optional<Mark> of(Mark right) {
        for (int index = 0; index < marks.size(); index++) {
            Mark mark = marks.get(index);
            boolean round = mark.is(Kind.NUMBER)
                    || mark.is(Kind.ROUNDS) && mark.rounds().size() == 1;
            if (round && upTo(mark.first()) && !says(right, mark)) {
                return Optional.of(mark);
            }
        }
        return Optional.empty();
    }

    /** Whether a count stands between what is right and the round. */
    private boolean says(Mark right, Mark end) {
        int from = Math.min(right.first(), end.first());
        int to = Math.max(right.first(), end.first());
        return marks.stream()
                .anyMatch(mark -> from < mark.first()
                        && mark.first() < to
                        && (mark.number() || mark.is(Kind.ROUNDS) || mark.is(Kind.SHIFT)));
    }

    private boolean inPart(int token) {
        return marks.stream().anyMatch(mark -> mark.is(Kind.PART) && mark.first() <= token && token < mark.after());
    }

    private boolean upTo(int at) {
        int before = at - 1;
        while (before > 0 && inPart(before)) {
            before--;
        }
        while (before > 0 && tokens.get(before).matches("and|including|incl|the|end|of|with")) {
            before--;
        }
        return before >= 0
                && (tokens.get(before).matches("until|till|til|upto|through")
                        || tokens.get(before).is("to")
                                && before > 0
                                && tokens.get(before - 1).matches("up|down|out|way|right|through|thru"));
    }
}
