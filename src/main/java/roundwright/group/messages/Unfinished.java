package roundwright.group.messages;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.group.messages.Mark.Kind;
import roundwright.notation.Span;

/**
 * A round that is still being worked: "r8 stopped at 30", "20 of round 7 so far", "I'm on 25".
 *
 * @param rounds the round, where it is named
 * @param soFar where the student stopped
 * @param used the marks that say so, which say nothing else
 */
record Unfinished(List<Integer> rounds, OptionalInt soFar, List<Mark> used, Span span) {
    /** Finds it between commas; other rounds there keep their counts. */
    static Optional<Unfinished> in(List<Mark> clause, List<Token> tokens, Known known, Optional<String> part) {
        for (int cue = 0; cue < clause.size(); cue++) {
            if (clause.get(cue).is(Kind.UNFINISHED) && !list(clause) && !heads(clause.get(cue), tokens)) {
                return Optional.of(around(clause, cue, tokens, known, part));
            }
        }
        return Optional.empty();
    }

    /** "8 / 16 / 24 so far": one round after another, and all of them done. */
    private static boolean list(List<Mark> clause) {
        return clause.stream().filter(Mark::number).count() > 2
                && clause.stream().noneMatch(mark -> mark.is(Kind.ROUNDS));
    }

    /** "Round 13 so far: …" heads a list. */
    private static boolean heads(Mark cue, List<Token> tokens) {
        return cue.after() < tokens.size()
                && tokens.get(cue.after()).is(":")
                && tokens.get(cue.after() - 1).matches("far|now");
    }

    private static Unfinished around(
            List<Mark> clause, int cue, List<Token> tokens, Known known, Optional<String> part) {
        int label = label(clause, cue);
        List<Mark> stretch = clause.subList(
                label >= 0 && label < cue ? label : after(clause, cue), next(clause, Math.max(cue, label)));
        List<Mark> numbers = stretch.stream().filter(Mark::number).toList();
        boolean bare = label < 0
                && !numbers.isEmpty()
                && (Cues.onRound(tokens, numbers.get(0).first()) || justAfter(clause.get(cue), numbers.get(0), tokens))
                && known.has(part, numbers.get(0).value());
        List<Mark> counts = bare ? numbers.subList(1, numbers.size()) : numbers;
        List<Integer> rounds = label >= 0
                ? clause.get(label).rounds()
                : bare ? List.of(numbers.get(0).value()) : List.of();
        OptionalInt soFar = counts.stream()
                .filter(number -> !left(number, tokens))
                .mapToInt(Mark::value)
                .max();
        List<Mark> used = stretch.stream()
                .filter(mark -> mark.number() || mark.is(Kind.ROUNDS))
                .toList();
        return new Unfinished(
                rounds,
                soFar,
                used,
                stretch.get(0).span().to(stretch.get(stretch.size() - 1).span()));
    }

    /** "Not started 14", but not "stopped at 14". */
    private static boolean justAfter(Mark cue, Mark number, List<Token> tokens) {
        return number.number()
                && cue.after() == number.first()
                && !tokens.get(cue.after() - 1).matches("at|to|in|into|as|done|far|of");
    }

    /** "Ten to go": what is left, not what there is. */
    private static boolean left(Mark number, List<Token> tokens) {
        return number.after() < tokens.size() && tokens.get(number.after()).matches("to|left|more|till|until");
    }

    /** The rounds named last before the cue, else first after it; -1 where none are. */
    private static int label(List<Mark> clause, int cue) {
        for (int index = cue; index >= 0; index--) {
            if (clause.get(index).is(Kind.ROUNDS)) {
                return index;
            }
        }
        for (int index = cue; index < clause.size(); index++) {
            if (clause.get(index).is(Kind.ROUNDS)) {
                return index;
            }
        }
        return -1;
    }

    private static int after(List<Mark> clause, int cue) {
        return clause.stream().limit(cue).anyMatch(mark -> mark.is(Kind.ROUNDS)) ? cue : 0;
    }

    /** The next rounds, of which other things are said. */
    private static int next(List<Mark> clause, int from) {
        int next = from + 1;
        while (next < clause.size() && !clause.get(next).is(Kind.ROUNDS)) {
            next++;
        }
        return next;
    }
}
