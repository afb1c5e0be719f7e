package roundwright.group.counts;

import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a cell for a count says: {@code 36}, {@code 36 sts}, {@code …9} (not finished, nine so far), {@code -} (nothing).
 *
 * @param count the number in it, where there is one; it may be below nothing
 */
public record CountCell(Kind kind, OptionalInt count) {
    /** What is said. */
    public enum Kind {
        NOTHING,
        COUNTED,
        UNFINISHED,
        PULLED_BACK,
        /** All right, without a number. */
        AS_PATTERN,
        UNREADABLE
    }

    private static final Pattern NOTHING = Pattern.compile("|-|–|—|n/?a|absent|away|not reported");
    private static final Pattern RIGHT = Pattern.compile("=|ok|okay|right|✓|✔|☑");
    private static final Pattern BACK = Pattern.compile("p|pulled back|pb|<+");
    private static final Pattern OPEN =
            Pattern.compile("(?:…|\\.\\.\\.|~|unfinished|not finished|so far|u|wip)[ :,]*(\\d{0,4})"
                    + "|(\\d{1,4})[ ,]*(?:…|\\.\\.\\.|~|\\(?so far\\)?|unfinished|\\(?not finished\\)?|u)");

    /** A whole number may be written as 12.0 or 12,00; 12.000 may mean twelve thousand and is not guessed at. */
    private static final Pattern NUMBER =
            Pattern.compile("[=#]?\\s*([-−]?\\d{1,9})(?:[.,]0{1,2})?\\s*(?:sts?\\.?|stitches)?[?!]?");

    static final CountCell UNREADABLE = new CountCell(Kind.UNREADABLE, OptionalInt.empty());

    /** Reads a cell; none is refused. */
    public static CountCell of(String cell) {
        String plain = cell.replace('\u00a0', ' ').strip().toLowerCase(java.util.Locale.ROOT);
        if (NOTHING.matcher(plain).matches()) {
            return new CountCell(Kind.NOTHING, OptionalInt.empty());
        }
        Matcher number = NUMBER.matcher(plain);
        if (number.matches()) {
            return new CountCell(
                    Kind.COUNTED,
                    OptionalInt.of(Integer.parseInt(number.group(1).replace('−', '-'))));
        }
        if (RIGHT.matcher(plain).matches()) {
            return new CountCell(Kind.AS_PATTERN, OptionalInt.empty());
        }
        if (BACK.matcher(plain).matches()) {
            return new CountCell(Kind.PULLED_BACK, OptionalInt.empty());
        }
        return open(plain);
    }

    private static CountCell open(String plain) {
        Matcher open = OPEN.matcher(plain);
        if (!open.matches()) {
            return UNREADABLE;
        }
        String digits = (open.group(1) == null ? "" : open.group(1)) + (open.group(2) == null ? "" : open.group(2));
        return new CountCell(
                Kind.UNFINISHED, digits.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(digits)));
    }
}
