package roundwright.pattern;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.notation.Feature;
import roundwright.notation.GapChange;
import roundwright.notation.Habit;
import roundwright.notation.Node;
import roundwright.notation.StitchName;
import roundwright.notation.Terms;
import roundwright.notation.Vocabulary;
import roundwright.notation.WrittenLine;
import roundwright.notation.WrittenLine.Reference;

/** Reads the lines of one part in order, each against the round below it. */
final class PartReader {
    /** No piece has as many rounds; what comes after them is read, but is nothing to do. */
    private static final int MOST_ITEMS = 100_000;

    /** One line is for no more rounds than this. */
    private static final int MOST_ROUNDS = 1000;

    private final Terms terms;
    private final Leaning leaning;
    private final Interpreter interpreter;
    private final PartContext part;
    private final Numbering numbering = new Numbering();
    private final List<Line> lines = new ArrayList<>();
    private final List<PartItem> items = new ArrayList<>();
    private final Map<Integer, WrittenLine> byNumber = new HashMap<>();
    private Below below = Below.UNKNOWN;
    private int number;
    /** Whether a line has turned the work without joining a round: the part is worked in rows. */
    private boolean flat;
    /** The rounds of the line that was read last, one by one. */
    private List<Interpretation> rounds = List.of();

    /** What a part may go on from whose rounds are numbered on: the last round of the part before it. */
    private Below before = Below.UNKNOWN;

    private int lastBefore = -1;

    /** The chain that the part begins with where a line of its own makes it: joined into a ring, its chains are as stitches below. */
    private Below chain = Below.UNKNOWN;

    /** Lets the part go on from another where its first round is numbered on from that one's last. */
    PartReader after(PartReader other) {
        before = other.below;
        lastBefore = other.number;
        return this;
    }

    PartReader(Terms terms, Leaning leaning, Vocabulary vocabulary) {
        this.terms = terms;
        this.leaning = leaning;
        this.interpreter = new Interpreter(leaning, terms);
        this.part = new PartContext(terms, leaning, interpreter, new Mends(interpreter, vocabulary));
    }

    Part read(PartText part, List<WrittenLine> written) {
        for (int i = 0; i < written.size(); i++) {
            List<WrittenLine> rest = written.subList(i + 1, written.size());
            read(written.get(i), part.lines().get(i).at(), rest);
        }
        return new Part(part.name(), lines, items);
    }

    private void read(WrittenLine written, int at, List<WrittenLine> rest) {
        Line.Found found = new Line.Found();
        found.text = written.text();
        found.at = at;
        found.terms = terms;
        found.features = written.features();
        if (written.label().isPresent()) {
            WrittenLine.Label label = written.label().get();
            found.label = Optional.of(new Line.Label(label.first(), label.last()));
        }
        List<WrittenLine> worked = worked(written);
        boolean stitches = stitches(worked);
        flat |= written.features().contains(Feature.TURNED)
                && !written.features().contains(Feature.JOINED);
        if (written.founds() && number == 0) {
            boolean ring = written.features().contains(Feature.RING_OF_CHAINS);
            int made = written.chain().made();
            chain = new Below(ring ? made : -1, -1, -1, made);
        } else if (stitches) {
            below = startsAnew(written) ? Below.UNKNOWN : below;
            check(written, worked, found, rest);
        }
        Line line = new Line(found);
        lines.add(line);
        addItems(written, worked, line, stitches);
    }

    private static boolean stitches(List<WrittenLine> worked) {
        for (WrittenLine line : worked) {
            if (line.stitches()) {
                return true;
            }
        }
        return false;
    }

    /** Whether a new piece begins without a heading: a first round into a ring of its own uses no round above it. */
    private static boolean startsAnew(WrittenLine written) {
        boolean first = written.label().isEmpty() || written.label().get().first() <= 1;
        return first && written.features().contains(Feature.MAGIC_RING);
    }

