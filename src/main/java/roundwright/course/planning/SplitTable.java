package roundwright.course.planning;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * The table of dynamic programming: for every number of sessions and every place in the working order, the cheapest way to
 * have done all items before that place in so many sessions, no one of them the last of the course.
 *
 * <p>Each row follows from the one before in two steps: the cheapest class that ends at each item, then the cheapest homework
 * after it. A row takes time proportional to the items times those that fit a session.
 */
final class SplitTable {
    private final Prices prices;
    private final Locks locks;
    private final boolean begins;
    private final int[] reach;
    private final List<Row> rows = new ArrayList<>();

    /** Costs of having done the items before each place, and how the last session got there. */
    private static final class Row {
        final double[] cost;
        final int[] classFrom;
        final int[] classTo;

        Row(int items) {
            cost = new double[items + 1];
            Arrays.fill(cost, Double.POSITIVE_INFINITY);
            classFrom = new int[items];
            classTo = new int[items + 1];
        }
    }

    SplitTable(Prices prices, Locks locks, boolean begins) {
        this.prices = prices;
        this.locks = locks;
        this.begins = begins;
        this.reach = new int[prices.size()];
        for (int to = 0; to < reach.length; to++) {
            reach[to] = locks.homeworkReach(to, prices.homeworkReach(to));
        }
        Row none = new Row(prices.size());
        none.cost[0] = 0;
        rows.add(none);
    }

    /** Adds the row for one more session. */
    void grow() {
        rows.add(rowAfter(rows.get(rows.size() - 1), false));
    }

    /** The cheapest split of all items into one session more than the table has rows for, if there is any. */
    Split finish() {
        Row last = rowAfter(rows.get(rows.size() - 1), true);
        Deque<Stretch> sessions = new ArrayDeque<>();
        int end = prices.size();
        if (last.cost[end] < Double.POSITIVE_INFINITY) {
            end = addSession(last, end, sessions);
            for (int row = rows.size() - 1; row > 0; row--) {
                end = addSession(rows.get(row), end, sessions);
            }
        }
        return new Split(last.cost[prices.size()], List.copyOf(sessions));
    }

    /** A split and its cost; infinite, with no sessions, where there is none. */
    record Split(double cost, List<Stretch> sessions) {}

    private static int addSession(Row row, int end, Deque<Stretch> sessions) {
        int to = row.classTo[end];
        sessions.addFirst(new Stretch(row.classFrom[to], to, end - 1));
        return row.classFrom[to];
    }

    private Row rowAfter(Row before, boolean last) {
        boolean first = begins && rows.size() == 1;
        Row row = new Row(prices.size());
        for (int to = 0; to < prices.size(); to++) {
            boolean mayEnd = !last || reach[to] == prices.size() - 1;
            double inClass = mayEnd ? cheapestClass(before.cost, row, to, first, last) : Double.POSITIVE_INFINITY;
            if (inClass < Double.POSITIVE_INFINITY) {
                addHomework(row, to, inClass + prices.ofStop(to));
            }
        }
        return row;
    }

    private double cheapestClass(double[] before, Row row, int to, boolean first, boolean last) {
        double cheapest = Double.POSITIVE_INFINITY;
        int least = rows.size() - 1;
        for (int from = to; from >= least; from--) {
            // a class that is over grows dearer with every item before it
            if (prices.isOver(from, to, first) && prices.ofClass(from, to, first, last) >= cheapest) {
                break;
            }
            if (before[from] < cheapest && locks.allowClass(from, to)) {
                double cost = before[from] + prices.ofClass(from, to, first, last);
                if (cost < cheapest) {
                    cheapest = cost;
                    row.classFrom[to] = from;
                }
            }
        }
        return cheapest;
    }

    private void addHomework(Row row, int to, double cost) {
        for (int end = to; end <= reach[to]; end++) {
            double whole = end == to ? cost : cost + prices.ofHomework(end);
            if (whole < row.cost[end + 1] && locks.allowHomework(to, end)) {
                row.cost[end + 1] = whole;
                row.classTo[end + 1] = to;
            }
        }
    }
}
