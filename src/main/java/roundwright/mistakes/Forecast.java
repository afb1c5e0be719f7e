package roundwright.mistakes;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import roundwright.course.planning.FinishForecast;
import roundwright.course.planning.FinishRange;
import roundwright.course.planning.Learner;
import roundwright.course.planning.PaceBelief;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlanItem;
import roundwright.course.planning.PlanItems;
import roundwright.course.planning.PlanSettings;
import roundwright.course.planning.PlannedLesson;
import roundwright.course.planning.SessionAhead;
import roundwright.course.planning.Setback;
import roundwright.group.CountReport;
import roundwright.group.Expectations;
import roundwright.group.Pace;
import roundwright.group.RoundPlace;
import roundwright.group.Standing;
import roundwright.mistakes.chain.PatternStory;
import roundwright.mistakes.chain.WorkedRound;
import roundwright.mistakes.story.WrittenRound;
import roundwright.pattern.Pattern;

/**
 * When the students of a group finish: from the pace that each has shown, and from how likely each round is to go wrong and
 * what pulling it back costs, by the same story that explains their counts.
 */
public final class Forecast {
    /** To pick the loop up again and move the marker. */
    private static final double PICKING_UP = 1;

    /** No round goes wrong more often than nine times of ten for ever. */
    private static final double LEAST_CHANCE_TO_GO_WELL = 0.1;

    /** Reports further apart belong to two sessions. */
    private static final Duration LONGEST_SESSION = Duration.ofHours(5);

    private final Plan plan;
    private final Expectations expectations;
    private final Map<RoundPlace, Integer> places = new HashMap<>();
    private final double groupPace;

    /**
     * @param plan of the whole course
     * @param groupPace stitches a minute of one of whom nothing is known yet
     */
    public Forecast(Pattern pattern, Plan plan, double groupPace) {
        this.plan = plan;
        this.expectations = Expectations.of(pattern);
        this.groupPace = groupPace;
        for (int item = 0; item < plan.items().size(); item++) {
            PlanItem here = plan.items().get(item);
            if (here.round().isPresent()) {
                places.putIfAbsent(new RoundPlace(here.part(), here.round().getAsInt()), item);
            }
        }
    }

    /** A student as planning sees them. */
    public Learner learner(String name, List<CountReport> reports) {
        return new Learner(name, done(reports), pace(reports).pace());
    }

    /**
     * When a student finishes; empty where nothing is left to do.
     *
     * @param reports all of the student's
     * @param story the pattern as a student with their rates works it
     * @param sessionsHeld sessions of the course that have been
     * @param dates of the sessions to come, in order, from the next lesson on; those beyond the last lesson are taken as time to
     *     finish in
     */
    public Optional<FinishRange> of(
            List<CountReport> reports, PatternStory story, int sessionsHeld, List<LocalDate> dates) {
        int done = done(reports);
        if (done == plan.items().size() || dates.isEmpty()) {
            return Optional.empty();
        }
        PaceBelief pace = pace(reports);
        List<PlanItem> left = plan.items().subList(done, plan.items().size());
        Map<RoundPlace, Double> wrong = chancesOfAWrongCount(story);
        List<Setback> setbacks =
                left.stream().map(item -> setback(item, wrong, pace.pace())).toList();
        List<SessionAhead> sessions = IntStream.range(0, dates.size())
                .mapToObj(i -> ahead(sessionsHeld + i, dates.get(i), done))
                .toList();
        return Optional.of(FinishForecast.of(left, plan.settings().pace(), setbacks, sessions, pace));
    }

    /** Items up to the round to work now; instructions just before it may not be done yet, so they count as left. */
    private int done(List<CountReport> reports) {
        Standing standing = Standing.derivedFrom(expectations, reports);
        int next = standing.next()
                .map(round -> places.getOrDefault(round.place(), 0))
                .orElse(plan.items().size());
        while (next > 0 && plan.items().get(next - 1).round().isEmpty()) {
            next--;
        }
        return next;
    }

    private PaceBelief pace(List<CountReport> reports) {
        double[] seen = sessions(reports).stream()
                .map(session -> Pace.ofHands(session, PlanItems.COUNTING_MINUTES))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
        return PaceBelief.of(groupPace, seen);
    }

    private static List<List<CountReport>> sessions(List<CountReport> reports) {
        List<List<CountReport>> sessions = new ArrayList<>();
        Instant last = Instant.MIN;
        for (CountReport report :
                reports.stream().sorted(Comparator.comparing(CountReport::at)).toList()) {
            if (sessions.isEmpty() || last.plus(LONGEST_SESSION).isBefore(report.at())) {
                sessions.add(new ArrayList<>());
            }
            sessions.get(sessions.size() - 1).add(report);
            last = report.at();
        }
        return sessions;
    }

    private static Map<RoundPlace, Double> chancesOfAWrongCount(PatternStory story) {
        Map<RoundPlace, Double> chances = new HashMap<>();
        story.parts().stream()
                .flatMap(part -> part.rounds().stream())
                .forEach(round -> chances.putIfAbsent(new RoundPlace(round.part(), round.number()), chance(round)));
        return chances;
    }

    private static double chance(WorkedRound round) {
        if (round.story().isEmpty() || round.count().isEmpty()) {
            return 0;
        }
        int below = round.line().map(WrittenRound::takes).orElse(0);
        return 1 - round.story().get().at(below).chance(round.count().getAsInt());
    }

    private static Setback setback(PlanItem item, Map<RoundPlace, Double> wrong, double pace) {
        if (item.round().isEmpty()) {
            return Setback.NONE;
        }
        double chance =
                wrong.getOrDefault(new RoundPlace(item.part(), item.round().getAsInt()), 0.0);
        double once = item.stitches() / pace + PICKING_UP + item.counting();
        // what is worked again may go wrong again
        return new Setback(Math.max(0, chance), once / Math.max(LEAST_CHANCE_TO_GO_WELL, 1 - chance));
    }

    private SessionAhead ahead(int session, LocalDate date, int done) {
        Optional<PlannedLesson> lesson = Stream.of(session - plan.sessionsBefore())
                .filter(place -> place >= 0 && place < plan.lessons().size())
                .map(plan.lessons()::get)
                .findFirst();
        double fixed = PlanSettings.fixedMinutes(session == 0);
        double teaching = lesson.map(one -> one.minutes().teaching()).orElse(0.0);
        double atHome = lesson.stream()
                .flatMap(one -> plan.atHome(one).stream())
                .mapToDouble(PlanItem::minutes)
                .sum();
        double minutes = Math.max(1, plan.settings().minutes() - fixed - teaching + atHome);
        int reach = lesson.map(one -> one.stretch().last() + 1 - done).orElse(Integer.MAX_VALUE);
        return new SessionAhead(date, minutes, reach);
    }
}