    /** The line itself, or the lines it takes over, once for every round it is for. */
    private List<WrittenLine> worked(WrittenLine written) {
        int rounds = Math.max(1, written.rounds());
        if (written.label().isPresent()) {
            rounds = written.label().get().last() - written.label().get().first() + 1;
        }
        rounds = Math.min(rounds, MOST_ROUNDS);
        if (written.reference().isEmpty()) {
            return Collections.nCopies(rounds, written);
        }
        List<WrittenLine> once = new ArrayList<>();
        Reference reference = written.reference().get();
        for (int n = reference.first(); n <= reference.last() && once.size() < MOST_ROUNDS; n++) {
            WrittenLine other = byNumber.get(n == 0 ? number : n);
            if (other == null) {
                return List.of(written);
            }
            once.add(other);
        }
        rounds = Math.max(rounds, once.size() * Math.min(reference.times(), MOST_ROUNDS));
        if (reference.gap().isPresent()) {
            return changed(reference.gap().get(), once.get(once.size() - 1), rounds)
                    .orElse(List.of(written));
        }
        List<WrittenLine> all = new ArrayList<>();
        for (int i = 0; i < rounds; i++) {
            all.add(once.get(i % once.size()));
        }
        return all;
    }

    /** The line taken over with another gap between its shapings, in each of so many rounds. */
    private static Optional<List<WrittenLine>> changed(GapChange gap, WrittenLine other, int rounds) {
        List<WrittenLine> all = new ArrayList<>();
        for (int i = 0; i < rounds; i++) {
            gap.in(other, i + 1).ifPresent(all::add);
        }
        return all.size() == rounds ? Optional.of(all) : Optional.empty();
    }

    private void check(WrittenLine written, List<WrittenLine> worked, Line.Found found, List<WrittenLine> rest) {
        found.available = optional(below.stitches());
        found.verdict = Verdict.NOT_UNDERSTOOD;
        Below start = below;
        LineProblems problems = new LineProblems(written);
        found.account = problems;
        for (StitchName name : written.names()) {
            if (name.only(terms.other())) {
                problems.otherTerms(terms);
                break;
            }
        }
        number(written, worked.size(), problems);
        Checked checked = best(written, worked, start);
        found.available = optional(checked.below().stitches());
        if (written.said().isPresent()) {
            leaning.say(written.said().get().habit(), written.said().get().option());
        }
        leaning.seen(
                written,
                checked.fits()
                        && checked.below().stitches() >= 0
                        && checked.last().stated() >= 0);
        rounds = checked.rounds();
        single(written, checked);
        if (understood(written, checked)) {
            Interpretation way = shown(written, checked);
            found.account = new RoundAccount(part, flat, written, worked, checked, way, problems, rest);
            settle(checked, way, found);
        } else {
            giveUp(written, checked, found, problems);
        }
    }

    /**
     * The line worked on the round below as it is stated or as it was made; on a part begun anew where its words or its
     * number say so and it does not fit what stands above it.
     */
    private Checked best(WrittenLine written, List<WrittenLine> worked, Below start) {
        if (chain.chains() > 0 && first() && start.stitches() < 0) {
            Checked on = work(written, worked, chain);
            if (on.fits() || on.last() != null && usesChain(written, on.last())) {
                return on;
            }
        }
        Checked checked = work(written, worked, start);
        boolean goesOn =
                number == 0 && start.stitches() < 0 && before.stitches() > 0 && numbered(written, lastBefore + 1);
        if (goesOn
                && (checked.last() == null
                        || written.counts().isEmpty() && checked.last().takes() > 0)) {
            Checked on = work(written, worked, before);
            checked = on.fits() ? on : checked;
        }
        boolean restarts = number > 2 && numbered(written, 1);
        if (!checked.fits() && (restarts || written.features().contains(Feature.JOIN_PARTS))) {
            Checked alone = work(written, worked, Below.UNKNOWN);
            checked = alone.fits() ? alone : checked;
        }
        boolean nothing = checked.last() != null && checked.last().takes() == 0 && start.stitches() >= 0;
        if (!checked.fits() && nothing) {
            Checked alone = work(written, worked, Below.UNKNOWN);
            checked = alone.fits() ? alone : checked;
        }
        boolean other = start.made() >= 0 && start.made() != start.stitches();
        if (!checked.fits() && other) {
            Checked second = work(written, worked, new Below(start.made(), -1, start.spaces()));
            checked = second.fits() ? second : checked;
        }
        return checked;
    }

