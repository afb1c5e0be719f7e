package roundwright.mistakes.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import roundwright.pattern.RepeatedBlock;

/**
 * One way to read a line: as it is written, or by one of the six misreadings that are open to it.
 *
 * @param misreading how it is misread; empty where it is read as written
 * @param round what the hands then work
 * @param from the step of the line that each of its steps is; {@link #PLAIN} for a plain stitch of no step
 */
record Reading(Optional<Kind> misreading, WrittenRound round, int[] from) {
    /** Stands for a plain stitch that no step of the line is. */
    static final int PLAIN = -1;

    /** The line as it is written. */
    static Reading asWritten(WrittenRound line) {
        return new Reading(
                Optional.empty(), line, IntStream.range(0, line.steps()).toArray());
    }

    /** Every way to read the line; the first is as written. */
    static List<Reading> of(WrittenRound line) {
        List<Reading> readings = new ArrayList<>();
        readings.add(asWritten(line));
        line.block().ifPresent(block -> addMisreadBlock(line, block, readings));
        if (line.shapes()) {
            readings.add(misread(Kind.SHAPING_LEFT_OUT, plain(line.takes(), new Hands(line))));
        }
        return readings;
    }

    private static Reading misread(Kind kind, Hands hands) {
        return new Reading(Optional.of(kind), hands.round(), hands.from());
    }

    private static void addMisreadBlock(WrittenRound line, RepeatedBlock block, List<Reading> readings) {
        readings.add(misread(Kind.REPEAT_SHORT, repeated(line, block, block.times() - 1)));
        readings.add(misread(Kind.REPEAT_EXTRA, repeated(line, block, block.times() + 1)));
        readings.add(misread(Kind.REPEAT_ONCE, once(line, block)));
        if (line.hasPlainInBlock()) {
            readings.add(misread(Kind.RUNS_LONG, runs(line, block, 1)));
            readings.add(misread(Kind.RUNS_SHORT, runs(line, block, -1)));
        }
    }

    private static Hands repeated(WrittenRound line, RepeatedBlock block, int times) {
        Hands hands = new Hands(line);
        hands.work(0, block.from());
        for (int pass = 0; pass < times; pass++) {
            int from = block.from() + Math.min(pass, block.times() - 1) * block.length();
            hands.work(from, from + block.length());
        }
        hands.work(block.end(), line.steps());
        return hands;
    }

    private static Hands once(WrittenRound line, RepeatedBlock block) {
        Hands hands = new Hands(line);
        hands.work(0, block.from() + block.length());
        return plain(line.takes() - hands.taken, hands);
    }

    private static Hands plain(int stitches, Hands hands) {
        for (int stitch = 0; stitch < stitches; stitch++) {
            hands.add(1, 1, PLAIN);
        }
        return hands;
    }

    /** Every run of plain stitches of the bracket longer by one stitch, or shorter by one. */
    private static Hands runs(WrittenRound line, RepeatedBlock block, int longer) {
        Hands hands = new Hands(line);
        hands.work(0, block.from());
        for (int pass = 0; pass < block.times(); pass++) {
            int from = block.from() + pass * block.length();
            int end = from + block.length();
            for (int step = from; step < end; step++) {
                boolean lastOfRun = line.plain(step) && (step + 1 == end || !line.plain(step + 1));
                int times = lastOfRun ? 1 + longer : 1;
                for (int time = 0; time < times; time++) {
                    hands.work(step, step + 1);
                }
            }
        }
        hands.work(block.end(), line.steps());
        return hands;
    }

    /** Collects what the hands do. */
    private static final class Hands {
        private final WrittenRound line;
        private final List<int[]> done = new ArrayList<>();
        private int taken;

        Hands(WrittenRound line) {
            this.line = line;
        }

        void work(int from, int to) {
            for (int step = from; step < to; step++) {
                add(line.takes(step), line.makes(step), step);
            }
        }

        void add(int takes, int makes, int from) {
            done.add(new int[] {takes, makes, from});
            taken += takes;
        }

        int[] from() {
            return done.stream().mapToInt(step -> step[2]).toArray();
        }

        WrittenRound round() {
            return WrittenRound.ofSteps(
                    done.stream().mapToInt(step -> step[0]).toArray(),
                    done.stream().mapToInt(step -> step[1]).toArray());
        }
    }
}
