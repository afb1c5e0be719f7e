package roundwright.notation;

import java.util.ArrayList;
import java.util.List;
import roundwright.notation.Node.Choice;
import roundwright.notation.Node.Manner;
import roundwright.notation.Node.Note;
import roundwright.notation.Node.Repeat;
import roundwright.notation.Node.Sequence;
import roundwright.notation.Node.Work;
import roundwright.notation.RepeatWords.Often;

/** The steps of a list while it is read, and how words that repeat some of them take hold. */
final class Items {
    /** Repeats of repeats beyond this are no writer's. */
    private static final int MOST_REPEATS = 30;

    private int repeats;

    final List<Node> nodes = new ArrayList<>();

    /** Where the steps begin that a repeat of the list would take in. */
    private int from;

    /** Whether the words of a repeat point to an asterisk. */
    boolean starred;

    /** Whether a mark stands after the last step. */
    boolean parted;

    void add(Node node) {
        nodes.add(afterPlain(node) ? ((Choice) node).options().get(0) : node);
        parted = false;
    }

    /** Adds a step; the plain stitches of a round that goes on with them already only say so ("inc in every third st, 1 dc in the others"). */
    void addStep(Node node) {
        boolean told = filled() && node instanceof Work rest && rest.times().fills() && rest.makes() == 1;
        add(told ? new Note(node.span(), Feature.OTHER) : node);
    }

    /** "1 dc, dc inc": nobody writes two dc like that, so the second names the increase. */
    private boolean afterPlain(Node node) {
        return parted
                && node instanceof Choice choice
                && choice.habit() == Habit.NAME_AND_SHAPING
                && choice.options().get(0) instanceof Work shaping
                && shaping.times().once()
                && last() instanceof Work plain
                && plain.manner() == Manner.PLAIN
                && plain.stitch() == shaping.stitch()
                && choice.options().get(1) instanceof Sequence two
                && two.body().get(0) instanceof Work first
                && first.manner() == Manner.PLAIN;
    }

    /** Whether the last step is one plain stitch with no number or place. */
    boolean lastPlain() {
        return last() instanceof Work work
                && work.manner() == Manner.PLAIN
                && work.times().once();
    }

    /** Lets the last step go on until the round is full. */
    void fillLast() {
        nodes.set(nodes.size() - 1, ((Work) last()).times(Times.FULL));
    }

    /** Whether the steps go on until the round is full, or are said to be repeated. */
    boolean repeating() {
        return !empty() && !bare() && !onlyNotes(nodes);
    }

    static boolean onlyNotes(List<Node> nodes) {
        for (Node node : nodes) {
            if (!(node instanceof Note)) {
                return false;
            }
        }
        return true;
    }

    /** "4 dc, 4 tr, all into the ring": the steps before go there too. */
    void intoRing() {
        nodes.replaceAll(node -> node instanceof Work work && work.target() == Node.Target.NEXT && work.takes() == 1
                ? work.in(Node.Target.RING, 0)
                : node);
    }

    /** Whether the last step is a plain stitch in each, all round: how many rounds of it there are is another thing. */
    boolean fillsRound() {
        boolean repeated = last() instanceof Repeat repeat && repeat.times().fills() && plain(repeat.body());
        return repeated
                || last() instanceof Work work
                        && work.manner() == Manner.PLAIN
                        && work.times().fills();
    }

    /** Whether the last step goes round, with plain stitches of its own between: "inc in every third st". */
    boolean filled() {
        return last() instanceof Node.Spread
                || last() instanceof Repeat repeat && repeat.times().fills();
    }

    /** Whether steps without a place stand before the one that goes into the ring: "dc, dc, dc in magic ring". */
    boolean plainTillRing() {
        boolean ring = false;
        for (Node node : nodes) {
            boolean into = node instanceof Work work && work.target() == Node.Target.RING;
            boolean plain = node instanceof Work work
                    && work.manner() == Manner.PLAIN
                    && work.times().number() > 0;
            if (!into && !plain && !mayEnd(node) || ring && plain && !into) {
                return false;
            }
            ring |= into;
        }
        return ring;
    }

    boolean alone() {
        return nodes.size() == from + 1;
    }

    /** "inc 6 times evenly": the shaping alone is named, the rest of the round is plain. */
    boolean evenly() {
        dropNotes();
        Node last = last() instanceof Choice choice && choice.habit() == Habit.NUMBER_AFTER_INCREASE
                ? choice.options().get(0)
                : last();
        boolean shaping = last instanceof Work work
                && work.takes() != work.makes()
                && work.takes() > 0
                && work.manner() != Manner.CHAIN
                && !work.times().fills();
        boolean alone = alone() || nodes.size() == from + 2 && plainAround(nodes.get(from));
        if (!shaping || !alone) {
            return false;
        }
        nodes.subList(from, nodes.size()).clear();
        nodes.add(new Node.Spread(last.span(), (Work) last, 0));
        return true;
    }

