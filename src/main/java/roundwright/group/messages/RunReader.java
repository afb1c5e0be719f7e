package roundwright.group.messages;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import roundwright.group.messages.BareNumbers.Placed;
import roundwright.group.messages.Mark.Kind;

/** Gives the numbers of a run to its rounds, or finds the rounds that numbers without any belong to. */
final class RunReader {
    /** The share of recounts that must agree before the rest are taken for slips. */
    private static final double MOST = 0.75;

    private final SentenceReader sentence;
    private final MessageReader message;
    private final Known known;
    private final Run run;
    private final List<Mark> numbers;

    RunReader(SentenceReader sentence, MessageReader message, Known known, Run run) {
        this.sentence = sentence;
        this.message = message;
        this.known = known;
        this.run = run;
        this.numbers = run.numbers();
    }

    void read() {
        if (run.rounds().isEmpty()) {
            withoutRounds();
        } else if (numbers.isEmpty()) {
            withoutNumbers(run.rounds(), 1);
        } else if (run.rounds().size() == 1) {
            oneRound(run.rounds().get(0), Sureness.PLAIN);
        } else {
            severalRounds();
        }
    }

    private void withoutNumbers(List<Integer> rounds, double less) {
        Optional<Mark> shift = run.first(Kind.SHIFT);
        Optional<Mark> same = run.first(Kind.SAME);
        Optional<Mark> right = run.first(Kind.RIGHT).or(() -> run.first(Kind.ALL_RIGHT));
        if (shift.isPresent()) {
            rounds.forEach(round -> sentence.shifted(round, shift.get(), Sureness.SHIFT * less));
        } else if (run.has(Kind.UNCLEAR_SHIFT)) {
            message.set(
                    Unplaced.Reason.UNCLEAR,
                    rounds,
                    run.first(Kind.UNCLEAR_SHIFT).orElseThrow().span());
        } else if (same.isPresent()) {
            same(rounds, same.get(), less);
        } else if (right.isPresent()) {
            message.allRight(rounds, run.span(right.get()));
        }
    }

    /** "r10 is the same": as the round before; "same for me on r7": as another has it; "same as r12": as that round. */
    private void same(List<Integer> rounds, Mark same, double less) {
        List<Reading> before = message.readings();
        boolean model = run.first(Kind.ROUNDS)
                .map(label -> label.first() == same.after())
                .orElse(false);
        boolean another = model || before.isEmpty();
        if (!(another && message.sameAsAnother(same, rounds)) && !model && !before.isEmpty()) {
            int count = before.get(before.size() - 1).count();
            sentence.file(rounds, new Said(count, false, Sureness.SAME * less, false), run.span(same));
        } else if (!model && before.isEmpty() && message.readings().isEmpty()) {
            message.set(Unplaced.Reason.UNCLEAR, rounds, run.span(same));
        }
    }

    private void severalRounds() {
        List<Integer> rounds = run.rounds();
        boolean allSame = numbers.stream().mapToInt(Mark::value).distinct().count() == 1;
        if (numbers.size() == 1 || allSame && numbers.size() != rounds.size()) {
            file(rounds, numbers.get(0), Sureness.PLAIN);
        } else if (!restLabelled().isEmpty()) {
            List<Placed> rest = restLabelled();
            file(rounds, numbers.get(0), Sureness.PLAIN);
            place(rest, numbers.subList(1, numbers.size()));
        } else {
            int pairs = Math.min(rounds.size(), numbers.size());
            double sureness = pairs == rounds.size() ? Sureness.IN_PAIRS : Sureness.EITHER;
            for (int index = 0; index < pairs; index++) {
                file(List.of(rounds.get(index)), numbers.get(index), sureness);
            }
        }
    }

    /** "rounds 7-9 were 42, 10 is 37": after the count of them all, other rounds with theirs. */
    private List<Placed> restLabelled() {
        List<Placed> rest = numbers.size() % 2 == 0
                ? List.of()
                : bare(numbers.subList(1, numbers.size())).labelled(4);
        int last = run.rounds().get(run.rounds().size() - 1);
        return rest.isEmpty() || rest.get(0).round() <= last ? List.of() : rest;
    }

    private void oneRound(int round, double sureness) {
        if (numbers.size() == 1) {
            file(List.of(round), numbers.get(0), sureness);
            return;
        }
        BareNumbers bare = bare(numbers);
        List<Placed> labelled = bare.labelledAfter(round);
        if (labelled.isEmpty() && numbers.size() > 3) {
            labelled = bare(numbers.subList(0, numbers.size() - 1)).labelledAfter(round);
        }
        if (!labelled.isEmpty()) {
            place(labelled, numbers);
        } else if (contradictory()
                || !sentence.sideBySide(numbers)
                || bare.following(round).isEmpty()) {
            choose(round, sureness);
        } else {
            place(bare.following(round), numbers);
        }
    }

