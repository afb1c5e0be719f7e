package roundwright.mistakes;

import java.util.ArrayList;
import java.util.List;

/** Writes what repeats in a line as a bracket: {@code 3 dc, inc, 3 dc, inc, dc} becomes {@code (3 dc, inc) x 2, dc}. */
final class Repeats {
    private static final int LONGEST = 6;

    private Repeats() {}

    static List<String> folded(List<String> words) {
        List<String> folded = new ArrayList<>();
        int from = 0;
        while (from < words.size()) {
            int length = bestLength(words, from);
            int times = times(words, from, length);
            List<String> once = words.subList(from, from + length);
            folded.add(times > 1 ? "(" + String.join(", ", once) + ") x " + times : String.join(", ", once));
            from += length * times;
        }
        return folded;
    }

    /** The repeat that takes most words; of two, the shorter. A single word is a repeat of its own. */
    private static int bestLength(List<String> words, int from) {
        int best = 1;
        int most = 1;
        for (int length = 2; length <= LONGEST && from + 2 * length <= words.size(); length++) {
            int times = times(words, from, length);
            if (times > 1 && times * length > most) {
                best = length;
                most = times * length;
            }
        }
        return best;
    }

    private static int times(List<String> words, int from, int length) {
        int times = 1;
        while (length > 1
                && from + (times + 1) * length <= words.size()
                && words.subList(from, from + length)
                        .equals(words.subList(from + times * length, from + (times + 1) * length))) {
            times++;
        }
        return times;
    }
}
