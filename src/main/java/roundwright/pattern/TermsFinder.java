package roundwright.pattern;

import java.util.List;
import roundwright.notation.StitchName;
import roundwright.notation.Terms;
import roundwright.notation.WrittenLine;

/** Finds out which terms a pattern is written in from the stitches it names. */
final class TermsFinder {
    private TermsFinder() {}

    /**
     * US where names occur that only US writers use, UK where only UK ones; with neither, a piece that is worked wholly
     * in "dc" is UK, for few work whole pieces in rounds of tall stitches.
     */
    static Terms find(List<List<WrittenLine>> parts) {
        int towardsUs = 0;
        boolean ambiguous = false;
        for (List<WrittenLine> part : parts) {
            for (WrittenLine line : part) {
                towardsUs += line.towardsUs();
                ambiguous |=
                        line.names().contains(StitchName.DC) || line.names().contains(StitchName.TR);
            }
        }
        if (towardsUs != 0) {
            return towardsUs > 0 ? Terms.US : Terms.UK;
        }
        return ambiguous ? Terms.UK : Terms.US;
    }
}
