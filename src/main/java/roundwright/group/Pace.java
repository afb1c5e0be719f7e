package roundwright.group;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import roundwright.course.planning.Quantiles;

/**
 * How fast a student works, from the times between reports of rounds that follow each other: a round of 36 stitches reported nine
 * minutes after the round below it is 4 stitches a minute.
 */
public final class Pace {
    /** Slower, and the student was doing something else meanwhile. A first session goes at 2 to 4 stitches a minute. */
    private static final double SLOWEST = 1;

    /** Faster, and the counts were entered together. Speed contests are won at 31 to 33 stitches a minute. */
    private static final double FASTEST = 35;

    /** Fewer pairs of reports say nothing. */
    private static final int FEWEST = 3;

    private static final double MIDDLE_OF_THE_GOOD = 0.65;

    private record Stretch(int stitches, double minutes) {
        boolean sensible() {
            return minutes > 0 && stitches / minutes >= SLOWEST && stitches / minutes <= FASTEST;
        }
    }

    private Pace() {}

    /** Stitches a minute, over all pairs of a student's reports that make sense; empty where they are too few to say. */
    public static OptionalDouble of(List<CountReport> reports) {
        List<Stretch> stretches = stretches(reports);
        if (stretches.size() < FEWEST) {
            return OptionalDouble.empty();
        }
        double minutes = stretches.stream().mapToDouble(Stretch::minutes).sum();
        return OptionalDouble.of(stretches.stream().mapToInt(Stretch::stitches).sum() / minutes);
    }

    /**
     * Stitches a minute while the hands are working and nothing goes wrong, without the minutes in which a round is counted.
     * About three rounds of ten are pulled back and take twice as long; the middle of the others is that of all at
     * {@value #MIDDLE_OF_THE_GOOD}. Empty where the pairs are too few to say.
     *
     * @param countingMinutes minutes a round for counting and moving the marker
     */
    public static OptionalDouble ofHands(List<CountReport> reports, double countingMinutes) {
        double[] paces = stretches(reports).stream()
                .filter(stretch -> stretch.minutes() > countingMinutes)
                .mapToDouble(stretch -> stretch.stitches() / (stretch.minutes() - countingMinutes))
                .toArray();
        return paces.length < FEWEST
                ? OptionalDouble.empty()
                : OptionalDouble.of(Quantiles.of(paces, MIDDLE_OF_THE_GOOD));
    }

    private static List<Stretch> stretches(List<CountReport> reports) {
        List<CountReport> counted = reports.stream()
                .filter(report -> report.stands() && report.kind() == CountReport.Kind.COUNTED)
                .sorted(Comparator.comparing(CountReport::at).thenComparing(CountReport::sequence))
                .toList();
        return IntStream.range(1, counted.size())
                .filter(index -> follows(counted.get(index - 1), counted.get(index)))
                .mapToObj(index -> stretch(counted.get(index - 1), counted.get(index)))
                .filter(Stretch::sensible)
                .toList();
    }

    private static boolean follows(CountReport first, CountReport second) {
        return first.part().equals(second.part()) && first.round() + 1 == second.round();
    }

    private static Stretch stretch(CountReport first, CountReport second) {
        double minutes = Duration.between(first.at(), second.at()).toSeconds() / 60.0;
        return new Stretch(second.count().orElseThrow(), minutes);
    }
}
