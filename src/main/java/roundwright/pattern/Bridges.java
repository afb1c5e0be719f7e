package roundwright.pattern;

import java.util.ArrayList;
import java.util.List;
import roundwright.notation.Node;
import roundwright.notation.Node.Choice;
import roundwright.notation.Node.Manner;
import roundwright.notation.Node.Note;
import roundwright.notation.Node.Repeat;
import roundwright.notation.Node.Sequence;
import roundwright.notation.Node.Work;

/** Sees whether chains of a round stand in for as many stitches passed over, as at an armhole: then they are stitches of the round. */
final class Bridges {
    /** Fewer chains make the spaces of a mesh. */
    private static final int SHORTEST = 3;

    private Bridges() {}

    static boolean in(List<Node> tree) {
        List<Work> works = new ArrayList<>();
        collect(tree, works);
        boolean any = false;
        for (int i = 0; i < works.size(); i++) {
            Work work = works.get(i);
            if (work.manner() == Manner.CHAIN) {
                int chains = work.times().number();
                boolean over = chains >= SHORTEST && (skips(works, i + 1, chains) || skips(works, i - 1, chains));
                if (!over) {
                    return false;
                }
                any = true;
            }
        }
        return any;
    }

    private static boolean skips(List<Work> works, int at, int stitches) {
        return at >= 0
                && at < works.size()
                && works.get(at).manner() == Manner.SKIP
                && works.get(at).times().number() == stitches;
    }

    private static void collect(List<Node> nodes, List<Work> works) {
        for (Node node : nodes) {
            if (node instanceof Work work) {
                works.add(work);
            } else if (node instanceof Repeat repeat) {
                collect(repeat.body(), works);
            } else if (node instanceof Sequence sequence) {
                collect(sequence.body(), works);
            } else if (node instanceof Choice choice && !(choice.options().get(0) instanceof Note)) {
                collect(choice.options().subList(0, 1), works);
            }
        }
    }
}
