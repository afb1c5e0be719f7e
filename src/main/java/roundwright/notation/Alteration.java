package roundwright.notation;

import java.util.ArrayList;
import java.util.List;

/**
 * A small change to a line that a slip of the writer's would explain.
 *
 * @param text the whole line, changed
 * @param cost how unlikely the slip is; lower is likelier
 */
public record Alteration(String text, int cost) {
    private static final int MOST_NUMBERS = 16;
    private static final int STEP = 10;
    private static final int FURTHEST = 6;
    private static final int SWAP = 28;
    private static final int COUNT = 14;
    private static final int TURNED_ROUND = 4;
    private static final int MISSING = 24;

    /** Every change worth trying: other numbers, a decrease for an increase, a number that was left out. */
    public static List<Alteration> of(WrittenLine line, Vocabulary vocabulary) {
        List<Alteration> all = new ArrayList<>();
        List<Token> tokens = Scanner.scan(line.text(), vocabulary);
        int from = line.label().map(label -> label.span().end()).orElse(0);
        int numbers = 0;
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            if (token.start() < from) {
                continue;
            }
            if (token.is(Meaning.NUMBER) && numbers++ < MOST_NUMBERS) {
                numbers(line, token, times(tokens, i), all);
            } else if (token.is(Meaning.INC) || token.is(Meaning.DEC) || token.is(Meaning.INVDEC)) {
                swap(line.text(), token, all);
            } else if (token.is(Meaning.STITCH) && alone(tokens, i)) {
                missing(line.text(), token, all);
            } else if (token.is(Meaning.COUNTER)) {
                counter(line.text(), token, all);
            }
        }
        return all;
    }

    private static boolean times(List<Token> tokens, int i) {
        boolean before = i > 0
                && (tokens.get(i - 1).is(Meaning.TIMES) || tokens.get(i - 1).is(Meaning.STAR));
        boolean after = i + 1 < tokens.size()
                && (tokens.get(i + 1).is(Meaning.TIMES) || tokens.get(i + 1).is(Meaning.MORE));
        return before || after;
    }

    private static boolean alone(List<Token> tokens, int i) {
        boolean before = i > 0 && tokens.get(i - 1).is(Meaning.NUMBER);
        boolean after = i + 1 < tokens.size()
                && (tokens.get(i + 1).is(Meaning.NUMBER) || tokens.get(i + 1).is(Meaning.IN));
        return !before && !after;
    }

    private static void numbers(WrittenLine line, Token token, boolean times, List<Alteration> all) {
        boolean count = line.counts().stream()
                .anyMatch(stated -> stated.span().contains(token.span()) && stated.value() == token.value());
        if (count) {
            counts(line.text(), token, all);
            return;
        }
        for (int by = -FURTHEST; by <= FURTHEST; by++) {
            int value = token.value() + by;
            if (by != 0 && value >= 1) {
                all.add(new Alteration(replaced(line.text(), token, value), STEP * Math.abs(by) - (times ? 2 : 0)));
            }
        }
    }

    /** A count is written with its figures turned round, one figure wrong, or is that of another round. */
    private static void counts(String text, Token token, List<Alteration> all) {
        int value = token.value();
        int turned = value % 10 * 10 + value / 10;
        if (value < 100 && turned > 9) {
            all.add(new Alteration(replaced(text, token, turned), TURNED_ROUND));
        }
        int furthest = Math.max(12, value / 2);
        for (int by = -furthest; by <= furthest && value < 100_000; by++) {
            if (by != 0 && value + by > 0) {
                all.add(new Alteration(replaced(text, token, value + by), COUNT + Math.abs(by)));
            }
        }
    }

    private static void swap(String text, Token token, List<Alteration> all) {
        String word = text.substring(token.start(), token.end());
        String other = token.is(Meaning.INC)
                ? word.replace("increase", "decrease")
                        .replace("inc", "dec")
                        .replace("INC", "DEC")
                        .replace("Inc", "Dec")
                : word.replace("decrease", "increase")
                        .replace("dec", "inc")
                        .replace("DEC", "INC")
                        .replace("Dec", "Inc");
        all.add(new Alteration(text.substring(0, token.start()) + other + text.substring(token.end()), SWAP));
    }

    private static void missing(String text, Token token, List<Alteration> all) {
        for (int number = 2; number <= FURTHEST; number++) {
            String changed = text.substring(0, token.start()) + number + " " + text.substring(token.start());
            all.add(new Alteration(changed, MISSING + STEP * (number - 2)));
        }
    }

    private static void counter(String text, Token token, List<Alteration> all) {
        int[] others = token.value() == 2 ? new int[] {3, 4} : new int[] {2, 4};
        for (int other : others) {
            String words = other == 2 ? "twice" : other + " times";
            all.add(new Alteration(text.substring(0, token.start()) + words + text.substring(token.end()), STEP));
        }
    }

    private static String replaced(String text, Token token, int value) {
        String written = text.substring(token.start(), token.end());
        String after = text.substring(token.end());
        boolean single = value == 1 && after.matches("(?i) st(itche)?s\\b.*");
        boolean next = text.substring(0, token.start()).matches("(?i).*\\b(next|the) ");
        if (single) {
            String noun = after.replaceFirst("(?i)^( st)(itch)?e?s", "$1$2");
            return text.substring(0, token.start()) + (next ? noun.substring(1) : written(written, 1) + noun);
        }
        return text.substring(0, token.start()) + written(written, value) + after;
    }

    private static String written(String as, int value) {
        return Character.isLetter(as.charAt(0)) && value <= 12 ? WORDS[value] : Integer.toString(value);
    }

    private static final String[] WORDS = {
        "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"
    };
}
