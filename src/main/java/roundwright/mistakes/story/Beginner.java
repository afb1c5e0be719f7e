package roundwright.mistakes.story;

import java.util.List;
import java.util.random.RandomGenerator;

/** A student out of the story: works rounds by chance, one stitch after another. */
public final class Beginner {
    private final Rates rates;
    private final RandomGenerator chance;

    public Beginner(Rates rates, RandomGenerator chance) {
        this.rates = rates;
        this.chance = chance;
    }

    /** A round as it was truly worked. */
    public record Worked(int made, Kinds kinds) {
        private Worked and(Kind kind, int stitches) {
            return new Worked(Math.max(0, made + stitches), new Kinds(kinds.code() + Kinds.code(kind)));
        }
    }

    /** A first round of so many stitches as written. */
    public Worked start(int written) {
        for (int error : new int[] {-2, -1, 1, 2}) {
            if (happens(rates.starts(error) / restOfStarts(error))) {
                return new Worked(written, Kinds.NONE).and(Kind.WRONG_START, error);
            }
        }
        return new Worked(written, Kinds.NONE);
    }

    private double restOfStarts(int error) {
        double gone = 0;
        for (int other = -2; other < error; other++) {
            gone += other == 0 ? 0 : rates.starts(other);
        }
        return 1 - gone;
    }

    /** A round worked on so many stitches; {@code around} are the lines before and after it. */
    public Worked work(WrittenRound own, List<WrittenRound> around, int below) {
        List<WrittenRound> others =
                around.stream().filter(line -> !line.sameSteps(own)).toList();
        boolean wrong = !others.isEmpty() && happens(rates.rate(Kind.WRONG_LINE));
        WrittenRound line = wrong ? others.get(chance.nextInt(others.size())) : own;
        Worked worked = stitch(read(line), below);
        worked = wrong ? worked.and(Kind.WRONG_LINE, 0) : worked;
        double marker = chance.nextDouble();
        double stopped = rates.rate(Kind.STOPPED_SHORT);
        if (marker < stopped) {
            return worked.and(Kind.STOPPED_SHORT, -upToThree());
        }
        return marker < stopped + rates.rate(Kind.RAN_PAST) ? worked.and(Kind.RAN_PAST, upToThree()) : worked;
    }

    private Reading read(WrittenRound line) {
        List<Reading> readings = Reading.of(line);
        double left = chance.nextDouble();
        for (Reading reading : readings.subList(1, readings.size())) {
            left -= rates.rate(reading.misreading().orElseThrow());
            if (left < 0) {
                return reading;
            }
        }
        return readings.get(0);
    }

    private Worked stitch(Reading reading, int below) {
        WrittenRound line = reading.round();
        boolean toMarker = happens(rates.toMarker());
        int used = 0;
        int made = 0;
        int code = reading.misreading().map(Kinds::code).orElse(0);
        for (int step = 0; step < line.steps(); step++) {
            if (toMarker && line.takes(step) > 0 && used >= below) {
                break;
            }
            Step done = step(line, step);
            code += done.code();
            if (toMarker && used + done.uses() > below) {
                break;
            }
            used += done.uses();
            made += done.makes();
        }
        return new Worked(toMarker ? made + below - used : made, new Kinds(code));
    }

    private record Step(int uses, int makes, int code) {}

    private Step step(WrittenRound line, int step) {
        int takes = line.takes(step);
        int makes = line.makes(step);
        double left = chance.nextDouble();
        if (takes > 0 && (left -= rates.rate(Kind.SKIPPED)) < 0) {
            return new Step(takes + 1, makes, Kinds.code(Kind.SKIPPED));
        }
        if (takes > 0 && (left -= rates.rate(Kind.WORKED_TWICE)) < 0) {
            return new Step(takes - 1, makes, Kinds.code(Kind.WORKED_TWICE));
        }
        if (line.increases(step) && left < rates.rate(Kind.INCREASE_MISSED)) {
            return new Step(1, 1, Kinds.code(Kind.INCREASE_MISSED));
        }
        if (line.decreases(step) && left < rates.rate(Kind.DECREASE_MISSED)) {
            return new Step(1, 1, Kinds.code(Kind.DECREASE_MISSED));
        }
        return new Step(takes, makes, 0);
    }

    /** The count that is reported of so many stitches. */
    public int report(int made) {
        if (!happens(rates.rate(Kind.MISCOUNTED))) {
            return made;
        }
        int which = chance.nextInt(20);
        int error = which < 15 ? 1 : which < 18 ? 2 : 10;
        return Math.max(0, chance.nextBoolean() ? made + error : made - error);
    }

    private int upToThree() {
        int which = chance.nextInt(7);
        return which < 4 ? 1 : which < 6 ? 2 : 3;
    }

    private boolean happens(double probability) {
        return chance.nextDouble() < probability;
    }
}
