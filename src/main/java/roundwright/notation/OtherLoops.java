package roundwright.notation;

/** Reads that a round goes into loops that another round than the last one left: "In the unused front loops of Rnd 4, …". */
final class OtherLoops {
    /** Words between the beginning and the loops, such as "the unused". */
    private static final int MOST_WORDS = 3;

    private final Reading line;
    private final Cursor cursor;
    private final Items items;

    OtherLoops(Reading line, Items items) {
        this.line = line;
        this.cursor = line.cursor;
        this.items = items;
    }

    /** Reads over the words; false, and the cursor unmoved, where they do not stand there before any step. */
    boolean read() {
        int end = line.worked || !items.empty() ? 0 : end();
        if (end == 0) {
            return false;
        }
        int begin = cursor.at;
        cursor.at += end;
        cursor.skip(Meaning.COMMA, Meaning.COLON, Meaning.DASH);
        line.features.add(Feature.JOIN_PARTS);
        items.addApart(new Node.Note(cursor.since(begin), Feature.OTHER));
        return true;
    }

    /** How many tokens the words are; 0 where they do not stand there. */
    private int end() {
        int ahead = cursor.is(Meaning.WORK) ? 1 : 0;
        if (!cursor.is(ahead, Meaning.IN)) {
            return 0;
        }
        int loops = ahead + 1;
        while (loops <= ahead + MOST_WORDS && !cursor.is(loops, Meaning.HOLD)) {
            boolean word = switch (cursor.peek(loops).meaning()) {
                case THE, EACH, REMAINING, UNKNOWN, OTHER -> true;
                default -> false;
            };
            if (!word) {
                return 0;
            }
            loops++;
        }
        int of = cursor.is(loops + 1, Meaning.ST) ? loops + 2 : loops + 1;
        int round = cursor.is(of + 1, Meaning.THE) ? of + 2 : of + 1;
        boolean preposition = cursor.is(of, Meaning.OF) || cursor.is(of, Meaning.FROM) || cursor.is(of, Meaning.IN);
        boolean other = cursor.is(loops, Meaning.HOLD)
                && preposition
                && cursor.is(round, Meaning.ROUND)
                && cursor.is(round + 1, Meaning.NUMBER);
        return other ? round + 2 : 0;
    }
}
