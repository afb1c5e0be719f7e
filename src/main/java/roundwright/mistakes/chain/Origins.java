package roundwright.mistakes.chain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where the piece first had another count than written: for each round that may be it, and for none, the chance of that
 * together with each count of the newest round.
 */
final class Origins {
    /** Before the first round everything is right. */
    static final Origins NONE = new Origins(List.of(new Origin(Optional.empty(), new double[] {1})));

    private static final double FOLLOWED = 1e-7;

    private final List<Origin> list;

    /** Chances by the count of the newest round, of having first been off at the node, or never. */
    private record Origin(Optional<Node> at, double[] chances) {
        double total() {
            double total = 0;
            for (double chance : chances) {
                total += chance;
            }
            return total;
        }
    }

    private Origins(List<Origin> list) {
        this.list = list;
    }

    /** The same one round on; {@code outside} is what is known of the stitches below by then. */
    Origins then(Node node, double[] outside) {
        if (node.anew) {
            boolean right = node.counts.length == 1 && node.round.hasCount(node.counts[0]);
            return new Origins(List.of(new Origin(right ? Optional.empty() : Optional.of(node), node.belief)));
        }
        double[] told = node.parent.map(onto -> onto.belief).orElse(new double[] {1});
        List<Origin> next = new ArrayList<>();
        double[] right = new double[node.counts.length];
        double[] fresh = new double[node.counts.length];
        for (Origin origin : list) {
            double[] moved = moved(origin, node, outside, told);
            if (origin.at().isPresent()) {
                next.add(new Origin(origin.at(), moved));
            } else {
                for (int to = 0; to < moved.length; to++) {
                    (node.round.hasCount(node.counts[to]) ? right : fresh)[to] += moved[to];
                }
            }
        }
        next.add(new Origin(Optional.empty(), right));
        next.add(new Origin(Optional.of(node), fresh));
        return scaled(next);
    }

    private static double[] moved(Origin origin, Node node, double[] outside, double[] told) {
        double[] moved = new double[node.counts.length];
        for (int from = 0; from < told.length; from++) {
            double chance = told[from] == 0 ? 0 : origin.chances()[from] * outside[from] / told[from];
            for (int to = 0; chance > 0 && to < moved.length; to++) {
                moved[to] += chance * node.moves[from][to];
            }
        }
        return moved;
    }

    private static Origins scaled(List<Origin> origins) {
        double all = origins.stream().mapToDouble(Origin::total).sum();
        List<Origin> kept = new ArrayList<>();
        for (Origin origin : origins) {
            if (origin.total() > FOLLOWED * all) {
                double[] chances = origin.chances().clone();
                for (int to = 0; to < chances.length; to++) {
                    chances[to] /= all;
                }
                kept.add(new Origin(origin.at(), chances));
            }
        }
        return new Origins(kept);
    }

    /** Every round where it may have begun, as they were worked; what is missing to 1 is the chance that all is right. */
    List<Began> began() {
        return list.stream()
                .filter(origin -> origin.at().isPresent())
                .map(origin -> new Began(
                        origin.at().get().round.part(), origin.at().get().round.number(), origin.total()))
                .toList();
    }
}
