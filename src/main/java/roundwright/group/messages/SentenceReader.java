package roundwright.group.messages;

import java.util.ArrayList;
import java.util.Collections;
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
    private final MessageReader message;
    private final Known known;
    private final List<Token> tokens;
    private final List<Mark> marks;
    private final Set<Mark> used = new HashSet<>();
    private final Map<Mark, Mark> bound = new HashMap<>();
    private final Pulling pulling;
    private Run run = new Run();
    private boolean pulledBack;
    private boolean partAfter;
    private boolean rightSaid;

    SentenceReader(MessageReader message, Known known, List<Token> tokens, List<Mark> marks) {
        this.message = message;
        this.known = known;
        this.tokens = tokens;
        this.marks = marks;
        this.pulling = new Pulling(message, tokens, marks);
    }

    void read() {
        if (marks.isEmpty()) {
            return;
        }
        everybody();
        rightUpTo();
        until();
        trailingPart();
        bound.putAll(new Bindings(message, known, tokens, marks, used).find());
        for (Mark mark : marks) {
            if (bound.containsKey(mark)) {
                flush();
                bind(mark, bound.get(mark));
            } else if (!used.contains(mark)) {
                take(mark);
            }
        }
        flush();
        message.pulledBack(pulledBack && pulling.leavesCountOpen());
        if (pulledBack && marks.stream().noneMatch(Mark::number)) {
            marks.stream()
                    .filter(mark -> mark.is(Kind.PULLED_BACK))
                    .findFirst()
                    .ifPresent(mark -> message.set(Unplaced.Reason.PULLED_BACK, message.pending(), mark.span()));
        }
        if (!rightSaid) {
            marks.stream()
                    .filter(mark -> mark.is(Kind.ALL_RIGHT) && !used.contains(mark))
                    .findFirst()
                    .ifPresent(mark -> message.set(Unplaced.Reason.ALL_RIGHT, List.of(), mark.span()));
        }
    }

    /** "All right up to round 12", "up to 12 all is as it should be": the rounds from the first on. */
    private void rightUpTo() {
        Optional<Mark> right = marks.stream()
                .filter(mark -> mark.is(Kind.ALL_RIGHT) || mark.is(Kind.RIGHT))
                .findFirst();
        Optional<Mark> end = right.flatMap(mark -> new Limits(tokens, marks).of(mark));
        if (end.isPresent()) {
            int last = end.get().is(Kind.NUMBER)
                    ? end.get().value()
                    : Collections.max(end.get().rounds());
            marks.stream()
                    .filter(mark ->
                            mark.is(Kind.PART) && mark.first() < end.get().first())
                    .findFirst()
                    .ifPresent(part -> message.part(part.text()));
            if (known.has(message.part(), last)) {
                used.add(end.get());
                used.add(right.get());
                rightSaid = true;
                List<Integer> rounds = IntStream.rangeClosed(1, last).boxed().toList();
                message.allRight(rounds, right.get().span().to(end.get().span()));
            }
        }
    }

    /** "Bram and I both got 30", "we both". */
    private void everybody() {
        List<Mark> group = together();
        List<String> names = group.stream()
                .filter(mark -> mark.is(Kind.NAME))
                .map(Mark::text)
                .distinct()
                .toList();
        boolean andI = group.stream().anyMatch(mark -> mark.is(Kind.SELF) && Shape.matches(mark.text(), "i|me|mine"))
                || IntStream.range(
                                marks.get(0).first(),
                                marks.get(marks.size() - 1).after())
                        .anyMatch(at -> tokens.get(at).is("we"));
        if (names.isEmpty()) {
            return;
        }
        List<String> all =
                new ArrayList<>(andI || names.size() == 1 ? message.speaker().students() : List.of());
        names.stream().filter(name -> !all.contains(name)).forEach(all::add);
        message.speakingOf(all);
        group.stream().filter(mark -> mark.is(Kind.NAME) || mark.is(Kind.SELF)).forEach(used::add);
    }

    /** What stands near "both", on the side of a count where it stands itself; nothing where nobody says "both". */
    private List<Mark> together() {
        int both = IntStream.range(0, marks.size())
                .filter(index ->
                        marks.get(index).is(Kind.ALL) && marks.get(index).text().equals("both"))
                .findFirst()
                .orElse(-1);
        if (both < 0) {
            return List.of();
        }
        int from = both;
        while (from > 0 && !marks.get(from - 1).number() && !marks.get(from - 1).is(Kind.ROUNDS)) {
            from--;
        }
        int to = both;
        while (to < marks.size() && !marks.get(to).number()) {
            to++;
        }
        List<Mark> near = marks.subList(from, to);
        return near.stream().anyMatch(mark -> mark.is(Kind.NAME)) ? near : marks;
    }

    /** "All 42 until nine": the rounds up to that one of which the pattern says so. A round that only ends a stretch gets no count. */
    private void until() {
        for (int index = 0; index + 1 < marks.size(); index++) {
            Mark end = marks.get(index + 1);
            if (marks.get(index).is(Kind.UNTIL)
                    && !used.contains(end)
                    && (end.is(Kind.NUMBER) || end.is(Kind.ROUNDS))) {
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
            Said said = new Said(count.value(), pulledBack, Sureness.UNTIL, true);
            message.file(first, last, said, count.span().to(end.span()));
        } else {
            message.set(Unplaced.Reason.NO_ROUND, List.of(last), count.span());
        }
    }

    /** "r1 5, r2 8 left ear": a part named at the end is that of the whole sentence. */
    private void trailingPart() {
        List<Mark> parts = marks.stream().filter(mark -> mark.is(Kind.PART)).toList();
        if (parts.isEmpty() || !message.partMayFollow()) {
            return;
        }
        Mark part = parts.get(0);
        int next = parts.size() > 1 ? parts.get(1).first() : Integer.MAX_VALUE;
        boolean last = marks.stream()
                .filter(mark -> part.first() < mark.first() && mark.first() < next)
                .noneMatch(mark -> mark.number() || mark.is(Kind.ROUNDS) || mark.is(Kind.SHIFT));
        boolean after =
                marks.stream().anyMatch(mark -> mark.first() < part.first() && (mark.number() || mark.is(Kind.SHIFT)));
        if (last && after) {
            used.add(part);
            message.partAfter(part.text());
        }
    }

    /** "30 for Shira's round 13". */
    private void ownerOf(Mark count, Mark label) {
        marks.stream()
                .filter(mark -> mark.is(Kind.NAME) && count.after() <= mark.first() && mark.after() <= label.first())
                .findFirst()
                .ifPresent(message::speakingOf);
    }

    private void bind(Mark count, Mark label) {
        ownerOf(count, label);
        partOf(count, label);
        List<Integer> rounds = label.is(Kind.ROUNDS) ? label.rounds() : List.of(label.value());
        if (count.is(Kind.UNCLEAR_SHIFT)) {
            message.set(Unplaced.Reason.UNCLEAR, rounds, count.span().to(label.span()));
        } else if (count.is(Kind.SHIFT)) {
            rounds.forEach(round -> shifted(round, count, Sureness.SHIFT));
        } else {
            double sureness = orBefore(count) ? Sureness.EITHER : Sureness.BOUND * doubt();
            Said said = new Said(count.value(), pulling.before(count), sureness, false);
            file(rounds, said, count.span().to(label.span()));
        }
        message.pending(rounds);
    }

    private boolean smallWords(int from, int to) {
        return IntStream.range(from, to)
                .allMatch(at -> tokens.get(at).matches("of|on|the|my|in|\\(|for|his|her|s|:|,"));
    }

    /** "35 on round 5 of the body", "12 in lantern round 2". */
    private void partOf(Mark count, Mark label) {
        marks.stream()
                .filter(mark -> mark.is(Kind.PART))
                .filter(part -> part.after() <= label.first()
                        ? part.first() >= count.after() && smallWords(part.after(), label.first())
                        : smallWords(label.after(), part.first()))
                .findFirst()
                .ifPresent(part -> message.part(part.text()));
    }

    private boolean orBefore(Mark count) {
        int index = marks.indexOf(count);
        int start = index;
        while (start > 0 && !marks.get(start - 1).number()) {
            start--;
        }
        return start > 0 && marks.subList(start, index).stream().anyMatch(mark -> mark.is(Kind.OR));
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
            case ALL_RIGHT, RIGHT -> right(mark);
            case NUMBER -> number(mark);
            default -> run.add(mark);
        }
    }

    /** "Rounds 1-7 all good, 8 gave me 41": what follows may be of other rounds. */
    private void right(Mark mark) {
        run.add(mark);
        if (run.rounds().size() > 1 && run.numbers().isEmpty()) {
            List<Integer> rounds = List.copyOf(run.rounds());
            flush();
            message.pending(rounds);
        }
    }

    private void number(Mark mark) {
        if (!pulling.isTarget(mark)) {
            run.add(mark);
        } else if (Shape.matches(word(mark.first() - 1), "to|of|until|till")
                && known.has(message.part(), mark.value())) {
            flush();
            message.pending(List.of(mark.value()));
            message.pulledTo(mark.value());
        }
    }

    private void rounds(Mark mark) {
        if (pulling.isTarget(mark)) {
            flush();
            message.pending(mark.rounds());
            message.pulledTo(mark.rounds().get(mark.rounds().size() - 1));
            return;
        }
        boolean goesOn = run.numbers().isEmpty()
                && (run.rounds().isEmpty() || run.saysNothing() && run.endsInJoint() && onlyJoints(mark));
        if (!goesOn) {
            flush();
        }
        run.add(mark);
    }

    /** "r8 & r9", "r8 done and r9 done": nothing else is said of the rounds before. */
    private boolean onlyJoints(Mark label) {
        int at = label.first() - 1;
        while (at >= 0 && tokens.get(at).matches("and|then|also|both|the|done|finished|[,&+/:-]|plus|with|for")) {
            at--;
        }
        int end = at + 1;
        return marks.stream().anyMatch(mark -> mark.is(Kind.ROUNDS) && mark.after() == end);
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
        boolean andI = Shape.matches(mark.text(), "i|me") && Shape.matches(word(mark.first() - 1), "and|&");
        boolean sender =
                message.student().equals(message.speaker().students().stream().findFirst());
        if (!andI && !sender && Shape.matches(mark.text(), "mine|my|i|im|ive")) {
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
            countBefore(finished.rounds());
        } else {
            rightSaid |= labelled && finished.has(Kind.ALL_RIGHT);
            new RunReader(this, message, known, finished).read();
            if (labelled) {
                message.pending(List.copyOf(finished.rounds()));
            }
        }
    }

    /** "42!!! (that's round 8)": the round comes a sentence after its count. */
    private void countBefore(List<Integer> rounds) {
        Optional<Mark> count = message.takeLoose()
                .filter(number ->
                        rounds.stream().allMatch(round -> known.near(message.part(), round, number.value(), 2)));
        count.ifPresent(number -> {
            Said said = new Said(number.value(), pulling.before(number), Sureness.LATER * doubt(), false);
            file(rounds, said, number.span());
        });
    }

    void shifted(int round, Mark shift, double sureness) {
        OptionalInt expected = known.expected(message.part(), round);
        if (expected.isEmpty()) {
            message.set(Unplaced.Reason.UNCLEAR, List.of(round), shift.span());
        } else {
            int count = Math.max(0, expected.getAsInt() + shift.value());
            Said said = new Said(count, pulling.before(shift), sureness * doubt(), false);
            message.file(round, round, said, shift.span());
        }
    }

    /** Files one count for some rounds: as one stretch where they follow one another. */
    void file(List<Integer> rounds, Said said, Span span) {
        int from = 0;
        for (int index = 1; index <= rounds.size(); index++) {
            if (index == rounds.size() || rounds.get(index) != rounds.get(index - 1) + 1) {
                message.file(rounds.get(from), rounds.get(index - 1), said, span);
                from = index;
            }
        }
    }

    boolean corrects() {
        return marks.stream().anyMatch(mark -> mark.is(Kind.CORRECTION));
    }

    boolean pulled(Mark count) {
        return pulling.before(count);
    }

    double doubt() {
        boolean another =
                marks.stream().anyMatch(mark -> mark.is(Kind.OR) && mark.text().equals("relative"));
        return another ? Sureness.EITHER : marks.stream().anyMatch(mark -> mark.is(Kind.DOUBT)) ? Sureness.DOUBT : 1;
    }

    /** Whether a word stands between two marks that makes the second the count of the first. */
    boolean tells(Mark label, Mark count) {
        return IntStream.range(label.after(), count.first())
                .anyMatch(
                        at -> tokens.get(at)
                                .matches(
                                        "[:=)>→–-]|is|was|has|had|have|got|came|gives|gave|made|makes|with|ended|at|mended|fixed|sorted|corrected|repaired|redone"));
    }

    /** "was 41, is 42 now", "first 41, then 42", "41 -> 42": whether the second of two counts is the one that holds. */
    boolean turned(Mark left, Mark right) {
        boolean before = Shape.matches(word(left.first() - 1), "was|were|had|first|said|initially")
                || marks.stream().anyMatch(mark -> mark.is(Kind.CORRECTION) && mark.first() < left.first());
        return IntStream.range(left.after(), right.first())
                .anyMatch(at -> tokens.get(at).matches(before ? "now|is|its|but|then|>|→" : ">|→"));
    }

    /** Whether nothing but what joins stands between some numbers. */
    boolean sideBySide(List<Mark> numbers) {
        return IntStream.range(1, numbers.size())
                .allMatch(index -> IntStream.range(
                                numbers.get(index - 1).after(),
                                numbers.get(index).first())
                        .allMatch(at -> !tokens.get(at).word()
                                        && !"([>→".contains(tokens.get(at).folded())
                                || tokens.get(at).matches("and|then|n|again|next|so")));
    }

    private String word(int at) {
        return at >= 0 && at < tokens.size() ? tokens.get(at).folded() : "";
    }
}
