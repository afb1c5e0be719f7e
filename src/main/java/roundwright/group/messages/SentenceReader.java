package roundwright.group.messages;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import roundwright.group.messages.Mark.Kind;
import roundwright.notation.Span;

/** Reads one sentence: first what is bound together by a small word ("36 on round 6"), then run after run. */
final class SentenceReader {
    private static final Set<String> BINDING = Set.of("on", "in", "for", "at", "after", "(", "by", "@");
    private static final Set<String> BETWEEN = Set.of(
            "the",
            "end",
            "of",
            "my",
            "so",
            "now",
            "stitches",
            "sts",
            "st",
            "stiches",
            "and",
            "a",
            "finishing",
            "doing",
            "with",
            "to");

    private final MessageReader message;
    private final Known known;
    private final List<Token> tokens;
    private final List<Mark> marks;
    private final Set<Mark> used = new HashSet<>();
    private final Map<Mark, Mark> bound = new HashMap<>();
    private Run run = new Run();
    private boolean pulledBack;
    private boolean partAfter;

    SentenceReader(MessageReader message, Known known, List<Token> tokens, List<Mark> marks) {
        this.message = message;
        this.known = known;
        this.tokens = tokens;
        this.marks = marks;
    }

    void read() {
        everybody();
        until();
        bindings();
        countsFirst();
        for (Mark mark : marks) {
            if (bound.containsKey(mark)) {
                flush();
                bind(mark, bound.get(mark));
            } else if (!used.contains(mark)) {
                take(mark);
            }
        }
        flush();
        if (pulledBack && marks.stream().noneMatch(Mark::number)) {
            marks.stream()
                    .filter(mark -> mark.is(Kind.PULLED_BACK))
                    .findFirst()
                    .ifPresent(mark -> message.set(Unplaced.Reason.PULLED_BACK, message.pending(), mark.span()));
        }
        marks.stream()
                .filter(mark -> mark.is(Kind.ALL_RIGHT))
                .findFirst()
                .ifPresent(mark -> message.set(Unplaced.Reason.ALL_RIGHT, List.of(), mark.span()));
    }

    /** "Bram and I both got 30", "we both". */
    private void everybody() {
        boolean both =
                marks.stream().anyMatch(mark -> mark.is(Kind.ALL) && mark.text().equals("both"));
        List<String> names = marks.stream()
                .filter(mark -> mark.is(Kind.NAME))
                .map(Mark::text)
                .distinct()
                .toList();
        boolean andI = marks.stream()
                        .anyMatch(mark -> mark.is(Kind.SELF) && mark.text().matches("i|me|mine"))
                || IntStream.range(0, tokens.size())
                        .anyMatch(at -> tokens.get(at).is("we"));
        if (!both || names.isEmpty()) {
            return;
        }
        List<String> all =
                new ArrayList<>(andI || names.size() == 1 ? message.speaker().students() : List.of());
        names.stream().filter(name -> !all.contains(name)).forEach(all::add);
        message.speakingOf(all);
        marks.stream().filter(mark -> mark.is(Kind.NAME) || mark.is(Kind.SELF)).forEach(used::add);
    }

    /** "All 42 until nine": the rounds up to that one of which the pattern says so. A round that only ends a stretch gets no count. */
    private void until() {
        for (int index = 0; index + 1 < marks.size(); index++) {
            Mark end = marks.get(index + 1);
            if (marks.get(index).is(Kind.UNTIL) && (end.is(Kind.NUMBER) || end.is(Kind.ROUNDS))) {
                used.add(end);
                int last = end.is(Kind.NUMBER)
                        ? end.value()
                        : end.rounds().get(end.rounds().size() - 1);
                List<Mark> numbers = marks.stream()
                        .filter(mark -> mark.number() && !mark.equals(end) && mark.first() < end.first())
                        .toList();
                boolean others = marks.stream().anyMatch(mark -> mark.is(Kind.ROUNDS) && !mark.equals(end));
                if (numbers.size() == 1 && !others) {
                    used.add(numbers.get(0));
                    untilRound(numbers.get(0), last, end);
                }
            }
        }
    }

    private void untilRound(Mark count, int last, Mark end) {
        int first = last;
        while (known.near(message.part(), first, count.value(), 0)
                && known.near(message.part(), first - 1, count.value(), 0)) {
            first--;
        }
        if (known.near(message.part(), last, count.value(), 0)) {
            message.file(
                    first,
                    last,
                    count.value(),
                    pulledBack,
                    Sureness.UNTIL,
                    count.span().to(end.span()));
        } else {
            message.set(Unplaced.Reason.NO_ROUND, List.of(last), count.span());
        }
    }

