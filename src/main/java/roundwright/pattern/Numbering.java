package roundwright.pattern;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;

/** Watches the round numbers of a part: none twice, none left out. */
final class Numbering {
    /**
     * A number that does not go on from the one before.
     *
     * @param missing rounds left out before it; 0 where the number was there before
     */
    record Oddity(int number, int before, int missing) {}

    private static final int LONGEST = 10_000;

    private final TreeSet<Integer> seen = new TreeSet<>();
    private int last = -1;

    /** Takes in the label of the next line. A restart at one begins anew; what goes on from a number that came twice is not told again. */
    Optional<Oddity> next(int first, int lastOfRange) {
        OptionalInt twice = first == 1 ? OptionalInt.empty() : repeated(first, lastOfRange);
        Optional<Oddity> oddity = Optional.empty();
        if (twice.isPresent()) {
            oddity = Optional.of(new Oddity(twice.getAsInt(), last, 0));
        } else if (last >= 0 && first > last + 1) {
            oddity = Optional.of(new Oddity(first, last, first - last - 1));
        }
        if (first == 1) {
            seen.clear();
        } else if (twice.isPresent()) {
            seen.tailSet(first).clear();
        }
        for (int number = first; number <= Math.min(lastOfRange, first + LONGEST); number++) {
            seen.add(number);
        }
        last = lastOfRange;
        return oddity;
    }

    /** The first number of a range that was there before. */
    private OptionalInt repeated(int first, int lastOfRange) {
        Integer number = last < 0 ? null : seen.ceiling(first);
        return number == null || number > lastOfRange ? OptionalInt.empty() : OptionalInt.of(number);
    }

    /** Unlabelled rounds have been worked. */
    void unlabelled(int rounds) {
        last = last < 0 ? last : last + rounds;
    }
}
