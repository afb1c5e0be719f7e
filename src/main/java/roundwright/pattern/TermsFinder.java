package roundwright.pattern;

import java.util.List;
import java.util.Set;
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
        int us = 0;
        int uk = 0;
        int ambiguous = 0;
        for (List<WrittenLine> part : parts) {
            for (WrittenLine line : part) {
                us += count(line.names(), Terms.US);
                uk += count(line.names(), Terms.UK);
                ambiguous +=
                        line.names().contains(StitchName.DC) || line.names().contains(StitchName.TR) ? 1 : 0;
            }
        }
        if (us != uk) {
            return us > uk ? Terms.US : Terms.UK;
        }
        return ambiguous > 0 ? Terms.UK : Terms.US;
    }

    private static int count(Set<StitchName> names, Terms terms) {
        return (int) names.stream()
                .filter(name -> name.only().filter(only -> only == terms).isPresent())
                .count();
    }
}
