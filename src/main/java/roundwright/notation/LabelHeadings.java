package roundwright.notation;

/** Reads over words that head a line without a number of their own, and over those between its label and its steps. */
final class LabelHeadings {
    /** A heading has no more words. */
    private static final int LONGEST = 7;

    private final Cursor cursor;

    LabelHeadings(Cursor cursor) {
        this.cursor = cursor;
    }

    /** Over the marks after the label, and over words between it and a colon ("Rnd 4 with red:"). */
    void afterLabel() {
        overNameInBrackets();
        int begin = cursor.at;
        boolean strange = false;
        for (int ahead = 0; ahead < LONGEST; ahead++) {
            Token token = cursor.peek(ahead);
            strange |= token.is(Meaning.UNKNOWN);
            if (strange && token.meaning().makes()) {
                break;
            }
            if (token.is(Meaning.COLON)) {
                cursor.at = begin + ahead;
                break;
            }
            boolean named = cursor.is(ahead + 1, Meaning.UNKNOWN) && cursor.is(ahead + 2, Meaning.COLON);
            if (token.meaning().makes() && !named
                    || token.is(Meaning.FINISH)
                    || token.is(Meaning.MAGIC)
                    || token.is(Meaning.REPEAT)
                    || token.is(Meaning.AS)
                    || token.is(Meaning.EQUALS)
                    || token.is(Meaning.NUMBER)
                    || token.is(Meaning.IN) && !inColour(ahead)
                    || token.is(Meaning.HOLD)
                    || token.is(Meaning.OPEN)
                    || token.is(Meaning.STAR)) {
                break;
            }
        }
        cursor.skip(Meaning.COLON, Meaning.STOP, Meaning.DASH, Meaning.SHUT, Meaning.COMMA, Meaning.SEMICOLON);
        while (cursor.peek().meaning().parts()
                && "?\u00bf\u2026".indexOf(cursor.peek().value()) < 0) {
            cursor.next();
        }
        cursor.accept(Meaning.EQUALS);
        overNaming();
        boolean words = cursor.is(1, Meaning.UNKNOWN) && cursor.is(2, Meaning.COLON);
        if (words && (cursor.is(Meaning.UNKNOWN) || cursor.is(Meaning.STITCH))) {
            cursor.at += 3;
        }
    }

    /** Over "Increase:" before the steps of such a round, and over "is". */
    private void overNaming() {
        int colon = 1;
        while (cursor.is(colon, Meaning.FILLER) || cursor.is(colon, Meaning.ROUND)) {
            colon++;
        }
        boolean shaping = cursor.is(Meaning.INC) || cursor.is(Meaning.DEC);
        cursor.at += shaping && cursor.is(colon, Meaning.COLON) ? colon + 1 : 0;
        boolean is = cursor.is(Meaning.UNKNOWN) && cursor.peek().value() == Lexicon.IS;
        cursor.at += is && workAfter() ? 1 : 0;
    }

    /** "Round 4 is 2 dc in each", "Round 4 is the hard one": whether steps come after the verb. */
    private boolean workAfter() {
        int place = 1;
        while (cursor.is(place, Meaning.WORK) || cursor.is(place, Meaning.FILLER) || cursor.is(place, Meaning.THE)) {
            place++;
        }
        Meaning first = cursor.peek(place).meaning();
        return first.makes()
                || first == Meaning.OPEN
                || first == Meaning.STAR
                || first == Meaning.PLAIN
                || first == Meaning.EVEN
                || first == Meaning.NUMBER && cursor.peek(place + 1).meaning().makes();
    }

    /** "Rnd 4 in red:", "Rnd 4 in B:". */
    private boolean inColour(int ahead) {
        boolean article = cursor.is(ahead + 1, Meaning.THE) && !cursor.is(ahead + 2, Meaning.COLON);
        int name = article ? ahead + 2 : ahead + 1;
        return cursor.is(name + 1, Meaning.COLON)
                || cursor.is(name, Meaning.COLOUR) && cursor.is(name + 2, Meaning.COLON);
    }

    /** "Rnd 4 (red):". */
    private void overNameInBrackets() {
        int ahead = 1;
        while (cursor.is(Meaning.OPEN) && ahead < LONGEST && !cursor.is(ahead, Meaning.SHUT)) {
            boolean named = cursor.is(ahead + 1, Meaning.ROUND) && cursor.is(ahead + 2, Meaning.SHUT);
            if (cursor.is(ahead, Meaning.NUMBER) || cursor.peek(ahead).meaning().makes() && !named) {
                return;
            }
            ahead++;
        }
        if (cursor.is(Meaning.OPEN) && cursor.is(ahead, Meaning.SHUT) && cursor.is(ahead + 1, Meaning.COLON)) {
            cursor.at += ahead + 1;
        }
    }

    /** "Next round:", "Foundation:", "Last round -", "Dec rnd:", "On the next round,". */
    void alone() {
        int begin = cursor.at;
        cursor.skip(Meaning.MARK, Meaning.DASH, Meaning.IN, Meaning.FOR, Meaning.THE);
        boolean told = false;
        for (int words = 0; words < 4 && !cursor.peek().meaning().parts() && !cursor.done(); words++) {
            if (cursor.is(Meaning.NUMBER) || cursor.is(Meaning.OPEN)) {
                break;
            }
            Meaning word = cursor.next().meaning();
            told |= heads(word) || cursor.is(Meaning.COLON) && partOfPiece(word);
        }
        if (told && cursor.is(-1, Meaning.ROUND) && cursor.is(Meaning.NUMBER) && cursor.is(1, Meaning.COLON)) {
            cursor.next();
        }
        if (told && cursor.peek().meaning().parts() && !cursor.is(Meaning.SLASH)) {
            afterLabel();
            return;
        }
        cursor.at = begin;
    }

    /** "Base:", "Sides:", "Top:": words of places, which name a part of the piece before a colon. */
    private static boolean partOfPiece(Meaning meaning) {
        return switch (meaning) {
            case BASE, TOP, PETAL, SPACE, OTHERSIDE, RING -> true;
            default -> false;
        };
    }

    private static boolean heads(Meaning meaning) {
        return switch (meaning) {
            case ROUND, NEXTROUND, FOUNDATION, PREVIOUS, START -> true;
            default -> false;
        };
    }
}
