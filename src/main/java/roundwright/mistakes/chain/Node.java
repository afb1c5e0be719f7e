package roundwright.mistakes.chain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import roundwright.mistakes.story.Landing;
import roundwright.mistakes.story.Rates;

/**
 * One round as one student worked it once.
 *
 * <p>{@code counts} are the true counts that are possible at all; {@code moves[i][j]} is P(count j made, what was seen |
 * {@code below[i]}); {@code belief} is what is known of the count from everything but the rounds worked onto it.
 */
final class Node {
    /** A count less likely than this is not followed. */
    private static final double FOLLOWED = 1e-10;

    /** A report less likely than this is not explained but has to be counted again. */
    private static final double EXPLAINABLE = 1e-7;

    final int place;
    final WorkedRound round;
    final Optional<Node> parent;
    final List<Node> children = new ArrayList<>();
    Seen seen = Seen.NOTHING;
    int[] below;
    int[] counts;
    double[][] moves;
    double[] belief;
    /** What was known of the stitches below when the round was worked out. */
    double[] outside;
    /** P(the report | everything before it); 1 where nothing was reported. */
    double evidence = 1;
    /** The chain starts anew here: what lies below could not explain the report, or the line was not understood. */
    boolean anew;

    Origins origins;

    /** A round worked onto another; {@code place} numbers the nodes of a student as they came. */
    Node(int place, WorkedRound round, Optional<Node> parent) {
        this.place = place;
        this.round = round;
        this.parent = parent;
        parent.ifPresent(onto -> onto.children.add(this));
    }

    /** Works the round out from what is known of the stitches below, one chance for each count of the parent. */
    void work(double[] outside, Rates rates) {
        this.outside = outside;
        below = parent.map(onto -> onto.counts).orElse(new int[1]);
        anew = round.story().isEmpty();
        evidence = 1;
        if (!anew) {
            Landing[] landings = new Landing[below.length];
            for (int from = 0; from < below.length; from++) {
                landings[from] = round.story().get().at(below[from]);
            }
            move(outside, landings, rates);
        }
        if (anew) {
            startAnew(outside);
        }
        origins = parent.map(onto -> onto.origins).orElse(Origins.NONE).then(this, outside);
    }

    private void move(double[] outside, Landing[] landings, Rates rates) {
        TreeSet<Integer> possible = new TreeSet<>();
        for (Landing landing : landings) {
            seen.possible(landing, possible);
        }
        counts = possible.stream().mapToInt(Integer::intValue).toArray();
        moves = new double[below.length][counts.length];
        double reported = 0;
        for (int from = 0; from < below.length; from++) {
            for (int to = 0; to < counts.length; to++) {
                moves[from][to] = seen.chance(landings[from], counts[to], rates);
                reported += outside[from] * landings[from].chance(counts[to]) * seen.reports(counts[to], rates);
            }
        }
        evidence = seen.reported().isPresent() ? reported : 1;
        anew = reported < EXPLAINABLE;
        if (!anew) {
            believe(outside);
        }
    }

    private void believe(double[] outside) {
        belief = new double[counts.length];
        double total = 0;
        for (int to = 0; to < counts.length; to++) {
            for (int from = 0; from < below.length; from++) {
                belief[to] += outside[from] * moves[from][to];
            }
            total += belief[to];
        }
        for (int to = 0; to < counts.length; to++) {
            belief[to] /= total;
        }
        drop();
    }

    /** Forgets the counts that are too unlikely to matter. */
    private void drop() {
        int[] kept = new int[counts.length];
        int size = 0;
        for (int to = 0; to < counts.length; to++) {
            if (belief[to] > FOLLOWED) {
                kept[size++] = to;
            }
        }
        if (size == counts.length) {
            return;
        }
        int[] left = Arrays.copyOf(kept, size);
        counts = Arrays.stream(left).map(to -> counts[to]).toArray();
        belief = pick(belief, left);
        for (int from = 0; from < moves.length; from++) {
            moves[from] = pick(moves[from], left);
        }
    }

    private static double[] pick(double[] all, int[] places) {
        double[] picked = new double[places.length];
        for (int place = 0; place < places.length; place++) {
            picked[place] = all[places[place]];
        }
        return picked;
    }

    /** The count is what was said, else what was written, else what it was. */
    private void startAnew(double[] outside) {
        if (seen.reported().isPresent() || round.count().isPresent()) {
            int count = seen.reported().orElseGet(() -> round.count().getAsInt());
            counts = new int[] {count};
            belief = new double[] {1};
        } else {
            counts = below;
            belief = outside.clone();
        }
        moves = new double[0][];
    }

    /** What is seen here and above says of each count below; {@code above} has the chance of what was seen above for each count here. */
    double[] told(double[] above) {
        double[] message = new double[below.length];
        Arrays.fill(message, anew ? 1 : 0);
        for (int from = 0; !anew && from < message.length; from++) {
            for (int to = 0; to < above.length; to++) {
                message[from] += moves[from][to] * above[to];
            }
        }
        return message;
    }
}
