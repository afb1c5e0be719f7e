package roundwright.notation;

import roundwright.notation.Node.Note;

/** Reads over words around the stitches: colours, stuffing, sewing, encouragement. */
final class NoteReader {
    /** What stitches are made with. */
    private static final java.util.Set<String> MATERIAL = java.util.Set.of(
            "hook",
            "hooks",
            "strand",
            "strands",
            "wool",
            "cotton",
            "string",
            "twine",
            "cord",
            "raffia",
            "tension",
            "needle",
            "mohair",
            "chenille",
            "shade",
            "ball",
            "skein",
            "ply",
            "mc",
            "cc");

    private final Reading line;
    private final Cursor cursor;

    NoteReader(Reading line) {
        this.line = line;
        this.cursor = line.cursor;
    }

    /** Reads an instruction to the end of its clause. */
    Node read(Feature feature) {
        int begin = cursor.at;
        line.features.add(feature);
        cursor.next();
        boolean joinedTo = feature == Feature.COLOUR_CHANGE;
        while (!clauseEnds(begin, joinedTo)) {
            if (cursor.is(Meaning.OPEN)) {
                bracket();
            } else {
                see(cursor.next());
            }
        }
        return new Note(cursor.since(begin), feature);
    }

    private void see(Token token) {
        if (token.is(Meaning.NOTE)) {
            line.features.add(token.feature());
        } else if (token.is(Meaning.MARKER)) {
            line.features.add(Feature.MARKER);
        } else if (token.is(Meaning.LOST) && !line.counted) {
            line.hole(token.span());
        }
    }

    private boolean clauseEnds(int begin, boolean untilWork) {
        Token token = cursor.peek();
        return switch (token.meaning()) {
            case FINISH, STOP, SEMICOLON, SHUT -> true;
            case OPEN -> countAhead();
            case STAR, STARS -> true;
            case EQUALS -> true;
            case NUMBER, MARK -> new CountEnds(cursor).closes();
            case DASH -> token.spaced() && (workAhead(1)) || new CountEnds(cursor).closes();
            case AND -> workAhead(1) && !cursor.is(1, Meaning.SLIP);
            case COMMA, COLON ->
                workAhead(1)
                        || cursor.is(1, Meaning.TURN)
                                && !cursor.peek(2).meaning().parts()
                        || new CountEnds(cursor).closes();
            case YOUHAVE, TOTAL -> new CountEnds(cursor).closes();
            default -> false;
        };
    }

    private boolean countAhead() {
        return switch (cursor.peek(1).meaning()) {
            case NUMBER, EQUALS, YOUHAVE, TOTAL -> true;
            case NOW -> cursor.is(2, Meaning.NUMBER);
            default -> workAhead(1);
        };
    }

    /** Whether a step begins so many tokens on. */
    boolean workAhead(int ahead) {
        int place = ahead;
        while (skippable(cursor.peek(place).meaning())) {
            place++;
        }
        Meaning first = cursor.peek(place).meaning();
        if (first == Meaning.NUMBER) {
            Meaning second = cursor.peek(place + 1).meaning();
            return second.makes() || second == Meaning.TIMES || second == Meaning.TOG;
        }
        if (first == Meaning.HOLD) {
            return cursor.peek(place + 1).meaning().makes();
        }
        return first.makes() || first == Meaning.STAR || first == Meaning.OPEN;
    }

    /** As {@link #workAhead}, but a bracket or an asterisk alone is not taken for a step. */
    boolean stepAhead(int ahead) {
        return workAhead(ahead) && !cursor.is(ahead, Meaning.OPEN) && !cursor.is(ahead, Meaning.STAR);
    }

    private static boolean skippable(Meaning meaning) {
        return switch (meaning) {
            case AND, WORK, COMMA, START, CONTINUE, NOW -> true;
            default -> false;
        };
    }

    /** So many words that only name a yarn. */
    Node colourMark(int words) {
        int begin = cursor.at;
        cursor.at += words;
        line.features.add(Feature.COLOUR_CHANGE);
        return new Note(cursor.since(begin), Feature.COLOUR_CHANGE);
    }