    /** "dc around": what other steps interrupt. */
    private static boolean plainAround(Node node) {
        return node instanceof Work work
                && work.takes() == 1
                && work.makes() == 1
                && work.times().fills();
    }

    /** Whether the node is one shaping step: a bracket with one straight after another says it in other words. */
    static boolean shapes(Node node) {
        if (node instanceof Node.Choice choice) {
            return shapes(choice.options().get(choice.options().size() - 1));
        }
        return node instanceof Work work && work.takes() != work.makes() && work.manner() != Manner.CHAIN;
    }

    /** Whether all are plain stitches. */
    static boolean plain(List<Node> nodes) {
        for (Node node : nodes) {
            boolean plain = node instanceof Work work
                    && (work.manner() == Manner.PLAIN || work.manner() == Manner.GROUP && work.makes() == 1);
            if (!plain) {
                return false;
            }
        }
        return true;
    }

    /** "dc around, increasing in every third st": the plain stitches are those between the increases. */
    void dropPlain() {
        boolean plain = nodes.size() == from + 1
                && last() instanceof Work work
                && work.takes() == 1
                && work.makes() == 1
                && (work.times().fills() || work.times().once());
        if (plain) {
            nodes.remove(from);
        }
    }

    /** A thing that no repeat of the list takes in: a note, a join, a starting chain. */
    void addApart(Node node) {
        nodes.add(node);
        if (from == nodes.size() - 1) {
            from = nodes.size();
        }
        parted = false;
    }

    boolean empty() {
        return from >= nodes.size();
    }

    Node last() {
        return nodes.isEmpty() ? null : nodes.get(nodes.size() - 1);
    }

    /** A new list begins here: what stands before is not taken in by later repeats. */
    void fence() {
        from = nodes.size();
    }

    /**
     * As {@link #repeat(Often, Span)}; where the number may be the round's count instead ("repeat 18"), the steps may also go on
     * until the round is full.
     */
    boolean repeat(Often often, Span words, boolean orCount) {
        if (!orCount) {
            return repeat(often, words);
        }
        dropNotes();
        List<Node> before = List.copyOf(nodes);
        boolean marked = parted;
        if (!repeat(often, words)) {
            return false;
        }
        List<Node> many = List.copyOf(nodes.subList(from, nodes.size()));
        nodes.clear();
        nodes.addAll(before);
        parted = marked;
        repeat(new Often(Times.FULL, false, false, true, often.fromStar()), words);
        List<Node> full = List.copyOf(nodes.subList(from, nodes.size()));
        nodes.subList(from, nodes.size()).clear();
        nodes.add(new Choice(words, Habit.BARE_COUNT, List.of(new Sequence(words, many), new Sequence(words, full))));
        return true;
    }

    /** Takes hold of the steps that the words mean. False where there is nothing to repeat. */
    boolean repeat(Often often, Span words) {
        dropNotes();
        if (empty() || ++repeats > MOST_REPEATS) {
            return false;
        }
        int last = nodes.size() - 1;
        Node node = nodes.get(last);
        if (last > from
                && often.times().fills()
                && nodes.get(last - 1) instanceof Node.Spread
                && plain(List.of(node))) {
            nodes.remove(last);
            return true;
        }
        if (last == from
                && often.times().fills()
                && node instanceof Work work
                && work.times().fills()) {
            return true;
        }
        if (often.times().fills() && fillsInBracket(node)) {
            nodes.set(last, bodyOf((Choice) node).get(0));
        } else if (node instanceof Choice choice && choice.habit() == Habit.BARE_BRACKET) {
            bracket(choice, often, words);
        } else if (last == from) {
            nodes.set(last, repeated(List.of(node), often, node.span().to(words)));
        } else if (parted || often.repeat()) {
            wholeList(often, words);
        } else {
            scope(often, words);
        }
        return true;
    }

    /** "(2 dc into each st) to end": the bracket says already that it goes round. */
    private static boolean fillsInBracket(Node node) {
        return node instanceof Choice choice
                && choice.habit() == Habit.BARE_BRACKET
                && bodyOf(choice).size() == 1
                && bodyOf(choice).get(0) instanceof Work work
                && work.times().fills();
    }

    /** "(dc, inc) x 6" is the bracket; "dc, (inc), repeat 6 times" may be the list. */
    private void bracket(Choice bracket, Often often, Span words) {
        int last = nodes.size() - 1;
        Node alone = repeated(bodyOf(bracket), often, bracket.span().to(words));
        boolean oneStep = bodyOf(bracket).size() == 1;
        if (!often.repeat() && !oneStep || last == from || often.fromStar() && starred) {
            nodes.set(last, alone);
            return;
        }
        List<Node> before = List.copyOf(nodes.subList(from, last));
        nodes.subList(from, nodes.size()).clear();
        Span span = before.get(0).span().to(words);
        List<Node> first = new ArrayList<>(before);
        first.add(alone);
        List<Node> all = new ArrayList<>(before);
        all.addAll(bodyOf(bracket));
        nodes.add(new Choice(span, Habit.LIST_SCOPE, List.of(repeated(all, often, span), new Sequence(span, first))));
    }