    private boolean contradictory() {
        return IntStream.range(1, numbers.size())
                .anyMatch(index -> corrected(numbers.get(index - 1), numbers.get(index))
                        || run.between(numbers.get(index - 1), numbers.get(index), Kind.OR)
                        || afterPulling(numbers.get(index)));
    }

    private boolean corrected(Mark left, Mark right) {
        return sentence.turned(left, right)
                || run.between(left, right, Kind.CORRECTION)
                || run.between(left, right, Kind.PULLED_BACK);
    }

    /** One of several numbers that were said of the same round. */
    private void choose(int round, double sureness) {
        List<Mark> possible = numbers.stream()
                .filter(number -> Sureness.possible(known, message.part(), round, number.value()))
                .toList();
        if (possible.size() < 2) {
            file(List.of(round), possible.isEmpty() ? numbers.get(0) : possible.get(0), sureness);
            return;
        }
        Mark first = possible.get(0);
        Mark second = possible.get(1);
        Mark last = possible.get(possible.size() - 1);
        List<Mark> counted =
                possible.stream().filter(mark -> mark.is(Kind.COUNT)).toList();
        if (run.between(first, second, Kind.OR)) {
            possible.forEach(number -> file(List.of(round), number, Sureness.EITHER));
        } else if (corrected(first, last) || afterPulling(last)) {
            possible.subList(0, possible.size() - 1)
                    .forEach(number -> sentence.file(
                            List.of(round), new Said(number.value(), false, sureness, false), run.span(number)));
            file(List.of(round), last, sureness);
        } else if (counted.size() == 1) {
            file(List.of(round), counted.get(0), sureness);
        } else if (known.near(message.part(), round, first.value(), 0) && run.joint(first, second, "but", ")")) {
            file(List.of(round), second, sureness);
        } else if (known.near(message.part(), round, second.value(), 0) && run.joint(first, second, "/", "(", "[")) {
            file(List.of(round), first, sureness * 0.8);
        } else {
            mostOften(round, possible, sureness);
        }
    }

    private boolean afterPulling(Mark last) {
        return run.has(Kind.PULLED_BACK) && sentence.pulled(last);
    }

    private void mostOften(int round, List<Mark> possible, double sureness) {
        List<Integer> values = possible.stream().map(Mark::value).toList();
        Mark often = possible.stream()
                .reduce((left, right) ->
                        Collections.frequency(values, right.value()) > Collections.frequency(values, left.value())
                                ? right
                                : left)
                .orElseThrow();
        double share = (double) Collections.frequency(values, often.value()) / values.size();
        file(List.of(round), often, share == 1 ? sureness : share >= MOST ? sureness * 0.8 : Sureness.EITHER);
    }

    private void withoutRounds() {
        List<Integer> pending = message.pending();
        if (numbers.isEmpty()) {
            if (!pending.isEmpty()
                    && !message.answered(pending)
                    && (run.has(Kind.SHIFT) || run.has(Kind.UNCLEAR_SHIFT))) {
                withoutNumbers(pending, 0.9);
            }
        } else if (!pending.isEmpty() && !labelsTold() && belongsTo(pending)) {
            pendingRounds(pending);
        } else if (!shiftsOfBareRounds() && !together() && !labels() && !inTurn() && !correction() && !topic()) {
            numbers.stream().filter(this::likeACount).forEach(number -> message.loose(number));
        }
    }

    /** "8: 42, 9: 42": other rounds than the one that was named, with a word or sign that says so. */
    private boolean labelsTold() {
        return numbers.size() > 1
                && sentence.tells(numbers.get(0), numbers.get(1))
                && !run.has(Kind.CORRECTION)
                && !bare(numbers).labelled(4).isEmpty();
    }

    private boolean belongsTo(List<Integer> pending) {
        boolean open = !message.answered(pending)
                || run.startsWith("so") && run.first(Kind.NUMBER).isPresent()
                || sentence.corrects()
                || run.has(Kind.PULLED_BACK);
        return open
                && numbers.stream()
                        .anyMatch(number -> Sureness.possible(known, message.part(), pending.get(0), number.value()));
    }

    private void pendingRounds(List<Integer> pending) {
        if (pending.size() == 1) {
            oneRound(pending.get(0), Sureness.LATER);
        } else if (numbers.size() == pending.size()) {
            for (int index = 0; index < pending.size(); index++) {
                file(List.of(pending.get(index)), numbers.get(index), Sureness.LATER);
            }
        } else if (numbers.size() == 1) {
            file(pending, numbers.get(0), Sureness.LATER);
        }
    }

