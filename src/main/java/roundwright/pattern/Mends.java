package roundwright.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BinaryOperator;
import java.util.regex.Pattern;
import roundwright.notation.Alteration;
import roundwright.notation.LineReader;
import roundwright.notation.Vocabulary;
import roundwright.notation.WrittenLine;

/**
 * The smallest changes that make a line add up: each is written into the line, the line is read again, and only what then
 * uses the round below and makes its stated count is kept.
 */
final class Mends {
    private static final int MOST = 3;

    /** Characters of the longest line that is mended: the work grows with its square, and people seldom write half of this. */
    private static final int LONGEST = 600;

    /** Rounds that are looked at after a mended one; a stated count mostly ends the look much sooner. */
    private static final int FARTHEST = 60;

    /** A single stitch written with its number: "1 dc". */
    private static final Pattern ONE =
            Pattern.compile("(?i)(^|[^0-9a-z]|[ (,*])1 ?(sc|dc|hdc|htr|tr|single|double|half|treble)\\b");

    private final Interpreter interpreter;
    private final Vocabulary vocabulary;

    Mends(Interpreter interpreter, Vocabulary vocabulary) {
        this.interpreter = interpreter;
        this.vocabulary = vocabulary;
    }

    /**
     * The whole line as it might have been meant, the likeliest first.
     *
     * @param below what the round below offers
     * @param options how the writer's habits were read in the line as it stands; a mend may not rest on others, but on those
     *     that nothing speaks against
     * @param rest the lines after it in its part: mends that they can go on from come first
     */
    List<String> of(WrittenLine line, Below below, int[] options, List<WrittenLine> rest) {
        if (line.text().length() > LONGEST) {
            return List.of();
        }
        Map<String, Mend> mends = new LinkedHashMap<>();
        Map<Long, Integer> broken = new HashMap<>();
        boolean writesOne = ONE.matcher(line.text()).find()
                || rest.stream()
                        .limit(FARTHEST)
                        .anyMatch(other -> other.text().length() <= LONGEST
                                && ONE.matcher(other.text()).find());
        for (Alteration alteration : Alteration.of(line, vocabulary, writesOne)) {
            String text = alteration.text();
            WrittenLine changed = LineReader.read(text, vocabulary);
            Interpretation way = changed.doubts().isEmpty() ? fitting(changed, below, options) : null;
            if (way != null) {
                int breaks = broken.computeIfAbsent(way.makes(), makes -> breaks(makes, rest));
                mends.merge(
                        text,
                        new Mend(text, breaks, alteration.cost()),
                        BinaryOperator.minBy(Comparator.naturalOrder()));
            }
        }
        int fewest = mends.values().stream().mapToInt(Mend::breaks).min().orElse(0);
        return mends.values().stream()
                .filter(mend -> mend.breaks() == fewest)
                .sorted()
                .limit(MOST)
                .map(Mend::text)
                .toList();
    }

    /**
     * A line that adds up.
     *
     * @param breaks later rounds that do not go on from it
     * @param cost how unlikely the slip is
     */
    private record Mend(String text, int breaks, int cost) implements Comparable<Mend> {
        @Override
        public int compareTo(Mend other) {
            return breaks == other.breaks ? Integer.compare(cost, other.cost) : Integer.compare(breaks, other.breaks);
        }
    }

    private Interpretation fitting(WrittenLine changed, Below below, int[] options) {
        List<Interpretation> ways = interpreter.ways(changed, changed.counts(), below);
        for (Interpretation way : new ArrayList<>(ways)) {
            boolean same = way.cost() == 0 || java.util.Arrays.equals(way.options(), options);
            boolean whole = way.stated() >= 0 || line(changed);
            if (same && whole && way.fits()) {
                return way;
            }
        }
        return null;
    }

    private static boolean line(WrittenLine changed) {
        return changed.counts().isEmpty();
    }

    /**
     * How many of the rounds that hang on a round of so many stitches do not add up. The look ends at a stated count, on which
     * all later rounds hang instead, and where rounds are taken over from others.
     */
    private int breaks(long makes, List<WrittenLine> rest) {
        int broken = 0;
        long stitches = makes;
        for (WrittenLine next : rest.subList(0, Math.min(FARTHEST, rest.size()))) {
            if (!next.stitches() && next.reference().isEmpty()) {
                continue;
            }
            List<Interpretation> ways =
                    next.reference().isPresent() || !next.doubts().isEmpty()
                            ? List.of()
                            : interpreter.ways(next, next.counts(), new Below(stitches, -1, -1));
            if (ways.isEmpty()) {
                return broken;
            }
            broken += ways.get(0).fits() ? 0 : 1;
            if (ways.get(0).stated() >= 0) {
                return broken;
            }
            stitches = ways.get(0).makes();
        }
        return broken;
    }
}
