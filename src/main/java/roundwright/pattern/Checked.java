package roundwright.pattern;

import java.util.List;
import roundwright.notation.WrittenLine;

/** What came of working a line's rounds one after another. */
record Checked(List<WrittenLine> lines, List<Interpretation> rounds, boolean fits, Below start, Below below) {
    /** The last round; null where some round could not be worked out. */
    Interpretation last() {
        return rounds.isEmpty() ? null : rounds.get(rounds.size() - 1);
    }
}
