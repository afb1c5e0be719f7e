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

/**
 * One invented beginner at work: a stitch is now and then lost or won and stays so in the rounds above, a count is now and then wrong
 * though the work is right, and some of what went wrong is pulled back.
 */
final class SampleWork {
    private static final double SLIP_A_STITCH = 0.004;
    private static final double MISCOUNT = 0.03;
    private static final double PULL_BACK = 0.5;

    private final StudentId student;
    private final Random chance;
    private final Expectations expectations;
    private final double care;
    private final double pace;
    private final List<NewCount> counts = new ArrayList<>();
    private int drift;

    /** Works with a carefulness and a speed of their own. */
    SampleWork(StudentId student, Random chance, Expectations expectations) {
        this.student = student;
        this.expectations = expectations;
        this.chance = chance;
        this.care = 0.3 + 1.7 * chance.nextDouble();
        this.pace = 4 + 8 * chance.nextDouble();
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
        int before = drift;
        slip(expected);
        Instant done = begun.plusSeconds((long) (60 * expected / pace) + 30);
        report(place, expected + drift, done);
        if (drift != before && chance.nextDouble() < PULL_BACK) {
            return again(place, expected, before, done);
        }
        return done;
    }

    private Instant again(RoundPlace place, int expected, int before, Instant noticed) {
        file(
                new RoundPlace(place.part(), place.round() - 1),
                CountReport.Kind.PULLED_BACK,
                OptionalInt.empty(),
                noticed);
        drift = before;
        Instant done = noticed.plusSeconds((long) (60 * expected / pace) + 60);
        report(place, expected + drift, done);
        return done;
    }

    private void slip(int stitches) {
        for (int stitch = 0; stitch < stitches; stitch++) {
            if (chance.nextDouble() < SLIP_A_STITCH * care) {
                drift += chance.nextBoolean() ? 1 : -1;
            }
        }
    }

    private void report(RoundPlace place, int made, Instant at) {
        int said = chance.nextDouble() < MISCOUNT ? made + (chance.nextBoolean() ? 1 : -1) : made;
        file(place, CountReport.Kind.COUNTED, OptionalInt.of(Math.max(0, said)), at);
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