    private static boolean numbered(WrittenLine written, int number) {
        return written.label().isPresent() && written.label().get().first() == number;
    }

    /** Whether only the chain, and no ring's middle, can be what the first round is worked into. */
    private boolean usesChain(WrittenLine written, Interpretation way) {
        boolean along = chain.stitches() < 0 && written.chain().from() > 0;
        return along || FirstRound.goesOn(written.body()) || FirstRound.of(way).takes() > 0;
    }

    /** Sees whether the round comes out right with its single starting chain apart, or only with it as a stitch. */
    private void single(WrittenLine written, Checked checked) {
        boolean told = written.open().contains(Habit.SINGLE_CHAIN)
                && checked.last() != null
                && checked.last().stated() >= 0
                && checked.below().stitches() >= 0
                && written.reference().isEmpty();
        if (!told) {
            return;
        }
        int chain = Habit.SINGLE_CHAIN.ordinal();
        boolean counted = !checked.fits()
                && interpreter.ways(written, written.counts(), checked.below()).stream()
                        .anyMatch(way -> way.fits() && way.options()[chain] == 1);
        if (counted || checked.fits() && checked.last().options()[chain] == 0) {
            leaning.single(!counted);
        }
    }

    private void number(WrittenLine written, int rounds, LineProblems problems) {
        if (written.label().isEmpty()) {
            numbering.unlabelled(rounds);
            return;
        }
        WrittenLine.Label label = written.label().get();
        Optional<Numbering.Oddity> oddity = numbering.next(label.first(), label.last());
        if (oddity.isPresent()) {
            problems.numbering(oddity.get());
        }
    }

    private static boolean understood(WrittenLine written, Checked checked) {
        Interpretation way = checked.last();
        if (way == null || tooLarge(way)) {
            return false;
        }
        boolean confirmed = way.fits()
                && way.stated() >= 0
                && checked.below().stitches() >= 0
                && way.options()[Habit.BARE_LIST.ordinal()] == 0;
        return written.doubts().isEmpty() || confirmed && !written.hole();
    }

    private static boolean tooLarge(Interpretation way) {
        return way.steps() > Expansion.MOST_STEPS
                || way.takes() > Expansion.MOST_STEPS
                || way.makes() > Expansion.MOST_STEPS;
    }

    /** Nothing is counted on a line that was not understood but what it states itself. */
    private void giveUp(WrittenLine written, Checked checked, Line.Found found, LineProblems problems) {
        found.stated = written.counts().stream()
                .filter(WrittenLine.Count::sure)
                .mapToInt(WrittenLine.Count::value)
                .findFirst();
        below = found.stated.isPresent() ? new Below(found.stated.getAsInt(), -1, -1) : Below.UNKNOWN;
        if (checked.last() != null && tooLarge(checked.last())) {
            problems.tooLarge();
        } else if (written.reference().isPresent()) {
            problems.noSuchRound(
                    written.reference().get().first(), written.reference().get().span());
        } else if (checked.last() == null && written.doubts().isEmpty() && !Resolver.onlyNotes(written.body())) {
            problems.noRoomKnown();
        } else {
            problems.notUnderstood(terms);
        }
    }

    /** The last round; of a first round that does not say what it goes into, one that goes into no round. */
    private Interpretation shown(WrittenLine written, Checked checked) {
        boolean founded = checked.below().chains() > 0;
        boolean first = first()
                && (founded ? checked.fits() : checked.below().stitches() < 0 && !FirstRound.goesOn(written.body()))
                && !written.features().contains(Feature.JOIN_PARTS);
        return first
                ? FirstRound.of(checked.last(), founded ? Node.Target.FOUNDATION : Node.Target.RING)
                : checked.last();
    }

