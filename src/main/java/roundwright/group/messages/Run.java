package roundwright.group.messages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import roundwright.group.messages.Mark.Kind;
import roundwright.notation.Span;

/** Rounds and what is said of them until the next rounds come: "r12 was 37, then 36 after I pulled back". */
final class Run {
    private final List<Integer> rounds = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private Optional<Mark> label = Optional.empty();

    List<Integer> rounds() {
        return rounds;
    }

    void add(Mark mark) {
        if (mark.is(Kind.ROUNDS)) {
            rounds.addAll(mark.rounds());
            label = Optional.of(mark);
        }
        marks.add(mark);
    }

    /** Whether a small word leads to what is said: "so 42". */
    boolean startsWith(String joint) {
        int first = IntStream.range(0, marks.size())
                .filter(index -> marks.get(index).number())
                .findFirst()
                .orElse(0);
        return first > 0
                && marks.get(first - 1).is(Kind.JOINT)
                && marks.get(first - 1).text().equals(joint);
    }

    boolean empty() {
        return marks.isEmpty();
    }

    List<Mark> numbers() {
        return marks.stream().filter(Mark::number).toList();
    }

    Optional<Mark> first(Kind kind) {
        return marks.stream().filter(mark -> mark.is(kind)).findFirst();
    }

    List<Mark> all(Kind kind) {
        return marks.stream().filter(mark -> mark.is(kind)).toList();
    }

    boolean has(Kind kind) {
        return first(kind).isPresent();
    }

    boolean saysNothing() {
        return numbers().isEmpty()
                && !has(Kind.SHIFT)
                && !has(Kind.UNCLEAR_SHIFT)
                && !has(Kind.RIGHT)
                && !has(Kind.ALL_RIGHT)
                && !has(Kind.SAME);
    }

    /** Whether a mark of this kind stands between two others. */
    boolean between(Mark left, Mark right, Kind kind) {
        return marks.stream()
                .anyMatch(mark -> mark.is(kind) && left.after() <= mark.first() && mark.first() < right.first());
    }

    boolean joint(Mark left, Mark right, String... joints) {
        List<String> wanted = List.of(joints);
        return marks.stream()
                .anyMatch(mark -> mark.is(Kind.JOINT)
                        && left.after() <= mark.first()
                        && mark.first() < right.first()
                        && wanted.contains(mark.text()));
    }

    /** Whether the rounds are named before a mark. */
    boolean labelBefore(Mark mark) {
        return label.map(rounds -> rounds.first() < mark.first()).orElse(false);
    }

    /** Whether only signs and small words that join stand after the rounds. */
    boolean endsInJoint() {
        return marks.stream()
                .skip(labelPlace() + 1)
                .allMatch(mark -> mark.is(Kind.JOINT) && !mark.text().equals("\n"));
    }

    private int labelPlace() {
        return label.map(marks::indexOf).orElse(-1);
    }

    Span span(Mark to) {
        return label.map(mark -> mark.span().to(to.span())).orElse(to.span());
    }
}
