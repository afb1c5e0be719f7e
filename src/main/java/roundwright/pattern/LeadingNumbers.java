package roundwright.pattern;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sees whether the lines of a part begin with running numbers and no mark of a label after them: "1 MR, 6 dc", "2 inc x 6",
 * or the rows of a table, "3,(dc, inc) x 6,18".
 */
final class LeadingNumbers {
    private static final int ENOUGH = 3;

    /** Numbers that do not run on, as those of steps, are fewer than half of those that do. */
    private static final int AGAINST = 2;

    private static final Pattern LEADING = Pattern.compile("\"?(\\d{1,3})(?:(?:-|\u2013| to )(\\d{1,4}))?\"?"
            + "(?: +(?=[^ .:)-])|[,\\t]\\s*(?=[^\\s\\d]|\\d+[ ,]?[^ ,\\d]))");

    private LeadingNumbers() {}

    static boolean runOn(PartText part) {
        int run = 0;
        int against = 0;
        int last = 0;
        for (SourceLine line : part.lines()) {
            Matcher leading = mayLead(line.text()) ? LEADING.matcher(line.text()) : null;
            if (leading != null && leading.lookingAt()) {
                int number = Integer.parseInt(leading.group(1));
                run += number == last + 1 ? 1 : 0;
                against += number == last + 1 ? 0 : 1;
                last = leading.group(2) == null ? number : Integer.parseInt(leading.group(2));
            }
        }
        return run >= ENOUGH && run > AGAINST * against;
    }

    private static boolean mayLead(String text) {
        return !text.isEmpty() && (text.charAt(0) <= '9' && text.charAt(0) >= '0' || text.charAt(0) == '"');
    }
}
