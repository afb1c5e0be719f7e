package roundwright.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

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
    /** A run and its repeats stand no more words apart than this. */
    private static final int PAIR = 14;

    private static final Pattern EACH_OF = Pattern.compile("(?i)\\b(next|first|last|in|of|the) $");

    /**
     * Every change worth trying: other numbers, a decrease for an increase, a number that was left out, a run and its repeats
     * both.
     *
     * @param writesOne whether the writer puts a 1 before a single stitch
     */
    public static List<Alteration> of(WrittenLine line, Vocabulary vocabulary, boolean writesOne) {
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
                numbers(line, tokens, i, writesOne, all);
            } else if (token.is(Meaning.INC) || token.is(Meaning.DEC) || token.is(Meaning.INVDEC)) {
                swap(line.text(), token, all);
            } else if (token.is(Meaning.STITCH) && alone(tokens, i)) {
                missing(line.text(), token, all);
            } else if (token.is(Meaning.COUNTER)) {
                counter(line.text(), token, all);
            }
            together(line.text(), tokens, i, all);
        }
        both(line, tokens, from, writesOne, all);
        return all;
    }

    /** "dc2tog" for "2 dc in next st", and the other way round. */
    private static void together(String text, List<Token> tokens, int i, List<Alteration> all) {
        Token token = tokens.get(i);
        if (token.is(Meaning.STITCH) && is(tokens, i + 1, Meaning.NUMBER) && is(tokens, i + 2, Meaning.TOG)) {
            String stitch = text.substring(token.start(), token.end());
            String other = tokens.get(i + 1).value() + " " + stitch + " in next st";
            all.add(new Alteration(
                    replaced(text, token.start(), tokens.get(i + 2).end(), other), SWAP));
        }
        boolean increase = token.is(Meaning.NUMBER)
                && token.value() == 2
                && is(tokens, i + 1, Meaning.STITCH)
                && is(tokens, i + 2, Meaning.IN)
                && is(tokens, i + 3, Meaning.NEXT)
                && is(tokens, i + 4, Meaning.ST);
        if (increase) {
            Token stitch = tokens.get(i + 1);
            String other = text.substring(stitch.start(), stitch.end()) + "2tog";
            all.add(new Alteration(
                    replaced(text, token.start(), tokens.get(i + 4).end(), other), SWAP));
        }
    }

    private static boolean is(List<Token> tokens, int i, Meaning meaning) {
        return i < tokens.size() && tokens.get(i).is(meaning);
    }

    private static String replaced(String text, int from, int to, String other) {
        return text.substring(0, from) + other + text.substring(to);
    }

    /** A run and the number of its repeats, both by a little: one slip of the mind, though two figures. */
    private static void both(WrittenLine line, List<Token> tokens, int from, boolean writesOne, List<Alteration> all) {
        for (int t = 0; t < tokens.size(); t++) {
            for (int r = 0; r < t; r++) {
                Token run = tokens.get(r);
                Token times = tokens.get(t);
                boolean pair = run.start() >= from && run.is(Meaning.NUMBER) && times.is(Meaning.NUMBER);
                if (pair && times(tokens, t) && !times(tokens, r) && !counts(line, run) && t - r < PAIR) {
                    both(line.text(), run, times, writesOne, all);
                }
            }
        }
    }

    private static void both(String text, Token run, Token times, boolean writesOne, List<Alteration> all) {
        for (int more = -2; more <= 2; more++) {
            for (int by = -2; by <= 2; by++) {
                boolean changed = more != 0 && by != 0 && run.value() + by > 0 && times.value() + more > 1;
                if (changed) {
                    String later = replaced(text, times, times.value() + more, writesOne);
                    String altered = replaced(later, run, run.value() + by, writesOne);
                    all.add(new Alteration(altered, STEP * (Math.abs(by) + Math.abs(more)) - 1));
                }
            }
        }
    }

    private static boolean counts(WrittenLine line, Token token) {
        return line.counts().stream()
                .anyMatch(stated -> stated.span().contains(token.span()) && stated.value() == token.value());
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

    private static void numbers(WrittenLine line, List<Token> tokens, int i, boolean writesOne, List<Alteration> all) {
        Token token = tokens.get(i);
        boolean times = times(tokens, i);
        if (counts(line, token)) {
            counts(line.text(), token, all);
            return;
        }
        for (int by = -FURTHEST; by <= FURTHEST; by++) {
            int value = token.value() + by;
            if (by != 0 && value >= 1) {
                String changed = replaced(line.text(), token, value, writesOne || times);
                all.add(new Alteration(changed, STEP * Math.abs(by) - (times ? 2 : 0)));
            }
        }
    }

    /** A count is written with its figures turned round, one figure wrong, or is that of another round. */
    private static void counts(String text, Token token, List<Alteration> all) {
        int value = token.value();
        int turned = value % 10 * 10 + value / 10;
        if (value < 100 && turned > 9) {
            all.add(new Alteration(replaced(text, token, turned, true), TURNED_ROUND));
        }
        int furthest = Math.max(12, value / 2);
        for (int by = -furthest; by <= furthest && value < 100_000; by++) {
            if (by != 0 && value + by > 0) {
                all.add(new Alteration(replaced(text, token, value + by, true), COUNT + Math.abs(by)));
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

    private static String replaced(String text, Token token, int value, boolean writesOne) {
        if (value == 1 && !writesOne && token.end() < text.length()) {
            int stitch = text.charAt(token.end()) == ' ' ? token.end() + 1 : token.end();
            boolean word = stitch < text.length() && Character.isLetter(text.charAt(stitch));
            boolean place = EACH_OF.matcher(text.substring(0, token.start())).find();
            if (word
                    && !place
                    && !text.startsWith("st", stitch)
                    && !text.startsWith("x", stitch)
                    && !text.startsWith("time", stitch)) {
                return text.substring(0, token.start()) + text.substring(stitch);
            }
        }
        return replaced(text, token, value);
    }

    private static String replaced(String text, Token token, int value) {
        String written = text.substring(token.start(), token.end());
        String after = text.substring(token.end());
        boolean single = value == 1 && after.matches("(?i) st(itche)?s\\b.*");
        boolean next = text.substring(0, token.start()).matches("(?i).*\\b(next|the) ");
        if (single) {
            String before = text.substring(0, token.start())
                    .replaceFirst("(?i)\\bin(to)? each of( the)? next $", "in$1$2 next ");
            String noun = after.replaceFirst("(?i)^( st)(itch)?e?s", "$1$2");
            return before + (next ? noun.substring(1) : written(written, 1) + noun);
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
