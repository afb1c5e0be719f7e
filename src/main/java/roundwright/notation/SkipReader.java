package roundwright.notation;

import java.util.List;
import roundwright.notation.Node.Manner;
import roundwright.notation.Node.Target;
import roundwright.notation.Node.Work;

/** Reads stitches that are passed over: "skip next 2 sts", "miss 1", "leave 5 sts unworked". */
final class SkipReader {
    private final Reading line;
    private final Cursor cursor;

    SkipReader(Reading line) {
        this.line = line;
        this.cursor = line.cursor;
    }

    /** Whether the word at the cursor passes stitches over. */
    boolean begins() {
        return !leaves(cursor.peek()) || unworkedAhead();
    }

    /** "leave 5 sts unworked", "leaving the other 8 sts for the toe" pass stitches over; "leave a gap" does not. */
    private boolean leaves(Token token) {
        return Fold.of(line.text.charAt(token.start())) == 'l';
    }

    private boolean unworkedAhead() {
        int other = cursor.is(1, Meaning.THE) ? 2 : 1;
        boolean rest = cursor.is(other, Meaning.OTHER) || cursor.is(other, Meaning.REMAINING);
        if (rest && cursor.is(other + 1, Meaning.NUMBER) && cursor.is(other + 2, Meaning.ST)) {
            return true;
        }
        for (int ahead = 1; ahead < 7; ahead++) {
            if (cursor.is(ahead, Meaning.UNWORKED)) {
                return true;
            }
        }
        return false;
    }

    /** "skip", "skip next 2 sts", "miss 1". */
    void read(StepCore core) {
        cursor.next();
        core.manner = Manner.SKIP;
        core.makes = 0;
        core.name = line.lastName;
        cursor.skip(Meaning.THE, Meaning.OF);
        boolean first = cursor.accept(Meaning.FIRST);
        core.rest = cursor.is(Meaning.REMAINING);
        cursor.skip(Meaning.NEXT, Meaning.LAST, Meaning.OTHER, Meaning.REMAINING);
        core.rest &= !cursor.is(Meaning.NUMBER);
        core.skipped = cursor.is(Meaning.NUMBER) ? cursor.next().value() : 1;
        core.first = first;
        cursor.skip(Meaning.DASH);
        core.space = cursor.is(Meaning.SPACE)
                || cursor.is(Meaning.CHAINSPACE)
                || cursor.is(Meaning.CHAIN) && (cursor.is(2, Meaning.NUMBER) || cursor.is(1, Meaning.NUMBER));
        if (core.space && cursor.accept(Meaning.CHAIN)) {
            cursor.skip(Meaning.DASH, Meaning.NUMBER);
        }
        cursor.skip(
                Meaning.ST,
                Meaning.STITCH,
                Meaning.CHAIN,
                Meaning.SPACE,
                Meaning.CHAINSPACE,
                Meaning.INC,
                Meaning.DEC,
                Meaning.SPECIAL);
        cursor.accept(Meaning.UNWORKED);
    }

    Node node(int begin, int before, StepCore core) {
        line.stitches = true;
        int stitches = Math.max(core.skipped, before);
        boolean space = core.space || line.foundation;
        Work skip = new Work(
                cursor.since(begin),
                Manner.SKIP,
                core.name,
                space ? 0 : 1,
                0,
                core.rest ? Times.FULL : Times.of(stitches),
                Hold.BOTH,
                space ? Target.SPACE : Target.NEXT,
                "");
        Node nothing = new Node.Note(skip.span(), Feature.OTHER);
        if (core.first && !line.begun && line.startCounts) {
            return nothing;
        }
        return core.first && !line.begun && line.openStart
                ? new Node.Choice(skip.span(), line.startHabit, List.of(skip, nothing))
                : skip;
    }
}
