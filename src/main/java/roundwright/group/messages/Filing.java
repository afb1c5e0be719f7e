package roundwright.group.messages;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundwright.notation.Span;

/** What one message was found to say, so far. A count said again of the same rounds stands in the place of the one before, and keeps it. */
final class Filing {
    /** Characters between two numbers that may still be a round and its count. */
    private static final int FARTHEST = 40;

    /** Rounds that are said to be right, for which no count is given. */
    private record AllRight(List<String> students, Optional<String> part, List<Integer> rounds, Span source) {}

    private final Known known;
    private final Message message;
    private final List<Finding> findings = new ArrayList<>();
    private final List<AllRight> right = new ArrayList<>();
    private Optional<Mark> loose = Optional.empty();

    Filing(Known known, Message message) {
        this.known = known;
        this.message = message;
    }

    List<Finding> findings() {
        return findings;
    }

    Stream<Reading> readings() {
        return findings.stream().filter(Reading.class::isInstance).map(Reading.class::cast);
    }

    void add(Unplaced unplaced) {
        findings.add(unplaced);
    }

    /** Files a count for each of some students, of each part that is meant. */
    void file(List<String> students, Optional<String> part, int from, int to, Said said, Span source) {
        if (!known.has(part, from) || !known.has(part, to)) {
            Optional<String> first = students.stream().findFirst();
            add(new Unplaced(
                    Unplaced.Reason.UNKNOWN_ROUND, first, List.of(from), OptionalInt.of(said.count()), source));
            return;
        }
        double confidence = said.sureness() * Sureness.plausible(known, part, from, said.count());
        double rounded = Math.round(confidence * 100) / 100.0;
        for (Optional<String> student : each(students)) {
            for (Optional<String> one : parts(part)) {
                add(Reading.of(student, one, from, to, said, rounded, message.at(), source));
            }
        }
    }

    private static List<Optional<String>> each(List<String> students) {
        return students.isEmpty()
                ? List.of(Optional.empty())
                : students.stream().map(Optional::of).toList();
    }

    List<Optional<String>> parts(Optional<String> named) {
        return named.map(name ->
                        known.parts().members(name).stream().map(Optional::of).toList())
                .orElse(List.of(Optional.empty()));
    }

    private void add(Reading reading) {
        Reading kept = reading;
        for (Iterator<Finding> each = findings.iterator(); each.hasNext(); ) {
            Finding other = each.next();
            boolean same = other instanceof Reading earlier && earlier.sameRounds(reading) && !earlier.besides(reading);
            boolean placed = other instanceof Unplaced && other.source().equals(reading.source());
            if (same) {
                kept = kept.after((Reading) other);
            }
            if (same || placed) {
                each.remove();
            }
        }
        findings.add(kept);
    }

    /** "Still on r7, 20 so far" is said of one round. */
    void unfinished(Optional<String> student, List<Integer> which, List<Integer> pending, Unfinished found) {
        Finding last = findings.isEmpty() ? null : findings.get(findings.size() - 1);
        boolean unfinished = last instanceof Unplaced before && before.reason() == Unplaced.Reason.UNFINISHED;
        boolean nothingNew = found.rounds().isEmpty() && found.soFar().isEmpty();
        boolean goesOn = unfinished
                && last instanceof Unplaced before
                && (nothingNew || before.count().isEmpty())
                && (nothingNew || which.isEmpty() || which.equals(before.rounds()) || which.equals(pending));
        if (goesOn) {
            Unplaced before = (Unplaced) last;
            findings.remove(before);
            Span both = before.source().to(found.span());
            OptionalInt soFar = found.soFar().isPresent() ? found.soFar() : before.count();
            add(new Unplaced(before.reason(), before.student(), before.rounds(), soFar, both));
        } else {
            add(new Unplaced(Unplaced.Reason.UNFINISHED, student, which, found.soFar(), found.span()));
        }
    }

