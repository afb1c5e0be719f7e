package roundwright.group.messages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import roundwright.group.messages.Mark.Kind;

/**
 * Rounds in a row that are named without the word: "7, 8, 9 = 42", "7 to 9 are 42", "42 on 7, 8 and 9". They are numbers that follow
 * one another, with a count beside them that fits them all.
 */
final class BareLabels {
    private static final String RANGE =
            "-|–|—|to|till|until|through|thru|up to|through to|up until|right through to|all the way to|thru to";
    private static final int NEAR = 4;
    private static final int MOST = 60;

    private final List<Mark> marks;
    private final List<Token> tokens;
    private final Known known;

    private BareLabels(List<Mark> marks, List<Token> tokens, Known known) {
        this.marks = marks;
        this.tokens = tokens;
        this.known = known;
    }

    /** Puts a mark for the rounds in the place of their numbers. */
    static void find(List<Mark> marks, List<Token> tokens, Known known) {
        BareLabels labels = new BareLabels(marks, tokens, known);
        for (int index = 0; index < marks.size(); index++) {
            if (marks.get(index).is(Kind.NUMBER)) {
                labels.replace(index);
            }
        }
    }

    private void replace(int from) {
        List<Integer> rounds = new ArrayList<>(List.of(marks.get(from).value()));
        int last = from;
        for (int next = following(last); next > 0 && goesOn(rounds, last, next); next = following(last)) {
            boolean range = Shape.matches(between(last, next), RANGE);
            int value = marks.get(next).value();
            rounds.addAll(IntStream.rangeClosed(range ? rounds.get(rounds.size() - 1) + 1 : value, value)
                    .boxed()
                    .toList());
            last = next;
        }
        if (rounds.size() > 1
                && rounds.stream().allMatch(known::has)
                && (counted(rounds, from, last) || pulledBack(from))) {
            Mark label = new Mark(
                    Kind.ROUNDS,
                    List.copyOf(rounds),
                    0,
                    "",
                    marks.get(from).span().to(marks.get(last).span()),
                    marks.get(from).first(),
                    marks.get(last).after());
            marks.subList(from, last + 1).clear();
            marks.add(from, label);
        }
    }

    /** The place of the next number, if only what joins numbers stands before it; else 0. */
    private int following(int index) {
        int next = index + 1;
        while (next < marks.size()
                && (marks.get(next).is(Kind.JOINT) || marks.get(next).is(Kind.UNTIL))
                && next - index <= 3) {
            next++;
        }
        return next < marks.size() && marks.get(next).is(Kind.NUMBER) ? next : 0;
    }

    private boolean goesOn(List<Integer> rounds, int left, int right) {
        int last = rounds.get(rounds.size() - 1);
        int value = marks.get(right).value();
        String joint = between(left, right);
        boolean list = Shape.matches(joint, ",|/|and|&|\\+|, ?and|n")
                && (value == last + 1 || value == last - 1 && pulledBack(left));
        boolean range = Shape.matches(joint, RANGE) && value > last && value - last < MOST;
        return list || range;
    }

    private String between(int left, int right) {
        StringBuilder words = new StringBuilder();
        for (int at = marks.get(left).after(); at < marks.get(right).first(); at++) {
            if (inPart(at)) {
                continue;
            }
            words.append(words.isEmpty() ? "" : " ").append(tokens.get(at).folded());
        }
        return words.toString();
    }

    private boolean inPart(int token) {
        return marks.stream().anyMatch(mark -> mark.is(Kind.PART) && mark.first() <= token && token < mark.after());
    }

    /** "Unpicked 33 and 34": rounds, not counts. */
    private boolean pulledBack(int from) {
        return IntStream.rangeClosed(0, from)
                .mapToObj(index -> marks.get(from - index))
                .dropWhile(mark -> mark.is(Kind.NUMBER) || mark.is(Kind.JOINT))
                .findFirst()
                .filter(mark ->
                        mark.is(Kind.PULLED_BACK) && !tokens.get(mark.after()).is(":"))
                .filter(mark -> tokens.get(mark.after()).number())
                .isPresent();
    }

    /** The place of the number before, with no more than the name of a part between; else -1. */
    private int before(int index) {
        int before = index - 1;
        while (before >= 0 && marks.get(before).is(Kind.PART)) {
            before--;
        }
        return before >= 0 && marks.get(before).number() ? before : -1;
    }

    /** Whether a count for all of them stands after a word that tells it, or before a word that ties it to them. */
    private boolean counted(List<Integer> rounds, int from, int last) {
        int next = last + 1;
        while (next < marks.size()
                && (marks.get(next).is(Kind.JOINT)
                        || marks.get(next).is(Kind.ALL)
                        || marks.get(next).is(Kind.QUESTION_WORD)
                        || marks.get(next).is(Kind.RIGHT)
                        || marks.get(next).is(Kind.ALL_RIGHT)
                        || marks.get(next).is(Kind.END) && next == last + 1)) {
            next++;
        }
        boolean after =
                next < marks.size() && marks.get(next).number() && tells(last, next) && fits(rounds, marks.get(next));
        int count = before(from);
        boolean before = count >= 0
                && Shape.matches(between(count, from), "(on|for|in|at|from|between)( the)?")
                && fits(rounds, marks.get(count));
        boolean right = IntStream.range(last + 1, Math.min(next + 1, marks.size()))
                .anyMatch(at -> marks.get(at).is(Kind.RIGHT) || marks.get(at).is(Kind.ALL_RIGHT));
        return right || after || before || inPairs(rounds, next);
    }

    /** "1-4: 6, 12, 18, 24": as many counts as rounds, each for its own. */
    private boolean inPairs(List<Integer> rounds, int first) {
        List<Mark> counts = new ArrayList<>();
        for (int at = first;
                at < marks.size()
                        && (marks.get(at).is(Kind.JOINT) || marks.get(at).number());
                at++) {
            if (marks.get(at).number()) {
                counts.add(marks.get(at));
            }
        }
        return counts.size() == rounds.size()
                && IntStream.range(0, counts.size())
                        .allMatch(index -> known.near(
                                Optional.empty(),
                                rounds.get(index),
                                counts.get(index).value(),
                                3));
    }

    private boolean tells(int label, int count) {
        return between(label, count)
                .matches(
                        ".*(=|:|→|>|-|–|\\bis\\b|\\bare\\b|\\bwas\\b|\\bwere\\b|\\bhave\\b|\\bhas\\b|\\ball\\b|\\bboth\\b|\\beach\\b|\\bgot\\b).*");
    }

    private boolean fits(List<Integer> rounds, Mark count) {
        return rounds.stream().allMatch(round -> known.near(Optional.empty(), round, count.value(), NEAR));
    }
}
