package roundwright.course.planning;

import java.util.List;

/** What sessions over a list of items cost; every price is looked up or summed in constant time. */
final class Prices {
    private static final double A_MINUTE_OVER = 4;
    private static final double A_MINUTE_UNUSED = 0.25;
    private static final double A_TECHNIQUE_TOO_MANY = 4;
    private static final double LEFT_UNPREPARED = 6;
    private static final double INSIDE_A_RANGE = 3;
    private static final double AFTER_SHAPING = 2;
    private static final double ELSEWHERE = 1;

    /** Sums of minutes that should be equal to a limit may come out a hair above it. */
    private static final double HAIR = 1e-9;

    private final List<PlanItem> items;
    private final PlanSettings settings;
    private final double[] minutesBefore;
    private final int[] newBefore;
    private final double[] stop;

    Prices(List<PlanItem> items, PlanSettings settings) {
        this.items = items;
        this.settings = settings;
        this.minutesBefore = new double[items.size() + 1];
        this.newBefore = new int[items.size() + 1];
        this.stop = new double[items.size()];
        for (int i = 0; i < items.size(); i++) {
            minutesBefore[i + 1] = minutesBefore[i] + items.get(i).minutes();
            newBefore[i + 1] = newBefore[i] + items.get(i).introduces().size();
            stop[i] = stopAfter(i);
        }
    }

    /** The price of stopping after an item: low where a student can lay the work down and find the place again. */
    private double stopAfter(int at) {
        PlanItem item = items.get(at);
        if (item.endsPart() || at == items.size() - 1) {
            return 0;
        }
        if (item.prepares()) {
            return LEFT_UNPREPARED;
        }
        if (item.range() == items.get(at + 1).range()) {
            return INSIDE_A_RANGE;
        }
        return item.shaping() ? AFTER_SHAPING : ELSEWHERE;
    }

    int size() {
        return items.size();
    }

    /** The part of a session's cost that its class decides, without the price of stopping. */
    double ofClass(int from, int to, boolean first, boolean last) {
        double spare =
                settings.minutes() - PlanSettings.fixedMinutes(first) - (minutesBefore[to + 1] - minutesBefore[from]);
        return ofSpare(spare, last) + ofNew(newBefore[to + 1] - newBefore[from], first);
    }

    private double spare(int from, int to, boolean first) {
        return settings.minutes() - PlanSettings.fixedMinutes(first) - (minutesBefore[to + 1] - minutesBefore[from]);
    }

    /** Whether a class takes longer than the session; with another item before it, it takes no less. */
    boolean isOver(int from, int to, boolean first) {
        return spare(from, to, first) < 0;
    }

    private static double ofSpare(double spare, boolean last) {
        return spare < 0 ? ofOver(-spare) : last ? 0 : A_MINUTE_UNUSED * spare * spare;
    }

    private static double ofOver(double minutes) {
        return A_MINUTE_OVER * minutes * minutes;
    }

    private double ofNew(int introduced, boolean first) {
        int tooMany = Math.max(0, introduced - settings.mostNew(first));
        return A_TECHNIQUE_TOO_MANY * tooMany * tooMany;
    }

    double ofStop(int to) {
        return stop[to];
    }

    /** Half the price of stopping there. */
    double ofHomework(int last) {
        return stop[last] / 2;
    }

    /** The last item that homework after {@code to} may take, by its minutes and by what may be given; {@code to} for none. */
    int homeworkReach(int to) {
        double minutes = 0;
        int last = to;
        while (last + 1 < items.size() && items.get(last + 1).homework()) {
            minutes += items.get(last + 1).minutes();
            if (minutes > settings.homeworkMinutes() + HAIR) {
                break;
            }
            last++;
        }
        return settings.homeworkMinutes() > 0 ? last : to;
    }

    SessionMinutes minutes(Stretch stretch, boolean first) {
        List<PlanItem> inClass = items.subList(stretch.from(), stretch.to() + 1);
        return new SessionMinutes(
                PlanSettings.fixedMinutes(first),
                inClass.stream().mapToDouble(PlanItem::teaching).sum(),
                inClass.stream()
                        .mapToDouble(item -> item.working() + item.counting())
                        .sum());
    }

    SessionCost cost(Stretch stretch, boolean first, boolean last) {
        double spare = settings.minutes() - minutes(stretch, first).total();
        return new SessionCost(
                ofOver(Math.max(0, -spare)),
                ofSpare(Math.max(0, spare), last),
                ofNew(newBefore[stretch.to() + 1] - newBefore[stretch.from()], first),
                ofStop(stretch.to()),
                stretch.hasHomework() ? ofHomework(stretch.last()) : 0);
    }

    /**
     * A cost that no split into so many sessions or more can be below: more sessions than the work fills leave minutes unused,
     * and unused minutes cost least when shared evenly.
     */
    double atLeast(int sessions, boolean firstOfCourse) {
        int counted = sessions - 1;
        double later = PlanSettings.fixedMinutes(false);
        double recap = later - PlanSettings.fixedMinutes(firstOfCourse);
        double room = counted * (settings.minutes() - later);
        double unused = room + recap - minutesBefore[items.size()];
        // below this room the bound might fall again with one more session
        return counted > 0 && unused > 0 && room >= recap ? A_MINUTE_UNUSED * unused * unused / counted : 0;
    }
}
