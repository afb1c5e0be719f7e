package roundwright.pattern;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Watches the round numbers of a part: none twice, none left out. */
final class Numbering {
    /**
     * A number that does not go on from the one before.
     *
     * @param missing rounds left out before it; 0 where the number was there before
     */
    record Oddity(int number, int before, int missing) {}

    private final Set<Integer> seen = new HashSet<>();
    private int last = -1;

    /** Takes in the label of the next line. */
    Optional<Oddity> next(int first, int lastOfRange) {
        Optional<Oddity> oddity = Optional.empty();
        if (last >= 0 && seen.contains(first) && first != 1) {
            oddity = Optional.of(new Oddity(first, last, 0));
        } else if (last >= 0 && first > last + 1) {
            oddity = Optional.of(new Oddity(first, last, first - last - 1));
        }
        for (int number = first; number <= Math.min(lastOfRange, first + 10_000); number++) {
            seen.add(number);
        }
        last = lastOfRange;
        if (first == 1) {
            seen.clear();
            seen.add(1);
        }
        return oddity;
    }

    /** Unlabelled rounds have been worked. */
    void unlabelled(int rounds) {
        last = last < 0 ? last : last + rounds;
    }
}
