package roundwright.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

    /** What it costs a change that the next line does not go on from. */
    private static final int AGAINST_NEXT = 40;

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
     * @param options how the writer's habits were read in the line as it stands; a mend may not rest on other habits
     * @param next the line after it, or null: a mend that it can go on from comes first
     */
    List<String> of(WrittenLine line, Below below, int[] options, WrittenLine next) {
        if (line.text().length() > LONGEST) {
            return List.of();
        }
        Map<String, Integer> mends = new LinkedHashMap<>();
        for (Alteration alteration : Alteration.of(line, vocabulary)) {
            String text = alteration.text();
            WrittenLine changed = LineReader.read(text, vocabulary);
            Interpretation way = changed.doubts().isEmpty() ? fitting(changed, below, options) : null;
            if (way != null) {
                int cost = alteration.cost() + (goesOn(next, way) ? 0 : AGAINST_NEXT);
                mends.merge(text, cost, Math::min);
            }
        }
        return mends.entrySet().stream()
                .sorted(Comparator.comparingInt(Map.Entry::getValue))
                .limit(MOST)
                .map(Map.Entry::getKey)
                .toList();
    }

    private Interpretation fitting(WrittenLine changed, Below below, int[] options) {
        List<Interpretation> ways = interpreter.ways(changed, changed.counts(), below);
        for (Interpretation way : new ArrayList<>(ways)) {
            boolean same = java.util.Arrays.equals(way.options(), options);
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

    private boolean goesOn(WrittenLine next, Interpretation way) {
        if (next == null || next.reference().isPresent()) {
            return true;
        }
        List<Interpretation> ways = interpreter.ways(next, next.counts(), new Below(way.makes(), -1, -1));
        return ways.isEmpty() || ways.get(0).fits();
    }
}
