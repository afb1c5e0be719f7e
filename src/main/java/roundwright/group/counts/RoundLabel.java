package roundwright.group.counts;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.group.messages.Folding;

/**
 * A round as it is written above a column or in a cell: {@code 7}, {@code R7}, {@code Round 7}, {@code Tower 7}, {@code 8-12}.
 *
 * @param part where one is named
 * @param from first round, and {@code to} the last, which is the same but for a range
 */
record RoundLabel(Optional<String> part, int from, int to) {
    private static final String WORD =
            "(?:rounds?|rnds?|rds?|rows?|r|runden?|reihe|tour|toer|vuelta|giro|varv|omgang|omg|no|nr)";
    private static final Pattern FORM = Pattern.compile("(?<part>.*?)[ .,:;/_#-]*\\b" + WORD
            + "?[ .:#_-]*(?<from>\\d{1,4})(?:\\.|st|nd|rd|th)?(?:\\s*(?:-|–|—|to)\\s*" + WORD
            + "?[ .]*(?<to>\\d{1,4}))?(?:[.,]0{1,2})?\\s*" + WORD + "?");

    private static final int LONGEST_LABEL = 80;

    /** Longer ones are slips of the keys. */
    private static final int LONGEST_RANGE = 200;

    /** Reads a label; empty where it is none, or names a part that there is not. */
    static Optional<RoundLabel> read(String text, Roll roll) {
        String plain = Folding.fold(text.replace('\u00a0', ' ')).strip();
        Matcher form = FORM.matcher(plain);
        if (plain.length() > LONGEST_LABEL || !form.matches()) {
            return Optional.empty();
        }
        String before = form.group("part").strip();
        Optional<String> part = roll.part(before);
        return before.isEmpty() || part.isPresent() ? label(form, part) : Optional.empty();
    }

    private static Optional<RoundLabel> label(Matcher form, Optional<String> part) {
        int from = Integer.parseInt(form.group("from"));
        int to = form.group("to") == null ? from : Integer.parseInt(form.group("to"));
        return to < from || to - from > LONGEST_RANGE ? Optional.empty() : Optional.of(new RoundLabel(part, from, to));
    }
}
