package roundwright.workbook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import roundwright.group.CountReport;
import roundwright.group.Expectations;
import roundwright.group.RoundPlace;
import roundwright.group.StudentId;
import roundwright.mistakes.Trial;
import roundwright.mistakes.story.Beginner;
import roundwright.mistakes.story.Kind;
import roundwright.mistakes.story.Rates;
import roundwright.pattern.Pattern;

/** One invented beginner at work by the story; half of what they see go wrong is pulled back. */
final class SampleWork {
    private static final double PULL_BACK = 0.5;
    /** One in so many has a habit: one kind of mistake so many times as often. */
    private static final int WITHOUT_HABIT = 6;

    private static final double HABIT = 6;
    private static final List<Kind> HABITS =
            List.of(Kind.SKIPPED, Kind.WORKED_TWICE, Kind.INCREASE_MISSED, Kind.DECREASE_MISSED, Kind.STOPPED_SHORT);

    private final StudentId student;
    private final Random chance;
    private final Expectations expectations;
    private final Trial trial;
    private final double pace;
    private final List<NewCount> counts = new ArrayList<>();

    /** Works with mistakes and a speed of their own. */
    SampleWork(StudentId student, Random chance, Pattern pattern) {
        this.student = student;
        this.expectations = Expectations.of(pattern);
        this.chance = chance;
        this.trial = new Trial(pattern, rates(chance), chance);
        this.pace = 4 + 8 * chance.nextDouble();
    }

    private static Rates rates(Random chance) {
        if (chance.nextInt(WITHOUT_HABIT) > 0) {
            return Rates.STORY;
        }
        Kind habit = HABITS.get(chance.nextInt(HABITS.size()));
        return Rates.STORY.with(habit, HABIT * Rates.STORY.rate(habit));
    }

    /** Works the first so many of an evening's rounds; the one after them is sometimes left unfinished. */
    void evening(List<RoundPlace> rounds, int finished, Instant begun) {
        Instant now = begun;
        for (RoundPlace place : rounds.subList(0, finished)) {
            now = work(place, expectations.count(place).orElse(0), now);
        }
        if (0 < finished && finished < rounds.size() && chance.nextBoolean()) {
            RoundPlace inHand = rounds.get(finished);
            leaveUnfinished(inHand, expectations.count(inHand).orElse(0) / 2, now);
        }
    }

    /** Works one round and reports it; returns the time at which it is done. */
    private Instant work(RoundPlace place, int expected, Instant begun) {
        Instant done = begun.plusSeconds((long) (60 * expected / pace) + 30);
        int reported = workAndReport(place, expected, done);
        boolean first = place.round() <= 1;
        if (reported != expected && !first && chance.nextDouble() < PULL_BACK) {
            RoundPlace left = new RoundPlace(place.part(), place.round() - 1);
            file(left, CountReport.Kind.PULLED_BACK, OptionalInt.empty(), done);
            Instant again = done.plusSeconds((long) (60 * expected / pace) + 60);
            workAndReport(place, expected, again);
            return again;
        }
        return done;
    }

    private int workAndReport(RoundPlace place, int expected, Instant at) {
        int made = trial.work(place).map(Beginner.Worked::made).orElse(expected);
        int said = trial.report(made);
        file(place, CountReport.Kind.COUNTED, OptionalInt.of(said), at);
        return said;
    }

    private void leaveUnfinished(RoundPlace place, int soFar, Instant at) {
        file(place, CountReport.Kind.UNFINISHED, OptionalInt.of(soFar), at);
    }

    private void file(RoundPlace place, CountReport.Kind kind, OptionalInt count, Instant at) {
        counts.add(new NewCount(student, place.part(), place.round(), kind, count, Optional.of(at), ""));
    }

    List<NewCount> counts() {
        return counts;
    }
}
