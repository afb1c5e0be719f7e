package roundwright.course.planning;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Forecasts when a student finishes, by working the rest of the piece many times over with paces and setbacks as they may be.
 * The same question has the same answer: the draws begin from one seed.
 */
public final class FinishForecast {
    private static final int DRAWS = 1000;
    private static final long SEED = 60_421;
    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;

    /** Sessions after the last that a draw may go on for; no one is that slow. */
    private static final int LONGEST = 1000;

    private final List<PlanItem> items;
    private final double[] tasks;
    private final List<Setback> setbacks;
    private final List<SessionAhead> sessions;
    private final PaceBelief pace;

    private FinishForecast(
            List<PlanItem> items,
            double planPace,
            List<Setback> setbacks,
            List<SessionAhead> sessions,
            PaceBelief pace) {
        this.items = items;
        this.tasks = items.stream()
                .mapToDouble(item -> Math.max(0, item.working() - item.stitches() / planPace) + item.counting())
                .toArray();
        this.setbacks = setbacks;
        this.sessions = sessions;
        this.pace = pace;
    }

    /**
     * The forecast for one student.
     *
     * @param items what the student has still to do
     * @param planPace pace by which the items' minutes were worked out
     * @param setbacks one for each item
     * @param sessions those to come, in order; at least one with minutes to work in
     * @param pace what is known of the student's pace
     */
    public static FinishRange of(
            List<PlanItem> items,
            double planPace,
            List<Setback> setbacks,
            List<SessionAhead> sessions,
            PaceBelief pace) {
        if (setbacks.size() != items.size() || sessions.isEmpty()) {
            throw new IllegalArgumentException(
                    setbacks.size() + " setbacks for " + items.size() + " items, " + sessions.size() + " sessions");
        }
        return new FinishForecast(items, planPace, setbacks, sessions, pace).range();
    }

    private FinishRange range() {
        Random random = new Random(SEED);
        Draw[] draws = IntStream.range(0, DRAWS).mapToObj(i -> new Draw(random)).toArray(Draw[]::new);
        double[] minutes =
                Arrays.stream(draws).mapToDouble(draw -> draw.minutes).toArray();
        int[] last =
                Arrays.stream(draws).mapToInt(draw -> draw.session).sorted().toArray();
        long inTime =
                Arrays.stream(last).filter(session -> session < sessions.size()).count();
        return new FinishRange(
                date(last, LOW),
                date(last, 0.5),
                date(last, HIGH),
                Quantiles.of(minutes, LOW),
                Quantiles.of(minutes, HIGH),
                (double) inTime / DRAWS);
    }

    private Optional<LocalDate> date(int[] sorted, double share) {
        int session = sorted[(int) Math.ceil(share * DRAWS) - 1];
        return session < sessions.size() ? Optional.of(sessions.get(session).date()) : Optional.empty();
    }

    /** The rest of the piece worked once. */
    private final class Draw {
        private final Random random;
        private int session;
        private double minutes;
        private double left;
        private double sessionPace;
        private final PaceBelief.Temper temper;

        Draw(Random random) {
            this.random = random;
            this.temper = pace.draw(random);
            begin(0);
            for (int item = 0; item < items.size(); item++) {
                work(item);
            }
        }

        private void begin(int number) {
            session = number;
            left = sessions.get(Math.min(number, sessions.size() - 1)).minutes();
            sessionPace = temper.paceOfSession(random);
        }

        private void work(int item) {
            while (session < sessions.size() && item >= sessions.get(session).reach()) {
                spend(left);
                next();
            }
            Setback setback = setbacks.get(item);
            boolean wrong = random.nextDouble() < setback.probability();
            spendOn(tasks[item] + (wrong ? -setback.minutes() * Math.log(1 - random.nextDouble()) : 0));
            double stitches = items.get(item).stitches();
            while (stitches > left * sessionPace && session < sessions.size() + LONGEST) {
                stitches -= left * sessionPace;
                spend(left);
                next();
            }
            spend(stitches / sessionPace);
        }

        private void spendOn(double needed) {
            double rest = needed;
            while (rest > left && session < sessions.size() + LONGEST) {
                rest -= left;
                spend(left);
                next();
            }
            spend(rest);
        }

        private void spend(double spent) {
            minutes += spent;
            left = Math.max(0, left - spent);
        }

        private void next() {
            begin(session + 1);
        }
    }
}