    /** Notes at the end are not what is repeated. */
    private void dropNotes() {
        while (nodes.size() > from && last() instanceof Note) {
            nodes.remove(nodes.size() - 1);
        }
    }

    private void wholeList(Often often, Span words) {
        List<Node> body = List.copyOf(nodes.subList(from, nodes.size()));
        nodes.subList(from, nodes.size()).clear();
        nodes.add(repeated(body, often, body.get(0).span().to(words)));
    }

    /** "dc, inc x 6": the last step, or the list; the sums decide. */
    private void scope(Often often, Span words) {
        List<Node> body = List.copyOf(nodes.subList(from, nodes.size()));
        nodes.subList(from, nodes.size()).clear();
        List<Node> alone = new ArrayList<>(body.subList(0, body.size() - 1));
        Node last = body.get(body.size() - 1);
        alone.add(repeated(List.of(last), often, last.span().to(words)));
        Span span = body.get(0).span().to(words);
        Node one = new Sequence(span, alone);
        Node all = repeated(body, often, span);
        nodes.add(
                often.times().fills()
                        ? new Choice(span, Habit.LIST_SCOPE, List.of(all, one))
                        : new Choice(span, Habit.SCOPE, List.of(one, all)));
    }

    private static List<Node> bodyOf(Choice bracket) {
        return ((Repeat) bracket.options().get(0)).body();
    }

    private static Node repeated(List<Node> body, Often often, Span span) {
        Times times = often.times();
        boolean single = body.size() == 1
                && body.get(0) instanceof Work one
                && one.times().once();
        if (single && (times.fills() || !often.repeat())) {
            return ((Work) body.get(0)).times(times).over(span);
        }
        if (times.fills()) {
            return new Repeat(span, body, times, List.of());
        }
        Node inAll = new Repeat(span, body, times, List.of());
        Node further = new Repeat(span, body, Times.of(times.number() + 1), List.of());
        if (often.more()) {
            return often.fromStar() ? further : new Choice(span, Habit.MORE_TIMES, List.of(further, inAll));
        }
        if (!often.repeat() || often.total()) {
            return inAll;
        }
        return often.fromStar()
                ? new Choice(span, Habit.REPEAT_FROM, List.of(further, inAll))
                : new Choice(span, Habit.REPEAT_LIST, List.of(inAll, further));
    }

    /** A bracket with no number yet: to fill the round, once, or an aside that says the step before in other words. */
    static Node bracket(Span span, List<Node> body) {
        return new Choice(
                span,
                Habit.BARE_BRACKET,
                List.of(
                        new Repeat(span, body, Times.FULL, List.of()),
                        new Sequence(span, body),
                        new Note(span, Feature.OTHER)));
    }

    /** Brackets without a number within a list that is repeated itself are worked once: nothing fills a round twice over. */
    void onceInside() {
        for (int i = 0; i < nodes.size(); i++) {
            if (nodes.get(i) instanceof Choice choice && choice.habit() == Habit.BARE_BRACKET) {
                nodes.set(i, choice.options().get(1));
            }
        }
    }

    /** Whether the list has steps of which none is repeated: such a list may stand for the whole round. */
    boolean bare() {
        boolean steps = false;
        for (Node node : nodes) {
            boolean whole = node instanceof Repeat || node instanceof Node.Spread;
            if (whole || node instanceof Choice choice && repeats(choice.habit())) {
                return false;
            }
            if (node instanceof Work work) {
                if (work.times().fills()) {
                    return false;
                }
                steps |= work.manner() != Manner.JOIN && work.target() == Node.Target.NEXT;
            }
            steps |= node instanceof Choice;
        }
        return steps;
    }

    private static boolean repeats(Habit habit) {
        return switch (habit) {
            case REPEAT_FROM, REPEAT_LIST, MORE_TIMES, BARE_BRACKET, SCOPE, LIST_SCOPE, BARE_COUNT -> true;
            default -> false;
        };
    }

    private static boolean mayEnd(Node node) {
        return node instanceof Note
                || node instanceof Work work && work.manner() == Manner.JOIN
                || node instanceof Choice choice && choice.habit() == Habit.NUMBER_AT_END;
    }

    /** The steps since the fence, as a choice: once, or until the round is full. */
    void mayFill() {
        if (!bare() || empty()) {
            return;
        }
        List<Node> body = List.copyOf(nodes.subList(from, nodes.size()));
        List<Node> tail = new ArrayList<>();
        int end = body.size();
        while (end > 0 && mayEnd(body.get(end - 1))) {
            tail.add(0, body.get(--end));
        }
        if (end == 0) {
            return;
        }
        List<Node> steps = body.subList(0, end);
        Span span = steps.get(0).span().to(steps.get(end - 1).span());
        nodes.subList(from, nodes.size()).clear();
        nodes.add(new Choice(
                span,
                Habit.BARE_LIST,
                List.of(new Sequence(span, steps), new Repeat(span, steps, Times.FULL, List.of()))));
        nodes.addAll(tail);
    }
}
