package roundwright.mistakes.chain;

import roundwright.mistakes.story.Kind;

/** How often each kind of mistake is thought to have happened, and how often it could have: what rates are learned from. */
public final class Ledger {
    private final double[] happenings = new double[Kind.values().length];
    private final double[] chances = new double[Kind.values().length];
    private double endsByTheLine;
    private double ends;

    void happened(Kind kind, double times) {
        happenings[kind.ordinal()] += times;
    }

    void couldHappen(Kind kind, double times) {
        chances[kind.ordinal()] += times;
    }

    void ended(double byTheLine) {
        endsByTheLine += byTheLine;
        ends++;
    }

    /** Adds all of another's entries. */
    public void add(Ledger other) {
        for (int kind = 0; kind < chances.length; kind++) {
            happenings[kind] += other.happenings[kind];
            chances[kind] += other.chances[kind];
        }
        endsByTheLine += other.endsByTheLine;
        ends += other.ends;
    }

    /** Expected number of mistakes of the kind. */
    public double happenings(Kind kind) {
        return happenings[kind.ordinal()];
    }

    /** Number of opportunities for a mistake of the kind: steps, increases, rounds, reports. */
    public double chances(Kind kind) {
        return chances[kind.ordinal()];
    }

    /** Expected number of rounds that the line, not the marker, ended. */
    public double endsByTheLine() {
        return endsByTheLine;
    }

    /** Number of rounds that ended one way or the other. */
    public double ends() {
        return ends;
    }
}
