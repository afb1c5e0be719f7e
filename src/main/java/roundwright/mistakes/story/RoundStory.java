package roundwright.mistakes.story;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How beginners work one round of a part: what any number of stitches below can become.
 *
 * <p>Not for several threads at once.
 */
public final class RoundStory implements Story {
    /** Less chance than this is left out where slips are no longer followed, all readings of a round together. */
    private static final double LEFT_OUT = 1e-8;

    /** An outcome less likely than this is not kept. */
    private static final double KEPT = 1e-13;

    private final WrittenRound own;
    private final List<WrittenRound> neighbours;
    private final Rates rates;
    private final List<Way> ways = new ArrayList<>();
    private final Map<Integer, Landing> landings = new HashMap<>();

    /** A line as one may read it, with the chance to work that and the mistakes it takes. */
    private record Way(StitchWork work, double chance, int code) {}

    /** The round of a line, with the lines before and after it in its part; those that have the hands do the same do not count. */
    public static RoundStory of(WrittenRound own, List<WrittenRound> around, Rates rates) {
        return new RoundStory(
                own, around.stream().filter(line -> !line.sameSteps(own)).toList(), rates);
    }

    private RoundStory(WrittenRound own, List<WrittenRound> neighbours, Rates rates) {
        this.own = own;
        this.neighbours = neighbours;
        this.rates = rates;
    }

    /** Nothing is worked out before the first question: a pattern has rounds that nobody has reached. */
    private void addWays() {
        double wrong = neighbours.isEmpty() ? 0 : rates.rate(Kind.WRONG_LINE);
        addWays(own, 1 - wrong, 0);
        for (WrittenRound neighbour : neighbours) {
            addWays(neighbour, wrong / neighbours.size(), Kinds.code(Kind.WRONG_LINE));
        }
    }

    private void addWays(WrittenRound line, double chance, int code) {
        double asWritten = 1;
        for (Reading reading : Reading.of(line)) {
            double misread = reading.misreading().map(rates::rate).orElse(0.0);
            asWritten -= misread;
            reading.misreading().ifPresent(kind -> addWay(reading, chance * misread, code + Kinds.code(kind)));
        }
        addWay(Reading.asWritten(line), chance * asWritten, code);
    }

    private void addWay(Reading reading, double chance, int code) {
        if (chance > 0) {
            ways.add(new Way(new StitchWork(reading.round(), rates, LEFT_OUT / chance), chance, code));
        }
    }

    @Override
    public Landing at(int below) {
        return landings.computeIfAbsent(below, this::land);
    }

    private Landing land(int below) {
        if (ways.isEmpty()) {
            addWays();
        }
        Rows.Collector collector = new Rows.Collector();
        for (Way way : ways) {
            double marker = way.chance() * rates.toMarker();
            new Grid(way.work(), below).collect(marker, way.code(), collector);
            double line = way.chance() - marker;
            way.work().byTheLine((mix, made, chance) -> {
                if (chance * line > KEPT) {
                    collector.add(made, way.work().code(mix) + way.code() | Rows.BY_THE_LINE, chance * line);
                }
            });
        }
        double[] ends = new double[7];
        for (int past = -3; past <= 3; past++) {
            ends[past + 3] = rates.ends(past);
        }
        return new Landing(collector.rows(), ends);
    }

    /** Adds up where the mixes of one way come to rest: many stitches end at the same marker. */
    private static final class Grid implements StitchWork.Landings {
        private final StitchWork work;
        private final int least;
        private final double[] chances;

        Grid(StitchWork work, int below) {
            this.work = work;
            this.least = work.leastMade(below);
            this.chances = new double[(work.mostMade(below) - least + 1) * work.mixes()];
            work.toTheMarker(below, this);
        }

        @Override
        public void add(int mix, int made, double chance) {
            chances[(made - least) * work.mixes() + mix] += chance;
        }

        void collect(double share, int code, Rows.Collector collector) {
            int cell = 0;
            for (int made = least; cell < chances.length; made++) {
                for (int mix = 0; mix < work.mixes(); mix++, cell++) {
                    double chance = chances[cell] * share;
                    if (chance > KEPT) {
                        collector.add(made, work.code(mix) + code, chance);
                    }
                }
            }
        }
    }
}
