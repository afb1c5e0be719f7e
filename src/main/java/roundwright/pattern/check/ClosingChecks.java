package roundwright.pattern.check;

import java.util.List;
import java.util.regex.Pattern;
import roundwright.notation.Feature;
import roundwright.pattern.Instruction;
import roundwright.pattern.Line;
import roundwright.pattern.Part;
import roundwright.pattern.PartItem;
import roundwright.pattern.Round;

/** Whether a part that is stuffed or to be closed gets small enough for it. */
final class ClosingChecks {
    /** A tail draws a hole of so many stitches together; a wider one puckers or stays open. Source: makers close at six to twelve. */
    private static final int WIDEST_HOLE = 18;

    /** Words that say the opening is meant: pressed flat, sewn to something, worked on. */
    private static final Pattern OPEN_ON_PURPOSE = Pattern.compile(
            "(?i)\\b(flat|flatten\\w*|sew\\w*|seam\\w*|open|opening|attach\\w*|assembl\\w*|together|shut|whip\\w*|join\\w*|edges?|"
                    + "glue\\w*|pin|on(to)? the|continu\\w*|leave the|leaving|tail|repeat)\\b");

    private static final Pattern CLOSES = Pattern.compile(
            "(?i)\\b(clos(e|ed|ing) (the|it|up|off|tightly|this|last|remaining|hole|opening|gap)\\b|(pull|draw)\\w* (it |up )?(tight|closed|shut|together)\\b"
                    + "|\\band close\\W*$)");

    private static final Pattern SEWN = Pattern.compile("(?i)\\b(sew\\w*|seam|flat|whip\\w*|knot|loop)\\b");

    private final roundwright.pattern.Pattern pattern;
    private final PatternChecks checks;

    ClosingChecks(roundwright.pattern.Pattern pattern, PatternChecks checks) {
        this.pattern = pattern;
        this.checks = checks;
    }

    void check(Part part) {
        int end = Shape.end(part).orElse(0);
        List<PartItem> after = afterRounds(part);
        if (end <= WIDEST_HOLE || Shape.flat(part)) {
            return;
        }
        List<Line> told = after.stream().map(PartItem::line).toList();
        told.stream()
                .filter(ClosingChecks::closes)
                .findFirst()
                .ifPresentOrElse(line -> checks.warning(line, "hole-too-wide", end), () -> left(part, told, end));
    }

    /** A round that is joined with a slip stitch "to close" it closes no hole. */
    private static boolean closes(Line line) {
        boolean after = line.makes().isEmpty() || Shape.has(line, Feature.FASTEN_OFF);
        return after
                && CLOSES.matcher(line.text()).find()
                && !SEWN.matcher(line.text()).find();
    }

    /** Stuffed for good, fastened off, and still wide: said only where no word anywhere tells that it is sewn to something. */
    private void left(Part part, List<Line> after, int end) {
        boolean fastened = after.stream().anyMatch(line -> Shape.has(line, Feature.FASTEN_OFF));
        boolean stuffed = after.stream().anyMatch(line -> Shape.has(line, Feature.STUFF));
        boolean meant = after.stream()
                        .map(Line::text)
                        .anyMatch(text -> OPEN_ON_PURPOSE.matcher(text).find())
                || pattern.parts().stream()
                        .flatMap(other -> other.lines().stream())
                        .anyMatch(line -> Shape.has(line, Feature.SEW))
                || part != pattern.parts().get(pattern.parts().size() - 1);
        if (fastened && stuffed && !meant) {
            Line last = after.stream()
                    .filter(line -> Shape.has(line, Feature.FASTEN_OFF))
                    .findFirst()
                    .orElseThrow();
            checks.remark(last, "left-open", end);
        }
    }

    private static List<PartItem> afterRounds(Part part) {
        List<PartItem> items = part.items();
        int from = items.size();
        while (from > 0 && items.get(from - 1) instanceof Instruction) {
            from--;
        }
        boolean round = from > 0 && items.get(from - 1) instanceof Round;
        return items.subList(round ? from - 1 : from, items.size());
    }
}
