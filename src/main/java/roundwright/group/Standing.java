package roundwright.group;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import roundwright.course.Course;
import roundwright.group.RoundStanding.State;

/**
 * Where one student stands in a course: a fresh picture derived from the pattern and all of the student's reports, kept nowhere.
 *
 * <p>The newest report on a round holds. A report that the work was pulled back to round 4 takes what was said of rounds 5 and on of
 * that part out of force; what is reported after it holds again. Reports that were taken back are history only.
 */
public final class Standing {
    private final Map<RoundPlace, RoundStanding> rounds;
    private final List<CountReport> elsewhere;
    private final Optional<RoundStanding> position;
    private final Optional<RoundStanding> next;

    private Standing(Map<RoundPlace, RoundStanding> rounds, List<CountReport> elsewhere) {
        this.rounds = rounds;
        this.elsewhere = List.copyOf(elsewhere);
        this.position = last(rounds.values());
        this.next = first(rounds.values(), Standing::open)
                .or(() -> first(rounds.values(), round -> round.state() == State.NOT_YET));
    }

    private static Optional<RoundStanding> last(Collection<RoundStanding> rounds) {
        RoundStanding last = null;
        for (RoundStanding round : rounds) {
            last = round.state().done() ? round : last;
        }
        return Optional.ofNullable(last);
    }

    private static Optional<RoundStanding> first(Collection<RoundStanding> rounds, Predicate<RoundStanding> wanted) {
        for (RoundStanding round : rounds) {
            if (wanted.test(round)) {
                return Optional.of(round);
            }
        }
        return Optional.empty();
    }

    private static boolean open(RoundStanding round) {
        return round.state() == State.PULLED_BACK || round.state() == State.UNFINISHED;
    }

    /**
     * @param reports of one student, in any order
     */
    public static Standing derivedFrom(Course course, List<CountReport> reports) {
        return derivedFrom(Expectations.of(course.pattern()), reports);
    }

    /** As {@link #derivedFrom(Course, List)}, for a whole group at once: the pattern is looked through only once. */
    public static Standing derivedFrom(Expectations expectations, List<CountReport> reports) {
        Derivation derivation = new Derivation(expectations, reports);
        return new Standing(derivation.rounds(), derivation.elsewhere());
    }

    /** Every round of the pattern in working order. */
    public List<RoundStanding> rounds() {
        return List.copyOf(rounds.values());
    }

    public Optional<RoundStanding> round(String part, int round) {
        return Optional.ofNullable(rounds.get(new RoundPlace(part, round)));
    }

    /** Reports on rounds that the pattern does not have, or no longer has. */
    public List<CountReport> elsewhere() {
        return elsewhere;
    }

    /** The last round, in working order, that is done. */
    public Optional<RoundStanding> position() {
        return position;
    }

    /** The round to work now: one that was pulled back or left unfinished, else the first not begun; empty when all is done. */
    public Optional<RoundStanding> next() {
        return next;
    }

    /** Whether nothing has been reported that holds. */
    public boolean nothingYet() {
        return position().isEmpty() && next().map(RoundStanding::state).equals(Optional.of(State.NOT_YET));
    }

    /** How many rounds in a row, up to the position, are right. */
    public int rightInARow() {
        int row = 0;
        for (RoundStanding round : rounds.values()) {
            if (round.state().done()) {
                row = round.state().off() ? 0 : row + 1;
            }
        }
        return row;
    }

    /** One run over the reports. */
    private static final class Derivation {
        private final Expectations expectations;
        private final Map<RoundPlace, List<CountReport>> history = new HashMap<>();
        private final Map<RoundPlace, CountReport> current = new HashMap<>();
        private final Set<RoundPlace> pulledBack = new HashSet<>();
        private final List<CountReport> elsewhere = new ArrayList<>();

        Derivation(Expectations expectations, List<CountReport> reports) {
            this.expectations = expectations;
            reports.stream()
                    .sorted((left, right) -> Long.compare(left.sequence(), right.sequence()))
                    .forEach(this::take);
        }

        private void take(CountReport report) {
            RoundPlace place = new RoundPlace(report.part(), report.round());
            boolean toTheStart = report.kind() == CountReport.Kind.PULLED_BACK && report.round() == 0;
            if (expectations.round(place).isEmpty() && !toTheStart) {
                elsewhere.add(report);
                return;
            }
            history.computeIfAbsent(place, key -> new ArrayList<>()).add(report);
            if (report.stands()) {
                hold(place, report);
            }
        }

        private void hold(RoundPlace place, CountReport report) {
            if (report.kind() == CountReport.Kind.PULLED_BACK) {
                current.keySet().stream().filter(other -> above(other, place)).forEach(pulledBack::add);
                current.keySet().removeIf(other -> above(other, place));
            }
            if (report.kind() != CountReport.Kind.PULLED_BACK || report.count().isPresent()) {
                current.put(place, report);
                pulledBack.remove(place);
            }
        }

        /** Rounds are numbered upwards as they are worked. */
        private static boolean above(RoundPlace other, RoundPlace place) {
            return other.part().equals(place.part()) && other.round() > place.round();
        }

        List<CountReport> elsewhere() {
            return elsewhere;
        }

        Map<RoundPlace, RoundStanding> rounds() {
            List<RoundPlace> places = expectations.places();
            int reached = lastReached(places);
            Map<RoundPlace, RoundStanding> rounds = new LinkedHashMap<>();
            for (int index = 0; index < places.size(); index++) {
                RoundPlace place = places.get(index);
                rounds.put(place, standing(place, index < reached));
            }
            return rounds;
        }

        private int lastReached(List<RoundPlace> places) {
            int reached = -1;
            for (int index = 0; index < places.size(); index++) {
                if (current.containsKey(places.get(index))) {
                    reached = index;
                }
            }
            return reached;
        }

        private RoundStanding standing(RoundPlace place, boolean passed) {
            Optional<CountReport> report = Optional.ofNullable(current.get(place));
            OptionalInt expected = expectations.count(place);
            State state = report.map(held -> state(held, expected)).orElseGet(() -> silence(place, passed));
            return new RoundStanding(place, expected, state, report, history.getOrDefault(place, List.of()));
        }

        private State silence(RoundPlace place, boolean passed) {
            if (pulledBack.contains(place)) {
                return State.PULLED_BACK;
            }
            return passed ? State.NOT_REPORTED : State.NOT_YET;
        }

        private static State state(CountReport report, OptionalInt expected) {
            if (report.kind() == CountReport.Kind.UNFINISHED) {
                return State.UNFINISHED;
            }
            if (expected.isEmpty()) {
                return State.COUNTED;
            }
            int difference = report.count().orElseThrow() - expected.getAsInt();
            return difference == 0 ? State.RIGHT : difference > 0 ? State.OVER : State.UNDER;
        }
    }
}