    private void bindings() {
        boolean open = false;
        for (int index = 0; index + 1 < marks.size(); index++) {
            Mark mark = marks.get(index);
            if (mark.is(Kind.ROUNDS)) {
                open = !used.contains(mark);
            } else if ((mark.number() || mark.is(Kind.SHIFT)) && !used.contains(mark)) {
                boolean bound = !open && bound(mark, index);
                open = false;
                if (bound) {
                    continue;
                }
            }
        }
    }

    private boolean bound(Mark count, int index) {
        Optional<Mark> next = marks.subList(index + 1, marks.size()).stream()
                .filter(mark -> !mark.is(Kind.TARGET)
                        && !(mark.is(Kind.JOINT) && mark.text().equals("(")))
                .findFirst();
        if (next.isEmpty() || used.contains(next.get()) || !binds(count, next.get())) {
            return false;
        }
        if (next.get().is(Kind.ROUNDS) && countFollows(next.get())) {
            return false;
        }

        used.add(next.get());
        bound.put(count, next.get());
        return true;
    }

    /** "30 for r5 36 …": the round already has its own count after it. */
    private boolean countFollows(Mark rounds) {
        int index = marks.indexOf(rounds);
        return index + 1 < marks.size()
                && marks.get(index + 1).number()
                && marks.get(index + 1).first() == rounds.after();
    }

    private boolean binds(Mark count, Mark next) {
        boolean word = false;
        for (int at = afterTarget(count); at < next.first(); at++) {
            String between = tokens.get(at).folded();
            word |= BINDING.contains(between);
            if (!BINDING.contains(between) && !BETWEEN.contains(between)) {
                return false;
            }
        }
        if (next.is(Kind.ROUNDS)) {
            return word || count.is(Kind.SHIFT) && count.after() == next.first();
        }
        boolean fits = count.is(Kind.SHIFT)
                ? known.has(message.part(), next.value())
                : known.near(message.part(), next.value(), count.value(), 4);
        return next.is(Kind.NUMBER) && word && fits;
    }

    /** "35 out of 36 on round 6": the count that is due stands between. */
    private int afterTarget(Mark count) {
        return marks.stream()
                .filter(mark -> mark.is(Kind.TARGET) && mark.first() == count.after())
                .mapToInt(Mark::after)
                .findFirst()
                .orElse(count.after());
    }

    private void bind(Mark count, Mark label) {
        List<Integer> rounds = label.is(Kind.ROUNDS) ? label.rounds() : List.of(label.value());
        if (count.is(Kind.SHIFT)) {
            rounds.forEach(round -> shifted(round, count, Sureness.SHIFT));
        } else {
            file(
                    rounds,
                    count.value(),
                    pulledBefore(count),
                    Sureness.BOUND * doubt(),
                    count.span().to(label.span()));
        }
        message.pending(rounds);
    }

    private boolean pulledBefore(Mark count) {
        return marks.stream()
                .anyMatch(mark -> mark.is(Kind.PULLED_BACK) && (mark.first() < count.first() || afterPulling(mark)));
    }

    private boolean afterPulling(Mark pulled) {
        return IntStream.range(Math.max(0, pulled.first() - 3), pulled.first())
                .anyMatch(at -> List.of("after", "(", "once", "having")
                        .contains(tokens.get(at).folded()));
    }

    /** "30 r5, 36 r6": every count before its round. */
    private void countsFirst() {
        List<Mark> said = marks.stream()
                .filter(mark ->
                        !used.contains(mark) && !bound.containsKey(mark) && (mark.number() || mark.is(Kind.ROUNDS)))
                .toList();
        boolean turns = !said.isEmpty()
                && said.size() % 2 == 0
                && message.pending().isEmpty()
                && IntStream.range(0, said.size())
                        .allMatch(index -> said.get(index).number() == (index % 2 == 0))
                && IntStream.range(0, said.size() / 2)
                        .allMatch(pair -> near(said.get(2 * pair), said.get(2 * pair + 1)));
        if (turns) {
            for (int index = 0; index < said.size(); index += 2) {
                used.add(said.get(index + 1));
                bound.put(said.get(index), said.get(index + 1));
            }
        }
    }

    private boolean near(Mark count, Mark label) {
        return label.first() - count.after() <= 3
                && label.rounds().stream()
                        .allMatch(round -> Sureness.possible(known, message.part(), round, count.value()));
    }

    private void take(Mark mark) {
        switch (mark.kind()) {
            case ROUNDS -> rounds(mark);
            case NAME -> name(mark);
            case SELF -> self(mark);
            case OTHER -> other();
            case PART -> part(mark);
            case PULLED_BACK -> {
                pulledBack = true;
                run.add(mark);
            }
            case SAME -> {
                if (!run.numbers().isEmpty()) {
                    flush();
                }
                run.add(mark);
            }
            case NUMBER -> number(mark);
            default -> run.add(mark);
        }
    }

