package roundwright.notation;

import java.util.OptionalInt;
import roundwright.notation.Node.Choice;
import roundwright.notation.Node.Manner;
import roundwright.notation.Node.Note;
import roundwright.notation.Node.Target;
import roundwright.notation.Node.Work;

/** Reads whether a starting chain counts, where the line says so itself. */
final class CountingChain {
    private static final int COUNTING = "counting".length();

    private final Reading line;
    private final Cursor cursor;
    private final Items items;

    CountingChain(Reading line, Items items) {
        this.line = line;
        this.cursor = line.cursor;
        this.items = items;
    }

    /** "(counts as first tr)", "does not count as a stitch", after a starting chain. Reads nothing that is not one. */
    boolean read() {
        int begin = cursor.at;
        boolean not = false;
        boolean counts = false;
        int ahead = 0;
        for (;
                ahead < 12
                        && !cursor.is(ahead, Meaning.SHUT)
                        && !cursor.peek(ahead).meaning().ends();
                ahead++) {
            not |= cursor.is(ahead, Meaning.NOT);
            counts |= cursor.is(ahead, Meaning.COUNTSAS) && !(bare(cursor.peek(ahead)) && !chain(ahead + 1));
        }
        if (counts) {
            settle(not);
            chainsAfter(ahead);
        }
        if (cursor.is(Meaning.COUNTSAS)) {
            while (!cursor.done()
                    && !cursor.peek().meaning().parts()
                    && !cursor.is(Meaning.SHUT)
                    && !cursor.is(Meaning.OPEN)) {
                cursor.next();
            }
            items.addApart(new Note(cursor.since(begin), Feature.OTHER));
            return true;
        }
        return false;
    }

    /** "counting", which needs the name of what is counted after it. */
    private static boolean bare(Token counting) {
        return counting.end() - counting.start() == COUNTING;
    }

    /** Whether the starting chain is named there: "the ch-3", "starting ch"; not "chains", "each ch". */
    private boolean chain(int ahead) {
        int place = cursor.is(ahead, Meaning.THE) ? ahead + 1 : ahead;
        int figure = cursor.is(place + 1, Meaning.DASH) ? place + 2 : place + 1;
        boolean numbered = cursor.is(place, Meaning.CHAIN) && cursor.is(figure, Meaning.NUMBER);
        return cursor.is(place, Meaning.TCHAIN) || numbered && !cursor.is(figure + 1, Meaning.SPACE);
    }

    /** "ch 3 (first dc)", "ch 3 (= 1 dc)", straight after the chain, which is then that stitch. */
    boolean firstStitch() {
        int stitch = cursor.is(1, Meaning.EQUALS) || cursor.is(1, Meaning.AS) ? 2 : 1;
        stitch += cursor.is(stitch, Meaning.THE) ? 1 : 0;
        Token first = cursor.peek(stitch);
        boolean one = (first.is(Meaning.NUMBER) && stitch > 1 || first.is(Meaning.ORDINAL)) && first.value() == 1
                || first.is(Meaning.FIRST);
        boolean named = cursor.is(stitch + 1, Meaning.STITCH) || cursor.is(stitch + 1, Meaning.ST);
        if (!line.openStart || line.begun || !one || !named || !cursor.is(stitch + 2, Meaning.SHUT)) {
            return false;
        }
        int begin = cursor.at;
        settle(false);
        cursor.at += stitch + 3;
        items.addApart(new Note(cursor.since(begin), Feature.OTHER));
        return true;
    }

    /** "(counts as dc, ch 1)": of the chains some are the first space. */
    private void chainsAfter(int words) {
        for (int ahead = 1; ahead <= words + 2 && !cursor.is(ahead, Meaning.SHUT); ahead++) {
            boolean before = cursor.is(ahead - 1, Meaning.COMMA) || cursor.is(ahead - 1, Meaning.AND);
            int figure = cursor.is(ahead + 1, Meaning.DASH) ? ahead + 2 : ahead + 1;
            if (before && cursor.is(ahead, Meaning.CHAIN) && cursor.is(figure, Meaning.NUMBER)) {
                int number = cursor.peek(figure).value();
                Span span = cursor.peek(ahead).span();
                items.addApart(new Work(
                        span, Manner.CHAIN, StitchName.CHAIN, 0, 1, Times.of(number), Hold.BOTH, Target.NEXT, ""));
                return;
            }
        }
    }

    private void settle(boolean not) {
        for (int i = 0; i < items.nodes.size(); i++) {
            if (!(items.nodes.get(i) instanceof Choice choice)) {
                continue;
            }
            boolean foundation = choice.habit() == Habit.FOUNDATION_COUNTS;
            if (foundation || choice.habit() == line.startHabit) {
                items.nodes.set(i, choice.options().get(not ? 0 : 1));
            }
            if (!foundation && choice.habit() == line.startHabit) {
                line.startSaid = OptionalInt.of(not ? 0 : 1);
                line.startCounts = !not;
                line.openStart = false;
            }
        }
    }
}
