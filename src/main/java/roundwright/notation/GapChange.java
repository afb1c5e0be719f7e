package roundwright.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundwright.notation.Node.Choice;
import roundwright.notation.Node.Manner;
import roundwright.notation.Node.Note;
import roundwright.notation.Node.Repeat;
import roundwright.notation.Node.Sequence;
import roundwright.notation.Node.Target;
import roundwright.notation.Node.Work;

/**
 * How a round differs from the one that it takes over: "as round 3, but with two stitches between the increases".
 *
 * @param stitches plain stitches between one shaping and the next, or how many more of them there are
 * @param more whether they are more than in the other round
 */
public record GapChange(int stitches, boolean more) {
    /** No gap is longer. */
    private static final int MOST = 1_000_000;

    /** The round that comes of changing another, the so-manieth time; empty where the other has no one gap to change. */
    public Optional<WrittenLine> in(WrittenLine other, int time) {
        return changed(other.body(), time).map(other::with);
    }

    /** The shaping with the gap before each; empty where it is none. */
    Optional<Node> before(Node shaping) {
        return cycle(List.of(shaping), 1).map(steps -> steps.size() == 1 ? steps.get(0) : null);
    }

    /** A list that repeats one shaping and its gap, changed; empty where it has none such, or several. */
    private Optional<List<Node>> changed(List<Node> nodes, int time) {
        Optional<List<Node>> cycle = cycle(nodes, time);
        if (cycle.isPresent()) {
            return cycle;
        }
        List<Node> all = new ArrayList<>();
        int changes = 0;
        for (Node node : nodes) {
            Optional<Node> other = changed(node, time);
            all.add(other.orElse(node));
            changes += other.isPresent() ? 1 : 0;
        }
        return changes == 1 ? Optional.of(all) : Optional.empty();
    }

    private Optional<Node> changed(Node node, int time) {
        if (node instanceof Repeat repeat) {
            return changed(repeat.body(), time)
                    .map(body -> new Repeat(repeat.span(), body, repeat.times(), repeat.cut()));
        } else if (node instanceof Sequence sequence) {
            return changed(sequence.body(), time).map(body -> new Sequence(sequence.span(), body));
        } else if (node instanceof Choice choice) {
            List<Node> options = choice.options().stream()
                    .map(option -> changed(option, time).orElse(option))
                    .toList();
            return options.equals(choice.options())
                    ? Optional.empty()
                    : Optional.of(new Choice(choice.span(), choice.habit(), options));
        }
        return Optional.empty();
    }

    /** "2 dc, inc": the stitches beside the one shaping, changed; "inc x 6" is such a list without a gap. */
    private Optional<List<Node>> cycle(List<Node> nodes, int time) {
        List<Node> all = new ArrayList<>();
        Work shaping = null;
        int place = 0;
        int plain = 0;
        for (Node node : nodes) {
            if (!(usual(node) instanceof Work work) || work.manner() == Manner.JOIN) {
                all.add(node);
            } else if (work.takes() == 1 && work.makes() == 1 && !work.times().fills()) {
                plain += work.times().number();
            } else if (shaping == null && shapes(work)) {
                shaping = work;
                place = all.size();
            } else {
                return Optional.empty();
            }
        }
        boolean beside = all.stream().allMatch(node -> node instanceof Note || usual(node) instanceof Work);
        if (shaping == null || !beside || plain > 0 && !shaping.times().once()) {
            return Optional.empty();
        }
        long gap = (more ? plain : 0) + (long) stitches * (more ? time : 1);
        all.addAll(place, gapAnd(shaping, (int) Math.min(MOST, gap)));
        return Optional.of(all);
    }

    private static List<Node> gapAnd(Work shaping, int stitches) {
        Work gap = new Work(
                shaping.span(),
                Manner.PLAIN,
                shaping.stitch(),
                1,
                1,
                Times.of(stitches),
                shaping.hold(),
                Target.NEXT,
                "");
        List<Node> both = stitches == 0 ? List.of(shaping) : List.of(gap, shaping.times(Times.ONCE));
        boolean once = stitches == 0 || shaping.times().once();
        return once ? both : List.of(new Repeat(shaping.span(), both, shaping.times(), List.of()));
    }

    private static boolean shapes(Work work) {
        boolean shapes = work.manner() == Manner.INCREASE
                || work.manner() == Manner.DECREASE
                || work.manner() == Manner.INVISIBLE_DECREASE;
        return shapes && work.takes() > 0;
    }

    /** What most writers mean where a node can be read in several ways. */
    private static Node usual(Node node) {
        return node instanceof Choice choice && choice.habit() != Habit.BARE_LIST
                ? usual(choice.options().get(0))
                : node;
    }
}
