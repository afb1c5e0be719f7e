package roundwright.notation;

import roundwright.notation.Node.Manner;
import roundwright.notation.Node.Target;
import roundwright.notation.Node.Work;
import roundwright.notation.RepeatWords.Often;

/** Reads words for a round without shaping, or with its shaping spread: "work even", "inc 6 times evenly", "for 6 rounds". */
final class EvenReader {
    private final Reading line;
    private final Cursor cursor;
    private final Items items;
    private final StrangeWords strangers;

    EvenReader(Reading line, Items items, StrangeWords strangers) {
        this.line = line;
        this.cursor = line.cursor;
        this.items = items;
        this.strangers = strangers;
    }

    /** "work even", "work even in dc". */
    void even() {
        Span span = cursor.next().span();
        if (!line.worked && cursor.is(Meaning.IN) && cursor.is(1, Meaning.STITCH)) {
            line.lastName = cursor.peek(1).name();
            line.names.add(line.lastName);
            cursor.at += 2;
        }
        even(span);
    }

    /** "sc evenly around". */
    void evenly() {
        Token token = cursor.next();
        boolean around = line.text
                .substring(token.start(), token.end())
                .toLowerCase(java.util.Locale.ROOT)
                .contains("round");
        boolean loses = cursor.is(Meaning.COMMA)
                && cursor.is(1, Meaning.UNKNOWN)
                && cursor.is(2, Meaning.NUMBER)
                && !cursor.is(3, Meaning.SHUT);
        if (loses) {
            line.doubt(cursor.peek(1).span());
        }
        if (items.lastPlain() && items.alone()) {
            if (around) {
                items.fillLast();
            }
        } else if (!items.evenly(line) && around && !items.empty() && !items.alone()) {
            items.repeat(new Often(Times.FULL, false, false, false, false), token.span());
        }
    }

    /** "work even": one plain stitch in each, all round. */
    void even(Span span) {
        if (items.lastPlain()) {
            items.fillLast();
            return;
        }
        if (!line.worked && !strangers.stepsAhead()) {
            line.stitches = true;
            line.worked = true;
            line.beyondSlips = true;
            items.add(new Work(span, Manner.PLAIN, line.lastName, 1, 1, Times.FULL, line.hold, Target.NEXT, ""));
        }
    }

    /** "for 6 rounds", "work 5 rounds straight". */
    boolean rounds() {
        if (!cursor.is(Meaning.NUMBER)
                || !cursor.is(1, Meaning.ROUND) && !(cursor.is(1, Meaning.MORE) && cursor.is(2, Meaning.ROUND))) {
            return false;
        }
        line.rounds = cursor.next().value();
        cursor.skip(Meaning.MORE, Meaning.ROUND);
        if (cursor.accept(Meaning.OF) && !line.worked && cursor.is(Meaning.STITCH)) {
            line.lastName = cursor.next().name();
            even(cursor.peek(-1).span());
        }
        return true;
    }
}
