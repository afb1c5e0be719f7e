package roundwright.mistakes.chain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.group.RoundPlace;
import roundwright.mistakes.story.Kind;
import roundwright.mistakes.story.Kinds;
import roundwright.mistakes.story.Landing;
import roundwright.mistakes.story.Rates;
import roundwright.mistakes.story.Tally;
import roundwright.mistakes.story.WrittenRound;

/** Asks what happened in one round, given what is known from below (outside) and from the rounds worked onto it (inside). */
final class Inquiry {
    /** A single outcome less likely than this is not looked at, nor a cause listed. */
    private static final double LOOKED_AT = 1e-6;

    private static final double LISTED = 1e-5;
    private static final int MISCOUNTED = Kinds.of(Kind.MISCOUNTED).code();

    private static final Comparator<Finding.Cause> LIKELIEST_FIRST = (left, right) -> {
        int byChance = Double.compare(right.probability(), left.probability());
        return byChance != 0
                ? byChance
                : Integer.compare(left.kinds().code(), right.kinds().code());
    };

    private final Node node;
    private final double[] outside;
    private final double[] inside;
    private final Rates rates;
    private final double total;

    Inquiry(Node node, double[] outside, double[] inside, Rates rates) {
        this.node = node;
        this.outside = outside;
        this.inside = inside;
        this.rates = rates;
        this.total = total();
    }

    private double total() {
        double sum = 0;
        for (int from = 0; !node.anew && from < outside.length; from++) {
            for (int to = 0; to < inside.length; to++) {
                sum += outside[from] * node.moves[from][to] * inside[to];
            }
        }
        return sum;
    }

    /** The probability of everything that may have gone wrong together. */
    private Tally tally() {
        Tally tally = new Tally();
        for (int from = 0; !node.anew && from < outside.length; from++) {
            Landing landing = node.round.story().get().at(node.below[from]);
            for (int to = 0; to < inside.length; to++) {
                if (outside[from] * node.moves[from][to] * inside[to] > LOOKED_AT * total) {
                    add(landing, from, to, tally);
                }
            }
        }
        return tally;
    }

    private void add(Landing landing, int from, int to, Tally tally) {
        int made = node.counts[to];
        double scale = outside[from] * inside[to] * node.seen.reports(made, rates) / total;
        int mark = node.seen.miscounted(made) ? MISCOUNTED : 0;
        boolean answered = !node.seen.answers().isEmpty();
        landing.forEachOutcome(made, (code, part) -> {
            double seen = answered ? node.seen.answers(new Kinds(code + mark)) : 1;
            tally.add(code + mark, scale * part * seen);
            return scale * part > LOOKED_AT;
        });
    }

    Finding finding() {
        return new Finding(
                node.round.part(),
                node.round.number(),
                node.seen.reported(),
                !node.anew,
                causes(),
                counts(),
                -Math.log(node.evidence),
                expected(),
                node.origins.began(),
                lastRight());
    }

    /** Goes down from here as long as the counts are most likely off, with what was seen above them. */
    private Optional<RoundPlace> lastRight() {
        Node at = node;
        double[] above = inside;
        while (!at.round.hasCount(at.counts[likeliest(at.belief, above)])) {
            if (at.parent.isEmpty() || at.anew) {
                return Optional.empty();
            }
            above = at.told(above);
            at = at.parent.get();
        }
        return Optional.of(new RoundPlace(at.round.part(), at.round.number()));
    }

    private static int likeliest(double[] belief, double[] above) {
        int best = 0;
        for (int count = 1; count < belief.length; count++) {
            best = belief[count] * above[count] > belief[best] * above[best] ? count : best;
        }
        return best;
    }

    private List<Finding.Cause> causes() {
        Tally tally = tally();
        int[] codes = tally.codes();
        double[] chances = tally.chances();
        List<Finding.Cause> causes = new ArrayList<>();
        for (int entry = 0; entry < codes.length; entry++) {
            if (chances[entry] > LISTED) {
                causes.add(new Finding.Cause(new Kinds(codes[entry]), chances[entry]));
            }
        }
        causes.sort(LIKELIEST_FIRST);
        return causes;
    }

