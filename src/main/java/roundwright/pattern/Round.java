package roundwright.pattern;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** One round of a part. A written range ("Rnds 3-5") is as many rounds as it has. */
public final class Round implements PartItem {
    private final int number;
    private final Line line;
    private final Lazy<Optional<Steps>> steps;
    private final OptionalInt count;

    public Round(int number, Line line, Optional<Steps> steps, OptionalInt count) {
        this(number, line, () -> steps, count);
    }

    /** A round whose steps are written out when they are first asked for. */
    Round(int number, Line line, Supplier<Optional<Steps>> steps, OptionalInt count) {
        this.number = number;
        this.line = line;
        this.steps = new Lazy<>(steps);
        this.count = count;
    }

    /** Its number in the part, from the line's label, or counted on where the line has none. */
    public int number() {
        return number;
    }

    /** The line it is written in. */
    @Override
    public Line line() {
        return line;
    }

    /** What the hands do; empty where the line was not understood. */
    public Optional<Steps> steps() {
        return steps.get();
    }

    /** The count to reach; empty where it is neither stated nor can be worked out. */
    public OptionalInt count() {
        return count;
    }

    @Override
    public String toString() {
        return "round " + number + ": " + line;
    }
}