    /** "29: two too many". */
    private boolean shiftsOfBareRounds() {
        boolean found = false;
        for (Mark shift : run.all(Kind.SHIFT)) {
            Optional<Mark> round = numbers.stream()
                    .filter(number -> shift.first() - number.after() == 1
                            && known.has(message.part(), number.value())
                            && sentence.tells(number, shift))
                    .findFirst();
            round.ifPresent(number -> sentence.shifted(number.value(), shift, Sureness.SHIFT));
            found |= round.isPresent();
        }
        return found;
    }

    /** "10 and 11 both 36", "7-9 42 each", "7-9: 42". */
    private boolean together() {
        Mark count = numbers.get(numbers.size() - 1);
        List<Integer> rounds =
                numbers.stream().limit(numbers.size() - 1L).map(Mark::value).toList();
        boolean range = numbers.size() == 3
                && rounds.get(0) < rounds.get(1)
                && run.joint(numbers.get(0), numbers.get(1), "-", "–", "—");
        if (range) {
            rounds = IntStream.rangeClosed(rounds.get(0), Math.min(rounds.get(1), rounds.get(0) + 200))
                    .boxed()
                    .toList();
        }
        boolean all = numbers.size() > 1
                && (range || run.has(Kind.ALL))
                && rounds.stream().allMatch(round -> known.near(message.part(), round, count.value(), 4));
        if (all) {
            file(rounds, count, Sureness.BARE_LABELS);
        }
        return all;
    }

    /** "9) 42, 10) 36"; one number before or after the list may be something else. */
    private boolean labels() {
        List<List<Mark>> tries = numbers.size() < 3
                ? List.of(numbers)
                : List.of(numbers, numbers.subList(1, numbers.size()), numbers.subList(0, numbers.size() - 1));
        for (List<Mark> some : tries) {
            List<Placed> placed = bare(some).labelled(4);
            boolean sure = placed.size() > 1
                    || placed.size() == 1 && (sentence.tells(some.get(0), some.get(1)) || sideBySide(some));
            if (sure) {
                place(placed, some);
                return true;
            }
        }
        return false;
    }

    /** "5, 30" and nothing else: a line of a list. */
    private boolean sideBySide(List<Mark> pair) {
        return numbers.size() == 2
                && pair.get(1).first() - pair.get(0).after() <= 1
                && known.near(message.part(), pair.get(0).value(), pair.get(1).value(), 3);
    }

    private boolean inTurn() {
        List<Placed> placed = bare(numbers).fromTheStart();
        place(placed, numbers);
        return !placed.isEmpty();
    }

    /** "Oh wait no. 30 now": the count said last was wrong. */
    private boolean correction() {
        if (!run.has(Kind.CORRECTION) && !message.correcting()) {
            return false;
        }
        List<Reading> before = message.readings().isEmpty()
                ? message.student().map(message.conversation()::last).orElse(List.of())
                : message.readings();
        if (before.isEmpty()) {
            return false;
        }
        Reading wrong = before.get(before.size() - 1);
        Mark right = numbers.get(numbers.size() - 1);
        boolean likely = Sureness.possible(known, wrong.part(), wrong.from(), right.value());
        if (likely) {
            wrong.part().ifPresent(message::part);
            Said said = new Said(right.value(), sentence.pulled(right), Sureness.LATER, false);
            message.file(wrong.from(), wrong.to(), said, right.span());
        }
        return likely;
    }

    /** The answer to somebody who asked for rounds. */
    private boolean topic() {
        List<Integer> rounds = message.conversation().topic(message.student());
        boolean answers = rounds.size() == numbers.size()
                && IntStream.range(0, rounds.size())
                        .allMatch(index -> known.near(
                                message.part(),
                                rounds.get(index),
                                numbers.get(index).value(),
                                4));
        if (answers) {
            for (int index = 0; index < rounds.size(); index++) {
                file(List.of(rounds.get(index)), numbers.get(index), Sureness.TOPIC);
            }
        }
        return answers;
    }

    private boolean likeACount(Mark number) {
        return number.is(Kind.COUNT)
                || IntStream.rangeClosed(1, known.lastRound())
                        .anyMatch(round -> known.near(message.part(), round, number.value(), 2));
    }

    private BareNumbers bare(List<Mark> some) {
        return new BareNumbers(
                known, message.part(), some.stream().map(Mark::value).toList());
    }

    private void place(List<Placed> placed, List<Mark> some) {
        placed.forEach(each -> file(List.of(each.round()), some.get(each.index()), each.sureness()));
    }

    private void file(List<Integer> rounds, Mark number, double sureness) {
        Said said = new Said(number.value(), sentence.pulled(number), sureness * sentence.doubt(), false);
        sentence.file(rounds, said, run.span(number));
    }
}