    private List<Finding.TrueCount> counts() {
        List<Finding.TrueCount> counts = new ArrayList<>();
        for (int to = 0; to < node.counts.length; to++) {
            double chance = node.anew ? node.belief[to] : 0;
            for (int from = 0; !node.anew && from < outside.length; from++) {
                chance += outside[from] * node.moves[from][to] * inside[to] / total;
            }
            counts.add(new Finding.TrueCount(node.counts[to], chance));
        }
        counts.sort(Comparator.comparingDouble(Finding.TrueCount::probability).reversed());
        return counts;
    }

    /** Enters what may have happened, and what could have, in the ledger. */
    void enter(Ledger ledger) {
        if (node.anew) {
            return;
        }
        double[] happened = happened();
        for (Kind kind : Kind.values()) {
            ledger.happened(kind, happened[kind.ordinal()]);
            ledger.couldHappen(kind, opportunities(kind, happened));
        }
        if (node.round.line().isPresent()) {
            ledger.ended(byTheLine());
        }
    }

    /** The expected number of mistakes of each kind. */
    private double[] happened() {
        double[] happened = new double[Kind.values().length];
        Tally tally = tally();
        int[] codes = tally.codes();
        double[] chances = tally.chances();
        for (int entry = 0; entry < codes.length; entry++) {
            Kinds kinds = new Kinds(codes[entry]);
            for (Kind kind : Kind.values()) {
                happened[kind.ordinal()] += kinds.count(kind) * chances[entry];
            }
        }
        return happened;
    }

    /** The expected number of times that a mistake of the kind could have happened. */
    private double opportunities(Kind kind, double[] happened) {
        boolean start = node.round.line().isEmpty();
        if (kind.per() == Kind.Per.REPORT) {
            return node.seen.reported().isPresent() ? 1 : 0;
        }
        if (start || kind.per() == Kind.Per.PART) {
            return start && kind.per() == Kind.Per.PART ? 1 : 0;
        }
        WrittenRound line = node.round.line().get();
        double sum = 0;
        for (int from = 0; from < outside.length; from++) {
            double share = 0;
            for (int to = 0; to < inside.length; to++) {
                share += outside[from] * node.moves[from][to] * inside[to] / total;
            }
            sum += share < LOOKED_AT ? 0 : share * line.opportunities(kind.per(), node.below[from], rates.toMarker());
        }
        return kind.per() == Kind.Per.INCREASE || kind.per() == Kind.Per.DECREASE ? sum * worked(line, happened) : sum;
    }

    /** The expected share of the line's shaping that was there to be missed. */
    private static double worked(WrittenRound line, double[] happened) {
        double worked = 1;
        for (Kind kind : Kind.values()) {
            worked -= happened[kind.ordinal()] * line.shapingLost(kind);
        }
        return worked;
    }

    /** P(the line, not the marker, decided where the round ends), answers to checks left aside. */
    private double byTheLine() {
        double line = 0;
        for (int from = 0; from < outside.length; from++) {
            Landing landing = node.round.story().get().at(node.below[from]);
            for (int to = 0; to < inside.length; to++) {
                double share = outside[from] * node.moves[from][to] * inside[to] / total;
                if (share > LOOKED_AT) {
                    line += share * landing.chanceByTheLine(node.counts[to]) / landing.chance(node.counts[to]);
                }
            }
        }
        return line;
    }

    private OptionalInt expected() {
        if (node.round.line().isEmpty()) {
            return node.round.count();
        }
        double[] ones = new double[outside.length];
        Arrays.fill(ones, 1);
        return OptionalInt.of(node.round.line().get().workedOn(node.below[likeliest(outside, ones)]));
    }
}
