package roundwright.notation;

/** What stands right behind the digits of a number in a line and makes it something else: a measure, a time, an ordinal. */
final class AroundFigures {
    private static final int LONGEST_SUFFIX = 3;

    private final String text;
    private final char[] folded;
    private final int length;

    AroundFigures(String text, char[] folded) {
        this.text = text;
        this.folded = folded;
        this.length = text.length();
    }

    /** The end of the digits from here. */
    int afterDigits(int from) {
        int i = from;
        while (i < length && Scanner.digit(folded[i])) {
            i++;
        }
        return i;
    }

    /** Whether the digits from here are the fraction of a measure ("3.5 mm"), not the next number of a list. */
    boolean measured(int from, boolean point) {
        int i = afterDigits(from);
        while (i < length && folded[i] == ' ') {
            i++;
        }
        return text.startsWith("mm", i)
                || text.startsWith("cm", i)
                || point && text.startsWith("in", i) && (i + 2 >= length || !Scanner.letter(folded[i + 2]));
    }

    /** Whether a colon and two figures stand at {@code i}, and no more. */
    boolean clock(int i) {
        boolean figures =
                i + 2 < length && folded[i] == ':' && Scanner.digit(folded[i + 1]) && Scanner.digit(folded[i + 2]);
        return figures && !(i + 3 < length && (Scanner.digit(folded[i + 3]) || Scanner.letter(folded[i + 3])));
    }

    /** The end of what makes the number before {@code i} an ordinal ("3rd", "2e", "1ª"); {@code i} where nothing does. */
    int ordinal(long value, int i) {
        int end = i;
        while (end < length && end - i < LONGEST_SUFFIX && Scanner.letter(folded[end])) {
            end++;
        }
        if (end < length && Scanner.letter(folded[end])) {
            return i;
        }
        if (i < length && "\u00b0\u00aa\u00ba".indexOf(text.charAt(i)) >= 0) {
            return i + 1;
        }
        if (end == i) {
            return i;
        }
        int last = (int) (value % 10);
        boolean teen = value % 100 / 10 == 1;
        boolean ordinal = switch (new String(folded, i, end - i)) {
            case "st" -> last == 1 && !teen;
            case "nd" -> last == 2 && !teen;
            case "rd" -> last == 3 && !teen;
            case "th", "e", "er", "re", "te", "eme", "ere", "ste" -> true;
            default -> false;
        };
        return ordinal ? end : i;
    }

    /** Whether a number and no word after it stands there: "ch. 24, join", not "top of ch. 24 dc". */
    boolean howMany(int from) {
        int next = afterDigits(from);
        boolean number = next > from;
        while (next < length && folded[next] == ' ') {
            next++;
        }
        return number && next < length && !Scanner.letter(folded[next]);
    }

    /** "inc-x3": the hyphen between a step and how often it is done parts nothing. */
    boolean beforeTimes(int at) {
        return at > 0
                && at + 2 < length
                && Scanner.letter(folded[at - 1])
                && folded[at + 1] == 'x'
                && Scanner.digit(folded[at + 2]);
    }
}
