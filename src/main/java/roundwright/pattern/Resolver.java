package roundwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundwright.notation.Habit;
import roundwright.notation.Node;
import roundwright.notation.Node.Choice;
import roundwright.notation.Node.Manner;
import roundwright.notation.Node.Note;
import roundwright.notation.Node.Repeat;
import roundwright.notation.Node.Sequence;
import roundwright.notation.Node.Target;
import roundwright.notation.Node.Together;
import roundwright.notation.Node.Work;
import roundwright.notation.Stitch;
import roundwright.notation.StitchName;
import roundwright.notation.Terms;
import roundwright.notation.Times;

/** Makes the choices of a tree and works out how often what fills the round is done. */
final class Resolver {
    private final int[] options;
    private final Terms terms;
    private final Linear.Fill fill;
    /** Repeats around the node that is being resolved. */
    private int depth;
    /** Whether the first side of a square has been worked. */
    private boolean begun;

    private Resolver(int[] options, Terms terms, Linear.Fill fill) {
        this.options = options;
        this.terms = terms;
        this.fill = fill;
    }

    /** The tree as pieces, with the option chosen for each habit, by ordinal, and how often filling parts are done. */
    static List<Piece> resolve(List<Node> tree, int[] options, Terms terms, Linear.Fill fill) {
        return new Resolver(options, terms, fill).pieces(tree);
    }

    private List<Piece> pieces(List<Node> nodes) {
        List<Piece> pieces = new ArrayList<>(nodes.size());
        for (Node node : nodes) {
            add(node, pieces);
        }
        return pieces;
    }

    private void add(Node node, List<Piece> pieces) {
        if (node instanceof Work work) {
            long times = work.times().equals(Times.TO_CORNER)
                    ? side()
                    : times(work.times(), work.takes(), work.target() == Target.SPACE);
            if (times == 0 && work.times().fills()) {
                return;
            }
            pieces.add(new Piece.Run(step(work), times, work.target(), List.of()));
        } else if (node instanceof Repeat repeat) {
            depth++;
            List<Piece> body = pieces(repeat.body());
            depth--;
            pieces.add(new Piece.Loop(body, times(repeat.times(), Sums.takes(body), intoSpaces(body))));
            pieces.addAll(pieces(repeat.cut()));
        } else if (node instanceof Together together) {
            List<Piece> parts = pieces(together.body());
            long times = times(together.times(), together.takes(), together.target() == Target.SPACE);
            pieces.add(new Piece.Run(group(together, parts), times, together.target(), parts));
        } else if (node instanceof Choice choice) {
            add(choice.options().get(options[choice.habit().ordinal()]), pieces);
        } else if (node instanceof Sequence sequence) {
            pieces.addAll(pieces(sequence.body()));
        }
    }

    /** Stitches to the next corner: those of the first side where it stands in no repeat, or of a whole one. */
    private long side() {
        boolean first = depth == 0 && !begun;
        begun |= first;
        return first ? fill.sides().first() : fill.sides().each();
    }

    private long times(Times times, long takes, boolean space) {
        boolean spaces = fill.sides() != Linear.Sides.NONE || Linear.spacesOnly(takes, space ? 1 : 0);
        return times.fills() ? fill.of(spaces) : times.number();
    }

    private static boolean intoSpaces(List<Piece> body) {
        return body.stream()
                .anyMatch(piece -> piece instanceof Piece.Loop loop
                        ? intoSpaces(loop.body())
                        : ((Piece.Run) piece).step().loop() == Step.Loop.SPACE);
    }

    private Step step(Work work) {
        int makes = work.manner() == Manner.CHAIN ? options[Habit.CHAINS.ordinal()] : work.makes();
        return new Step(action(work), work.stitch().in(terms), work.takes(), makes, loop(work), work.span(), own(work));
    }

    private static Optional<String> own(Work work) {
        return work.own().isEmpty() ? Optional.empty() : Optional.of(work.own());
    }

    private static Step.Action action(Work work) {
        boolean into =
                work.target() == Target.RING || work.target() == Target.FOUNDATION || work.target() == Target.ONE_CHAIN;
        if (into && work.manner() != Manner.STARTING_CHAIN) {
            return Step.Action.INTO_RING;
        }
        return switch (work.manner()) {
            case PLAIN -> work.target() == Target.SPACE ? Step.Action.INTO_RING : Step.Action.PLAIN;
            case INCREASE ->
                work.target() == Target.SPACE && work.takes() == 0 ? Step.Action.INTO_RING : Step.Action.INCREASE;
            case STARTING_CHAIN -> Step.Action.CHAIN;
            default -> Step.Action.valueOf(work.manner().name());
        };
    }

    private static Step.Loop loop(Work work) {
        return work.target() == Target.SPACE
                ? Step.Loop.SPACE
                : Step.Loop.valueOf(work.hold().name());
    }

    private Step group(Together together, List<Piece> body) {
        int makes = (int) Math.min(Sums.MOST, Sums.makes(body));
        Stitch stitch = body.stream()
                .filter(Piece.Run.class::isInstance)
                .map(piece -> ((Piece.Run) piece).step().stitch())
                .filter(named -> named != Stitch.CHAIN)
                .findFirst()
                .orElse(StitchName.CHAIN.in(terms));
        Step.Loop loop = together.target() == Target.SPACE ? Step.Loop.SPACE : Step.Loop.BOTH;
        return new Step(Step.Action.GROUP, stitch, together.takes(), makes, loop, together.span(), Optional.empty());
    }

    static boolean onlyNotes(List<Node> nodes) {
        for (Node node : nodes) {
            if (!(node instanceof Note)) {
                return false;
            }
        }
        return true;
    }
}
