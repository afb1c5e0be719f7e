package roundwright.mistakes.chain;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Lets every report of a student speak on every round: first from the newest rounds down, then from the oldest up.
 *
 * <p>{@code inside} of a node is, for each of its counts, the chance of everything seen on the rounds worked onto it;
 * {@code up} the same with the node's own, for each count below it; {@code outside} what is known of the stitches below
 * it from everything else.
 */
final class Sweep {
    private final double[][] inside;
    private final double[][] up;
    private final double[][] outside;
    private final double[][] full;

    /** Sweeps over nodes in the order they came, so that each comes after the one it is worked onto. */
    Sweep(List<Node> nodes) {
        inside = new double[nodes.size()][];
        up = new double[nodes.size()][];
        outside = new double[nodes.size()][];
        full = new double[nodes.size()][];
        for (int place = nodes.size() - 1; place >= 0; place--) {
            gather(nodes.get(place));
        }
        for (Node node : nodes) {
            spread(node);
        }
    }

    private void gather(Node node) {
        double[] own = new double[node.counts.length];
        Arrays.fill(own, 1);
        node.children.stream().filter(this::swept).forEach(child -> multiply(own, up[child.place]));
        inside[node.place] = own;
        up[node.place] = scaled(node.told(own));
    }

    private void spread(Node node) {
        double[] known = known(node.parent, node);
        outside[node.place] = known;
        double[] count = node.anew ? node.belief.clone() : new double[node.counts.length];
        for (int from = 0; !node.anew && from < known.length; from++) {
            for (int to = 0; to < count.length; to++) {
                count[to] += known[from] * node.moves[from][to];
            }
        }
        full[node.place] = scaled(count);
    }

    private double[] known(Optional<Node> onto, Node node) {
        if (onto.isEmpty()) {
            return new double[] {1};
        }
        double[] known = full[onto.get().place].clone();
        for (Node sibling : onto.get().children) {
            if (sibling != node && swept(sibling)) {
                multiply(known, up[sibling.place]);
            }
        }
        return scaled(known);
    }

    /** A round that came after the nodes that are swept does not speak yet. */
    private boolean swept(Node node) {
        return node.place < up.length;
    }

    private static void multiply(double[] by, double[] with) {
        for (int place = 0; place < by.length; place++) {
            by[place] *= with[place];
        }
    }

    private static double[] scaled(double[] chances) {
        double total = 0;
        for (double chance : chances) {
            total += chance;
        }
        for (int place = 0; total > 0 && place < chances.length; place++) {
            chances[place] /= total;
        }
        return chances;
    }

    double[] inside(Node node) {
        return inside[node.place];
    }

    double[] outside(Node node) {
        return outside[node.place];
    }

    /** What is known of the stitches on which a node about to be added would be worked. */
    double[] belief(Node onto) {
        double[] known = full[onto.place].clone();
        multiply(known, inside[onto.place]);
        return scaled(known);
    }
}