    private void number(Mark mark) {
        if (!pullTarget(mark)) {
            run.add(mark);
        }
    }

    private void rounds(Mark mark) {
        if (pullTarget(mark)) {
            flush();
            message.pending(mark.rounds());
            return;
        }
        boolean goesOn = run.numbers().isEmpty() && (run.rounds().isEmpty() || run.saysNothing() && run.endsInJoint());
        if (!goesOn) {
            flush();
        }
        run.add(mark);
    }

    /** "Pulled back to round 8": where the work stands, not what was counted. */
    private boolean pullTarget(Mark mark) {
        int at = mark.first() - 1;
        boolean to = at >= 0 && tokens.get(at).folded().matches("to|until|till");
        int end = to ? at : mark.first();
        return Cues.before(Cue.PULLED_BACK, tokens, end) && (to || mark.number())
                || to && Cues.before(Cue.PULLED_BACK, tokens, at - 1);
    }

    private void name(Mark mark) {
        if (!vocative(mark)) {
            flush();
            message.speakingOf(mark);
        }
    }

    private boolean vocative(Mark mark) {
        boolean addressed = Cues.before(Cue.VOCATIVE, tokens, mark.first())
                || word(mark.first() - 1).equals("@");
        boolean called = !message.speaker().students().isEmpty()
                && (word(mark.after()).equals(",") && Spoken.begin(marks, tokens) == mark.first()
                        || word(mark.first() - 1).equals(",")
                                && (mark.after() >= tokens.size() || ".!?\n".contains(word(mark.after()))));
        return addressed || called;
    }

    private void self(Mark mark) {
        boolean andI = word(mark.first() - 1).matches("and|&");
        boolean sender =
                message.student().equals(message.speaker().students().stream().findFirst());
        if (!andI && !sender && mark.text().matches("mine|my|i|im|ive")) {
            flush();
            message.speakingOfSelf();
        }
    }

    private void other() {
        if (message.named().isPresent() && !message.named().equals(message.student())) {
            flush();
            message.speakingOf(List.of(message.named().get()));
        }
    }

    private void part(Mark mark) {
        boolean said = !run.numbers().isEmpty();
        if (said && (partAfter || message.part().isEmpty())) {
            partAfter = true;
            message.part(mark.text());
            flush();
            return;
        }
        if (said) {
            flush();
        }
        message.part(mark.text());
    }

    private void flush() {
        Run finished = run;
        run = new Run();
        if (finished.empty()) {
            return;
        }
        boolean labelled = !finished.rounds().isEmpty();
        if (labelled && finished.saysNothing()) {
            message.pending(List.copyOf(finished.rounds()));
        } else {
            new RunReader(this, message, known, finished).read();
            if (labelled) {
                message.pending(List.copyOf(finished.rounds()));
            }
        }
    }

    void shifted(int round, Mark shift, double sureness) {
        OptionalInt expected = known.expected(message.part(), round);
        if (expected.isEmpty()) {
            message.set(Unplaced.Reason.UNCLEAR, List.of(round), shift.span());
        } else {
            message.file(
                    round,
                    round,
                    Math.max(0, expected.getAsInt() + shift.value()),
                    pulledBefore(shift),
                    sureness * doubt(),
                    shift.span());
        }
    }

    /** Files one count for some rounds: as one stretch where they follow one another. */
    void file(List<Integer> rounds, int count, boolean pulled, double sureness, Span span) {
        int from = 0;
        for (int index = 1; index <= rounds.size(); index++) {
            if (index == rounds.size() || rounds.get(index) != rounds.get(index - 1) + 1) {
                message.file(rounds.get(from), rounds.get(index - 1), count, pulled, sureness, span);
                from = index;
            }
        }
    }

    boolean pulled(Mark count) {
        return pulledBefore(count);
    }

    double doubt() {
        return marks.stream().anyMatch(mark -> mark.is(Kind.DOUBT)) ? Sureness.DOUBT : 1;
    }

    /** Whether a word stands between two marks that makes the second the count of the first. */
    boolean tells(Mark label, Mark count) {
        return IntStream.range(label.after(), count.first())
                .anyMatch(at -> tokens.get(at)
                        .folded()
                        .matches("[:=)>→–-]|is|was|has|had|have|got|came|gives|made|makes|with|ended|at"));
    }

    private String word(int at) {
        return at >= 0 && at < tokens.size() ? tokens.get(at).folded() : "";
    }
}
