package roundwright.notation;

import java.util.Optional;
import roundwright.notation.WrittenLine.Reference;

/** Reads a line that takes over another's: "Repeat round 4", "as rnd 12", "Rep rnds 3 and 4", "Repeat last round 3 times". */
final class ReferenceReader {
    private final Cursor cursor;
    private final GapReader gaps;

    ReferenceReader(Reading line) {
        this.cursor = line.cursor;
        this.gaps = line.gaps;
    }

    Optional<Reference> read() {
        Optional<Reference> other = rounds();
        int begin = cursor.at;
        Optional<GapChange> gap = gaps == null ? Optional.empty() : gaps.read(other.isPresent());
        if (gap.isEmpty()) {
            return other;
        }
        Reference taken = other.orElse(new Reference(0, 0, 1, cursor.since(begin), gap));
        return Optional.of(new Reference(taken.first(), taken.last(), taken.times(), cursor.since(begin), gap));
    }

    private Optional<Reference> rounds() {
        int begin = cursor.at;
        cursor.skip(Meaning.WORK, Meaning.CONTINUE, Meaning.THE);
        boolean repeat = cursor.is(Meaning.REPEAT) || cursor.is(Meaning.AS) || cursor.is(Meaning.SAME);
        if (!repeat) {
            cursor.at = begin;
            return Optional.empty();
        }
        cursor.skip(Meaning.REPEAT, Meaning.AS, Meaning.SAME, Meaning.THE, Meaning.IN, Meaning.FROM);
        if (cursor.is(-1, Meaning.SAME)) {
            cursor.skip(Meaning.FILLER);
        }
        boolean same = cursor.is(-1, Meaning.SAME) || cursor.is(-2, Meaning.SAME) || cursor.is(-1, Meaning.AS);
        if (same && alone()) {
            return Optional.of(new Reference(0, 0, 1, cursor.since(begin), Optional.empty()));
        }
        if (same && cursor.is(Meaning.NUMBER) && endsAfter(1)) {
            int number = cursor.next().value();
            return Optional.of(new Reference(number, number, 1, cursor.since(begin), Optional.empty()));
        }
        Optional<Reference> reference = rounds(begin);
        if (cursor.is(Meaning.EVEN)) {
            return Optional.empty();
        }
        if (reference.isEmpty()) {
            cursor.at = begin;
        }
        return reference;
    }

    private Optional<Reference> rounds(int begin) {
        int first = 0;
        if (cursor.accept(Meaning.ROUND)) {
            if (!cursor.is(Meaning.NUMBER)) {
                return Optional.empty();
            }
            first = cursor.next().value();
        } else if (cursor.is(Meaning.ORDINAL) && cursor.is(1, Meaning.ROUND)) {
            first = cursor.next().value();
            cursor.next();
        } else if (cursor.is(Meaning.LAST) && cursor.is(1, Meaning.ROUND)) {
            cursor.at += 2;
        } else if (!cursor.accept(Meaning.PREVIOUS) && !cursor.accept(Meaning.NEXTROUND)) {
            return Optional.empty();
        }
        int last = upTo(first);
        return Optional.of(new Reference(first, last, times(), cursor.since(begin), Optional.empty()));
    }

    private int upTo(int first) {
        int last = first;
        while (first > 0
                && joins()
                && !countAfter()
                && (cursor.is(1, Meaning.NUMBER) || cursor.is(1, Meaning.ROUND) && cursor.is(2, Meaning.NUMBER))) {
            cursor.next();
            cursor.accept(Meaning.ROUND);
            if (cursor.is(1, Meaning.TIMES) || cursor.is(1, Meaning.MORE)) {
                break;
            }
            last = Math.max(last, cursor.next().value());
        }
        return last;
    }

    /** "Repeat round 8 – 48 sts": a count, not a range. */
    private boolean countAfter() {
        Meaning after = cursor.peek(2).meaning();
        boolean counted = after == Meaning.ST
                || after == Meaning.STITCH
                || after == Meaning.FINISH && !cursor.is(Meaning.AND) && !cursor.is(Meaning.TO);
        return counted && cursor.is(1, Meaning.NUMBER) && cursor.peek().spaced();
    }

    private boolean endsAfter(int words) {
        return cursor.is(words, Meaning.FINISH)
                || cursor.is(words, Meaning.OPEN)
                || cursor.is(words, Meaning.EQUALS)
                || cursor.is(words, Meaning.STOP);
    }

    /** "Same. (28)". */
    private boolean alone() {
        boolean count = cursor.is(Meaning.COMMA) && cursor.is(1, Meaning.NUMBER);
        return count
                || cursor.done()
                || cursor.is(Meaning.STOP)
                || cursor.is(Meaning.OPEN)
                || cursor.is(Meaning.EQUALS)
                || cursor.is(Meaning.YOUHAVE)
                || cursor.is(Meaning.TOTAL);
    }

    private boolean joins() {
        return cursor.is(Meaning.DASH)
                || cursor.is(Meaning.TO)
                || cursor.is(Meaning.AND)
                || cursor.is(Meaning.COMMA)
                || cursor.is(Meaning.SLASH)
                || cursor.is(Meaning.IN);
    }

    private int times() {
        int before = cursor.at;
        cursor.skip(Meaning.COMMA, Meaning.FOUNDATION);
        if (cursor.is(Meaning.COUNTER)) {
            return cursor.next().value();
        }
        if (cursor.is(Meaning.TIMES) && cursor.is(1, Meaning.NUMBER)) {
            cursor.next();
        }
        boolean counted = cursor.is(Meaning.NUMBER)
                && (cursor.is(1, Meaning.TIMES)
                        || cursor.is(1, Meaning.MORE)
                        || cursor.is(1, Meaning.ROUND)
                        || cursor.peek(-1).is(Meaning.TIMES));
        if (!counted) {
            cursor.at = before;
            return 1;
        }
        int times = cursor.next().value();
        cursor.skip(Meaning.TIMES, Meaning.MORE, Meaning.ROUND);
        return Math.max(1, times);
    }
}
