package roundwright.group.messages;

import java.util.Optional;
import java.util.OptionalInt;

/** How surely a way of saying a count means it, and how much a count that is far from the pattern's takes from that. */
final class Sureness {
    /** "r12 30": a round with its count. */
    static final double PLAIN = 0.97;
    /** "36 on round 6". */
    static final double BOUND = 0.95;
    /** "rounds 5 and 6: 30, 36". */
    static final double IN_PAIRS = 0.94;
    /** The count comes in a later sentence than its round. */
    static final double LATER = 0.85;
    /** "two short on r8". */
    static final double SHIFT = 0.85;
    /** "9) 42 10) 36": round numbers without a word. */
    static final double BARE_LABELS = 0.85;
    /** "24, 30, 36" after round 4. */
    static final double SEQUENCE = 0.7;
    /** "same here". */
    static final double SAME = 0.75;
    /** "all 42 until nine". */
    static final double UNTIL = 0.65;
    /** "round 7 came out right". */
    static final double RIGHT = 0.6;
    /** A bare number after somebody asked for a round. */
    static final double TOPIC = 0.65;
    /** Two numbers in one message that fit as a round and its count. */
    static final double PAIR = 0.6;
    /** One of two counts that contradict one another. */
    static final double EITHER = 0.45;

    static final double DOUBT = 0.85;

    private Sureness() {}

    /** 1 near the pattern's count, less the farther from it; what no mistake explains falls below the threshold of doubt. */
    static double plausible(Known known, Optional<String> part, int round, int count) {
        OptionalInt expected = known.expected(part, round);
        OptionalInt distance = known.distance(part, round, count);
        if (distance.isEmpty()) {
            return 0.85;
        }
        int off = distance.getAsInt();
        int due = expected.orElse(0);
        if (off <= Math.max(3, due * 0.08)) {
            return 1;
        }
        return off <= Math.max(8, due * 0.25) ? 0.9 : off <= Math.max(14, due * 0.5) ? 0.7 : 0.3;
    }

    static boolean possible(Known known, Optional<String> part, int round, int count) {
        return plausible(known, part, round, count) > 0.5;
    }
}