    void allRight(List<String> students, Optional<String> part, List<Integer> rounds, Span source) {
        right.add(new AllRight(students, part, rounds, source));
    }

    /** Gives the rounds that are said to be right the pattern's counts, but for those whose counts were told. */
    void finish() {
        for (AllRight each : right) {
            Set<Integer> told = new HashSet<>();
            readings()
                    .filter(reading ->
                            each.part().isEmpty() || parts(each.part()).contains(reading.part()))
                    .forEach(reading -> told.addAll(reading.rounds()));
            Map<Integer, Integer> counts = new LinkedHashMap<>();
            each.rounds().stream()
                    .filter(round -> !told.contains(round))
                    .forEach(round -> known.expected(each.part(), round).ifPresent(count -> counts.put(round, count)));
            stretches(each, counts);
        }
        pairs();
        takeOutSettled();
    }

    /** "4 took me two goes but it's 24": two numbers left over, of which the second is what the pattern says of the first. */
    private void pairs() {
        for (int index = 0; index + 1 < findings.size(); index++) {
            boolean pair = findings.get(index) instanceof Unplaced round
                    && findings.get(index + 1) instanceof Unplaced count
                    && pair(round, count);
            if (pair) {
                Unplaced round = (Unplaced) findings.remove(index);
                Unplaced count = (Unplaced) findings.remove(index);
                Said said = new Said(count.count().getAsInt(), false, Sureness.PAIR, false);
                List<String> whose = count.student().map(List::of).orElse(List.of());
                Span both = round.source().to(count.source());
                file(
                        whose,
                        Optional.empty(),
                        round.count().getAsInt(),
                        round.count().getAsInt(),
                        said,
                        both);
                index--;
            }
        }
    }

    private boolean pair(Unplaced round, Unplaced count) {
        return round.count().isPresent()
                && count.count().isPresent()
                && round.reason() == Unplaced.Reason.NO_ROUND
                && count.reason() == Unplaced.Reason.NO_ROUND
                && round.student().equals(count.student())
                && count.source().start() - round.source().end() < FARTHEST
                && known.near(
                        Optional.empty(),
                        round.count().getAsInt(),
                        count.count().getAsInt(),
                        1);
    }

    /** Takes out what was left open and is said in another place of the message. */
    private void takeOutSettled() {
        boolean pulledBack = readings().anyMatch(Reading::pulledBack);
        Set<Integer> counts = readings().map(Reading::count).collect(Collectors.toSet());
        findings.removeIf(finding -> finding instanceof Unplaced unplaced
                && switch (unplaced.reason()) {
                    case PULLED_BACK -> pulledBack;
                    case NO_ROUND -> unplaced.count().stream().anyMatch(counts::contains);
                    default -> false;
                });
    }

    private void stretches(AllRight each, Map<Integer, Integer> counts) {
        List<Integer> rounds = List.copyOf(counts.keySet());
        int from = 0;
        for (int index = 1; index <= rounds.size(); index++) {
            int last = rounds.get(index - 1);
            boolean goesOn = index < rounds.size()
                    && rounds.get(index) == last + 1
                    && counts.get(rounds.get(index)).equals(counts.get(last));
            if (!goesOn) {
                Said said = new Said(counts.get(last), false, Sureness.RIGHT, true);
                file(each.students(), each.part(), rounds.get(from), last, said, each.source());
                from = index;
            }
        }
    }

    /** A count whose round nobody has named so far. */
    void loose(Mark number, Unplaced unplaced) {
        add(unplaced);
        loose = Optional.of(number);
    }

    /** The count without a round that was said last, where it was the last thing said. */
    Optional<Mark> takeLoose() {
        Optional<Mark> taken = loose.filter(number -> !findings.isEmpty()
                && findings.get(findings.size() - 1).source().equals(number.span()));
        loose = Optional.empty();
        return taken;
    }
}
