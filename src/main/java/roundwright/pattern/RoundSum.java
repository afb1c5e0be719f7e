package roundwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.ToLongFunction;
import roundwright.wording.Wording;

/**
 * A round's arithmetic in one sentence: "6 × (5 + 2) = 42 used of 42; 6 × (5 + 1) = 36 made; 6 fewer: one for each
 * decrease".
 */
final class RoundSum {
    private static final Wording WORDS = Wording.of("pattern");

    private RoundSum() {}

    static String of(List<Piece> pieces, OptionalInt available, OptionalInt stated) {
        long takes = Sums.takes(pieces);
        long makes = Sums.makes(pieces);
        List<String> parts = new ArrayList<>();
        if (takes > 0) {
            String used = equal(sum(pieces, Step::takes), takes);
            parts.add(
                    available.isPresent()
                            ? WORDS.say("sum.used-of", used, available.getAsInt())
                            : WORDS.say("sum.used", used));
        }
        String made = equal(sum(pieces, Step::makes), makes);
        boolean other = stated.isPresent() && stated.getAsInt() != makes;
        parts.add(other ? WORDS.say("sum.made-stated", made, stated.getAsInt()) : WORDS.say("sum.made", made));
        if (takes > 0 && takes != makes) {
            parts.add(difference(pieces, makes - takes));
        }
        return parts.stream()
                .reduce((left, right) -> WORDS.say("sum.join", left, right))
                .orElse("");
    }

    private static String difference(List<Piece> pieces, long difference) {
        boolean more = difference > 0;
        boolean oneEach = shapings(pieces, more) == Math.abs(difference);
        if (oneEach) {
            return more ? WORDS.say("sum.more", difference) : WORDS.say("sum.fewer", -difference);
        }
        return more ? WORDS.say("sum.more-plain", difference) : WORDS.say("sum.fewer-plain", -difference);
    }

    private static long shapings(List<Piece> pieces, boolean more) {
        long sum = 0;
        for (Piece piece : pieces) {
            if (piece instanceof Piece.Loop loop) {
                sum += Sums.times(shapings(loop.body(), more), loop.times());
            } else if (piece instanceof Piece.Run run) {
                boolean shapes = more ? run.step().increases() : run.step().decreases();
                sum += shapes ? run.times() : 0;
            }
        }
        return sum;
    }

    private static String equal(String sum, long value) {
        String result = Long.toString(value);
        return sum.equals(result) ? result : WORDS.say("sum.equal", sum, result);
    }

    private static String sum(List<Piece> pieces, ToLongFunction<Step> of) {
        List<String> terms = new ArrayList<>();
        for (Piece piece : pieces) {
            String term = piece instanceof Piece.Loop loop
                    ? product(loop.times(), sum(loop.body(), of))
                    : run((Piece.Run) piece, of);
            if (!term.equals("0")) {
                terms.add(term);
            }
        }
        return terms.isEmpty() ? "0" : String.join(" + ", terms);
    }

    private static String run(Piece.Run run, ToLongFunction<Step> of) {
        long one = of.applyAsLong(run.step());
        return one == 1 ? Long.toString(run.times()) : product(run.times(), Long.toString(one));
    }

    private static String product(long times, String one) {
        if (one.equals("0")) {
            return one;
        }
        if (times == 1) {
            return one;
        }
        return times + " × " + (one.contains(" ") ? "(" + one + ")" : one);
    }
}
