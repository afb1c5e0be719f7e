package roundwright.notation;

import java.util.Optional;
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

    /** "inc 6 times, with 2 dc between": the stitches between increases, told after them. */
    boolean between() {
        Node shaping = items.last();
        if (line.gaps == null || shaping == null || shaping instanceof Node.Note) {
            return false;
        }
        Optional<GapChange> gap = line.gaps.behind();
        Optional<Node> both = gap.flatMap(change -> change.before(shaping));
        both.ifPresent(node -> items.nodes.set(items.nodes.size() - 1, node));
        return both.isPresent();
    }

    /** "decrease evenly to 12 sts": to how many, and so how often. */
    boolean spread() {
        int begin = cursor.at;
        boolean alone = items.alone()
                && items.last() instanceof Work work
                && work.takes() != work.makes()
                && work.takes() > 0
                && work.makes() > 0
                && work.times().once();
        if (!alone) {
            return false;
        }
        cursor.skip(Meaning.EVENLY, Meaning.AROUND, Meaning.COMMA, Meaning.AND);
        if (!cursor.accept(Meaning.TO)) {
            cursor.at = begin;
            return false;
        }
        cursor.skip(Meaning.YOUHAVE, Meaning.THE, Meaning.WORK);
        int number = cursor.is(Meaning.NUMBER) ? cursor.next().value() : 0;
        cursor.skip(Meaning.ST, Meaning.STITCH, Meaning.EVENLY, Meaning.AROUND, Meaning.REMAINING);
        if (number == 0 || !cursor.clauseEnds()) {
            cursor.at = begin;
            return false;
        }
        Work shaping = (Work) items.last();
        items.nodes.set(items.nodes.size() - 1, new Node.Spread(cursor.since(begin), shaping, number));
        return true;
    }

    /** "plain", "plain rounds": one plain stitch in each where nothing else is worked. */
    void plain() {
        Span span = cursor.next().span();
        cursor.skip(Meaning.ROUND, Meaning.AROUND);
        if (!cursor.is(Meaning.STITCH)) {
            even(span);
        }
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
        } else if (items.evenly()) {
            cursor.skip(Meaning.AROUND, Meaning.ACROSS, Meaning.TOEND);
        } else if (around && !items.empty() && !items.alone()) {
            items.repeat(new Often(Times.FULL, false, false, false, false), token.span());
        }
    }

    /** "work even": one plain stitch in each, all round. */
    void even(Span span) {
        if (items.lastPlain()) {
            items.fillLast();
            return;
        }
        if (!line.worked && (!strangers.stepsAhead() || new CountEnds(cursor).closes())) {
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
        int before = cursor.at;
        cursor.skip(Meaning.OF, Meaning.FILLER, Meaning.WORK, Meaning.IN, Meaning.PLAIN);
        if (line.worked && cursor.is(-1, Meaning.OF) && cursor.is(Meaning.STITCH)) {
            cursor.next();
            return true;
        }
        boolean plain = !line.worked && cursor.is(Meaning.STITCH) && ends(1);
        if (plain) {
            line.lastName = cursor.next().name();
            line.names.add(line.lastName);
            even(cursor.peek(-1).span());
        } else {
            cursor.at = before;
        }
        return true;
    }

    private boolean ends(int ahead) {
        return switch (cursor.peek(ahead).meaning()) {
            case FINISH, OPEN, EQUALS, YOUHAVE, TOTAL, STOP, COMMA, DASH, COLON -> !stepAfter(ahead);
            default -> false;
        };
    }

    private boolean stepAfter(int ahead) {
        for (int place = ahead; !cursor.is(place, Meaning.FINISH); place++) {
            Meaning meaning = cursor.peek(place).meaning();
            if (meaning == Meaning.INC
                    || meaning == Meaning.DEC
                    || meaning == Meaning.INVDEC
                    || meaning == Meaning.REPEAT) {
                return true;
            }
        }
        return false;
    }
}