    /** Words about a colour: they end where a step begins. */
    Node colour() {
        int begin = cursor.at;
        line.features.add(Feature.COLOUR_CHANGE);
        boolean with = cursor.next().is(Meaning.WITH);
        boolean how = with && cursor.peek(-2).meaning().makes();
        while (with
                && !cursor.done()
                && !cursor.peek().meaning().parts()
                && !stepAhead(0)
                && !(cursor.is(Meaning.OPEN) && countAhead())
                && !cursor.is(Meaning.SHUT)) {
            cursor.next();
        }
        while (cursor.is(Meaning.COLOUR)
                || cursor.is(Meaning.THE)
                || cursor.is(Meaning.UNKNOWN)
                        && (cursor.is(1, Meaning.COLOUR)
                                || cursor.peek(1).meaning().parts())) {
            cursor.next();
        }
        if (how && strange(begin)) {
            line.doubt(cursor.since(begin));
        }
        return new Note(cursor.since(begin), Feature.COLOUR_CHANGE);
    }

    /** Whether words on how a stitch is made, from a place on, name nothing that it is made with: "dc with a half twist". */
    private boolean strange(int begin) {
        boolean words = false;
        for (int place = begin + 1 - cursor.at; place < 0; place++) {
            Token token = cursor.peek(place);
            boolean known = token.is(Meaning.COLOUR) || token.is(Meaning.MEASURE) || line.yarns.letter(token);
            String word = line.text.substring(token.start(), token.end()).toLowerCase(java.util.Locale.ROOT);
            if (known || MATERIAL.contains(word)) {
                return false;
            }
            words |= token.is(Meaning.UNKNOWN);
        }
        return words;
    }

    /** Whether the bracket at the cursor is an aside: nothing in it is a step, or a word in it is not of the trade. */
    boolean aside() {
        int depth = 0;
        int place = 0;
        boolean steps = false;
        boolean words = false;
        boolean telling = false;
        do {
            Token token = cursor.peek(place++);
            switch (token.meaning()) {
                case OPEN -> depth++;
                case SHUT -> depth--;
                case FINISH -> depth = 0;
                case COUNTSAS, NOTE, MEASURE, MARKER, NOT, COLOUR, EVEN, PER -> telling = true;
                case UNKNOWN -> words = true;
                case NUMBER -> steps |= cursor.is(place, Meaning.IN) || cursor.is(place, Meaning.COMMA);
                default -> steps |= token.meaning().makes() || token.is(Meaning.TOG);
            }
        } while (depth > 0);
        boolean repeated = cursor.is(place, Meaning.TIMES)
                || cursor.is(place + 1, Meaning.TIMES)
                || cursor.is(place, Meaning.STAR) && cursor.is(place + 1, Meaning.NUMBER)
                || cursor.is(place, Meaning.AROUND);
        return telling || words && !(steps && repeated) || !steps && !repeated;
    }

    /** Whether the bracket at the cursor holds nothing but marks: "(…)", "[?]". */
    boolean onlyMarks() {
        int place = 1;
        while (cursor.peek(place).meaning().parts()) {
            place++;
        }
        return place > 1 && cursor.is(place, Meaning.SHUT);
    }

    /** Whether the bracket at the cursor holds nothing but words that are not of rounds. */
    boolean strangeBracket() {
        for (int place = 1; !cursor.is(place, Meaning.SHUT) && !cursor.is(place, Meaning.FINISH); place++) {
            switch (cursor.peek(place).meaning()) {
                case NOTE, COUNTSAS, MEASURE, MARKER, NOT, COLOUR, EVEN, HOLD, PER -> {
                    return false;
                }
                default -> {}
            }
        }
        return true;
    }

    Node bracket() {
        int begin = cursor.at;
        int depth = 0;
        do {
            Token token = cursor.next();
            see(token);
            depth += token.is(Meaning.OPEN) ? 1 : token.is(Meaning.SHUT) ? -1 : 0;
        } while (depth > 0 && !cursor.done());
        return new Note(cursor.since(begin), Feature.OTHER);
    }

    /** "take 2 sts together", "take every third and fourth stitch together". */
    boolean takesTogether() {
        int ahead = 1;
        while (switch (cursor.peek(ahead).meaning()) {
            case EACH, ORDINAL, AND, NUMBER, ST, STITCH, NEXT, THE -> true;
            default -> false;
        }) {
            ahead++;
        }
        return ahead > 1 && cursor.is(ahead, Meaning.TOG);
    }
}
