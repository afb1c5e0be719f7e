package roundwright.notation;

/** Tells the names of yarns among the steps: a colour, or a capital letter that stands for one ("A 2, B 2", "12 dc in B"). */
final class Yarns {
    private final String text;
    private final Cursor cursor;

    Yarns(String text, Cursor cursor) {
        this.text = text;
        this.cursor = cursor;
    }

    /** Whether the token is a capital letter by itself, as yarns are named. */
    boolean letter(Token token) {
        boolean word = token.is(Meaning.THE) || token.is(Meaning.UNKNOWN) || token.is(Meaning.HOOK);
        boolean alone = word && token.end() - token.start() == 1;
        return alone && text.charAt(token.start()) >= 'A' && text.charAt(token.start()) <= 'H';
    }

    /** Words at the cursor that only say which yarn a step is worked with: "(B) 6 dc", "B: 6 dc"; 0 where there are none. */
    int mark() {
        int letter = cursor.is(Meaning.OPEN) ? 1 : 0;
        int end = letter + 1;
        return capital(cursor.peek(letter))
                        && cursor.is(end, letter == 1 ? Meaning.SHUT : Meaning.COLON)
                        && step(end + 1)
                ? end + 1
                : 0;
    }

    /** Whether the token is a capital letter that means no step. */
    boolean capital(Token token) {
        return token.end() - token.start() == 1
                && Character.isUpperCase(text.charAt(token.start()))
                && !token.meaning().makes()
                && !token.is(Meaning.TIMES);
    }

    private boolean step(int ahead) {
        boolean number = cursor.is(ahead, Meaning.NUMBER);
        return cursor.peek(number ? ahead + 1 : ahead).meaning().makes();
    }

    private boolean named(int ahead) {
        return cursor.is(ahead, Meaning.COLOUR) || letter(cursor.peek(ahead));
    }

    /** Whether "in A", "in the red" begins at the cursor: a colour, and no place. */
    boolean in() {
        boolean the = cursor.is(1, Meaning.THE) && cursor.is(2, Meaning.COLOUR);
        return cursor.is(1, Meaning.COLOUR) || the || letter(cursor.peek(1)) && ends(2);
    }

    /** Whether "A 2" or "2 A" stands so many tokens on as an item of a list: so many stitches in that colour. */
    boolean run(int at) {
        boolean first = named(at) && cursor.is(at + 1, Meaning.NUMBER);
        boolean second = cursor.is(at, Meaning.NUMBER) && named(at + 1);
        if (!first && !second) {
            return false;
        }
        boolean more = cursor.is(at + 2, Meaning.COMMA) || cursor.is(at + 2, Meaning.AND);
        return more && (named(at + 3) || named(at + 4))
                || cursor.is(at - 1, Meaning.COMMA) && ends(at + 2)
                || cursor.is(at - 1, Meaning.AND) && ends(at + 2);
    }

    private boolean ends(int ahead) {
        return switch (cursor.peek(ahead).meaning()) {
            case COMMA, SHUT, STAR, AND, FINISH, OPEN, STOP, SEMICOLON -> true;
            default -> false;
        };
    }

    /** "Make a loop of the cotton and work 6 dc into it": reads over a loop that is made, which is a ring. */
    boolean loop() {
        boolean loop = Fold.of(text.charAt(cursor.peek().start())) == 'l';
        boolean made = cursor.is(-1, Meaning.THE) && (cursor.is(-2, Meaning.WORK) || cursor.is(-2, Meaning.START));
        if (!loop || !made) {
            return false;
        }
        int after = 1;
        while (cursor.is(after, Meaning.OF)
                || cursor.is(after, Meaning.WITH)
                || cursor.is(after, Meaning.IN)
                || cursor.is(after, Meaning.THE)
                || cursor.is(after, Meaning.COLOUR)
                || cursor.is(after, Meaning.UNKNOWN)
                || cursor.is(after, Meaning.ENDING)
                || cursor.is(after, Meaning.NOTE)) {
            after++;
        }
        boolean ends =
                cursor.is(after, Meaning.AND) || cursor.peek(after).meaning().parts();
        cursor.at += ends ? after - 1 : 0;
        return ends;
    }

    /** Reads over "making a" before a ring: no count is told. */
    boolean ring() {
        int ring = cursor.is(1, Meaning.THE) ? 2 : 1;
        boolean makes = cursor.is(ring, Meaning.MAGIC);
        cursor.at += makes ? ring : 0;
        return makes;
    }
}
