package roundwright.mistakes.story;

import java.util.Arrays;

/**
 * Outcomes sorted by the count made: those of count {@code least + row} stand from {@code starts[row]} up to
 * {@code starts[row + 1]}.
 *
 * @param codes packed kinds of each outcome
 * @param chances of each outcome
 * @param byTheLine for each row, the part of its chance in which the line decided where the round ends
 */
record Rows(int least, int[] starts, int[] codes, double[] chances, double[] byTheLine) {
    /** Marks a code while it is collected: the line decided where the round ends. */
    static final int BY_THE_LINE = 1 << 30;

    /** Collects outcomes in any order. */
    static final class Collector {
        private int[] made = new int[256];
        private int[] codes = new int[256];
        private double[] chances = new double[256];
        private int size;
        private int least = Integer.MAX_VALUE;
        private int most = Integer.MIN_VALUE;

        void add(int count, int code, double chance) {
            if (size == made.length) {
                made = Arrays.copyOf(made, 2 * size);
                codes = Arrays.copyOf(codes, 2 * size);
                chances = Arrays.copyOf(chances, 2 * size);
            }
            made[size] = count;
            codes[size] = code;
            chances[size++] = chance;
            least = Math.min(least, count);
            most = Math.max(most, count);
        }

        /** Everything collected, by count. */
        Rows rows() {
            int[] starts = new int[most - least + 2];
            for (int entry = 0; entry < size; entry++) {
                starts[made[entry] - least + 1]++;
            }
            for (int row = 1; row < starts.length; row++) {
                starts[row] += starts[row - 1];
            }
            Rows rows = new Rows(least, starts, new int[size], new double[size], new double[most - least + 1]);
            int[] place = starts.clone();
            for (int entry = 0; entry < size; entry++) {
                int row = made[entry] - least;
                int to = place[row]++;
                rows.codes()[to] = codes[entry] & ~BY_THE_LINE;
                rows.chances()[to] = chances[entry];
                rows.byTheLine()[row] += (codes[entry] & BY_THE_LINE) == 0 ? 0 : chances[entry];
            }
            return rows;
        }
    }
}
