package roundwright.desktop.plan;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Shares a width out among the columns of a table. */
final class ColumnWidths {
    private ColumnWidths() {}

    /**
     * What one column asks for.
     *
     * @param least pixels without which it says nothing
     * @param wanted pixels in which all of it is seen
     * @param share its share of what is over when all of every column is seen
     */
    record Wish(int least, int wanted, double share) {
        private int more() {
            return Math.max(0, wanted - least);
        }
    }

    /**
     * Widths in pixels. Every column has its least; those that want little more are made whole first, so that as many as can be
     * are read whole; what is over after that is shared out.
     */
    static int[] of(List<Wish> wishes, int width) {
        int[] widths = wishes.stream().mapToInt(Wish::least).toArray();
        int left = Math.max(0, width - IntStream.of(widths).sum());
        List<Integer> modestFirst = IntStream.range(0, widths.length)
                .boxed()
                .sorted(Comparator.comparingInt(column -> wishes.get(column).more()))
                .toList();
        for (int i = 0; i < widths.length; i++) {
            int column = modestFirst.get(i);
            int given = Math.min(wishes.get(column).more(), left / (widths.length - i));
            widths[column] += given;
            left -= given;
        }
        double shares = wishes.stream().mapToDouble(Wish::share).sum();
        for (int column = 0; column < widths.length; column++) {
            widths[column] += (int) (left * wishes.get(column).share() / shares);
        }
        return widths;
    }
}
