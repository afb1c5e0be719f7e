package roundwright.mistakes.learning;

import java.util.EnumMap;
import java.util.Map;
import roundwright.mistakes.chain.Ledger;
import roundwright.mistakes.story.Kind;
import roundwright.mistakes.story.Rates;

/**
 * What was learned of the rates of a group or a student.
 *
 * @param rates the likeliest rates
 * @param beliefs how sure each is
 * @param seen the mistakes expected behind the reports, and the chances there were
 */
public record LearnedRates(Rates rates, Map<Kind, BetaBelief> beliefs, Ledger seen) {
    private static final double STEPS = 200;
    private static final double CHANCES = 20;

    public LearnedRates {
        beliefs = Map.copyOf(beliefs);
    }

    /** The rates that follow from what was seen, starting from others. */
    static LearnedRates from(Rates start, Ledger seen) {
        Map<Kind, BetaBelief> beliefs = new EnumMap<>(Kind.class);
        Rates rates = start;
        for (Kind kind : Kind.values()) {
            double weight = kind.per() == Kind.Per.STEP ? STEPS : CHANCES;
            BetaBelief belief =
                    BetaBelief.about(start.rate(kind), weight).after(seen.happenings(kind), seen.chances(kind));
            beliefs.put(kind, belief);
            rates = rates.with(kind, belief.mean());
        }
        double toMarker = BetaBelief.about(start.toMarker(), CHANCES)
                .after(seen.ends() - seen.endsByTheLine(), seen.ends())
                .mean();
        return new LearnedRates(rates.withToMarker(toMarker), beliefs, seen);
    }

    /** The largest change of a rate, as a share of it. */
    double changeFrom(Rates other) {
        double most = 0;
        for (Kind kind : Kind.values()) {
            double now = rates.rate(kind);
            most = Math.max(most, Math.abs(now - other.rate(kind)) / Math.max(now, 1e-9));
        }
        return most;
    }
}