    private void settle(Checked checked, Interpretation way, Line.Found found) {
        boolean founded = checked.below().chains() > 0;
        found.available = founded && way.takes() == 0 ? OptionalInt.empty() : found.available;
        found.takes = OptionalInt.of((int) way.takes());
        found.makes = OptionalInt.of((int) way.makes());
        found.stated = optional(way.stated());
        found.verdict =
                !checked.fits() ? Verdict.DOES_NOT_ADD_UP : way.stated() < 0 ? Verdict.NO_COUNT : Verdict.ADDS_UP;
        long spaces = checked.lines().get(checked.lines().size() - 1).open().contains(Habit.CHAINS)
                ? Sums.spaces(way.pieces())
                : -1;
        below = new Below(way.stated() < 0 ? way.makes() : way.stated(), way.makes(), spaces);
    }

    /** Whether the next round is the first of its part: what it is worked into is no round. */
    private boolean first() {
        if (number > 0) {
            return false;
        }
        for (PartItem item : items) {
            if (item instanceof Round) {
                return false;
            }
        }
        return true;
    }

    private Checked work(WrittenLine written, List<WrittenLine> worked, Below start) {
        Below under = start;
        List<Interpretation> rounds = new ArrayList<>(worked.size());
        boolean fits = true;
        for (int i = 0; i < worked.size(); i++) {
            boolean end = i == worked.size() - 1;
            WrittenLine line = worked.get(i);
            Interpretation before = rounds.isEmpty() ? null : rounds.get(i - 1);
            boolean again = before != null && line == worked.get(i - 1) && before.makes() == under.stitches() && !end;
            under = before == null ? start : new Below(before.makes(), before.makes(), -1);
            if (again) {
                rounds.add(before);
                continue;
            }
            List<WrittenLine.Count> counts = end ? written.counts() : List.of();
            List<Interpretation> ways =
                    Resolver.onlyNotes(line.body()) ? List.of() : interpreter.ways(line, counts, under);
            if (ways.isEmpty() && !end && under.stitches() < 0) {
                ways = unchanging(line, under);
            }
            if (ways.isEmpty()) {
                return new Checked(worked, List.of(), false, start, under);
            }
            rounds.add(ways.get(0));
            fits &= ways.get(0).fits();
            learn(line, ways, under);
        }
        return new Checked(worked, rounds, fits, start, under);
    }

    /** The first of several rounds on nobody knows how many stitches: where it changes nothing, it has the count of the last. */
    private List<Interpretation> unchanging(WrittenLine line, Below under) {
        return interpreter.ways(line, line.counts(), under).stream()
                .filter(way -> way.fits() && way.takes() == way.makes() && way.stated() >= 0)
                .toList();
    }

    private void learn(WrittenLine line, List<Interpretation> ways, Below under) {
        if (ways.size() < 2
                || !ways.get(0).fits()
                || below.stitches() < 0
                || ways.get(0).stated() < 0) {
            return;
        }
        Interpretation best = ways.get(0);
        for (Habit habit : line.open()) {
            int option = best.options()[habit.ordinal()];
            boolean other = false;
            for (Interpretation way : ways) {
                other |= way.fits() && way.options()[habit.ordinal()] != option;
            }
            if (!other) {
                leaning.show(habit, option);
            }
        }
    }

    private static OptionalInt optional(long value) {
        return value < 0 ? OptionalInt.empty() : OptionalInt.of((int) value);
    }

    private void addItems(WrittenLine written, List<WrittenLine> worked, Line line, boolean stitches) {
        if (!stitches) {
            items.add(new Instruction(line));
            return;
        }
        int first = written.label().isPresent() ? written.label().get().first() : number + 1;
        for (int i = 0; i < worked.size() && items.size() < MOST_ITEMS; i++) {
            number = first + i;
            byNumber.put(number, worked.get(i));
            boolean end = i == worked.size() - 1;
            if (end || line.makes().isEmpty() || rounds.size() != worked.size()) {
                items.add(new Round(number, line, line::round, line.count()));
            } else {
                Interpretation way = rounds.get(i);
                OptionalInt count = OptionalInt.of((int) way.makes());
                items.add(new Round(number, line, () -> Optional.of(Expansion.of(way.pieces())), count));
            }
        }
    }
}
