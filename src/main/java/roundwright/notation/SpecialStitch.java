package roundwright.notation;

import java.util.Locale;
import roundwright.notation.Node.Manner;

/** Reads a stitch that has a name of its own: a cluster, a shell, a V-stitch, a picot, or one that the pattern defines. */
final class SpecialStitch {
    private final Reading line;
    private final Cursor cursor;

    SpecialStitch(Reading line) {
        this.line = line;
        this.cursor = line.cursor;
    }

    void read(StepCore core) {
        Token token = cursor.next();
        core.manner = Manner.GROUP;
        core.name = token.name();
        core.own = core.name == StitchName.OTHER ? singular(line.text.substring(token.start(), token.end())) : "";
        core.makes = switch (token.name()) {
            case SHELL -> 5;
            case VSTITCH -> 2;
            case PICOT -> 0;
            default -> 1;
        };
        core.takes = token.name() == StitchName.PICOT ? 0 : 1;
        told(core);
    }

    private static String singular(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return lower.endsWith(" sts") ? lower.substring(0, lower.length() - 1) : lower;
    }

    /** "V-st (dc, ch 1, dc) in next st", "shell (3 dc) in each": over a bracket that says of what stitches it is made. */
    private void told(StepCore core) {
        int stitches = cursor.is(Meaning.OPEN) ? stitchesInBracket() : 0;
        if (stitches == 0) {
            return;
        }
        cursor.at = shut() + 1;
        boolean group = core.name == StitchName.SHELL || core.name == StitchName.VSTITCH;
        core.makes = group ? stitches : core.makes;
    }

    /** The place of the mark that closes the bracket at the cursor; the cursor's own where none does. */
    private int shut() {
        int ahead = 1;
        while (!cursor.is(ahead, Meaning.SHUT)) {
            if (cursor.is(ahead, Meaning.OPEN) || cursor.is(ahead, Meaning.FINISH)) {
                return cursor.at;
            }
            ahead++;
        }
        return cursor.at + ahead;
    }

    /** The stitches that a bracket lists, and nothing else but chains and where they go; 0 where it is no such list. */
    private int stitchesInBracket() {
        int end = shut() - cursor.at;
        int stitches = 0;
        for (int ahead = 1; ahead < end; ahead++) {
            boolean number = cursor.is(ahead - 1, Meaning.NUMBER);
            switch (cursor.peek(ahead).meaning()) {
                case STITCH -> stitches += number ? cursor.peek(ahead - 1).value() : 1;
                case NUMBER, CHAIN, COMMA, AND, DASH, IN, SAME, ST, WORK, TOG -> {}
                default -> {
                    return 0;
                }
            }
        }
        boolean step = cursor.peek(end + 1).meaning() != Meaning.TIMES;
        return step ? stitches : 0;
    }
}
