package roundwright.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
    /** Two figures of a line are each changed by no more than this. */
    private static final int MOST_MORE = 2;

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
                swap(line.text(), token, vocabulary, all);
            } else if (token.is(Meaning.STITCH) && alone(tokens, i)) {
                missing(line.text(), token, all);
            } else if (token.is(Meaning.COUNTER)) {
                counter(line.text(), token, all);
            }
            together(line.text(), tokens, i, all);
            further(line.text(), tokens, i, all);
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
                && is(tokens, i + 3, Meaning.NEXT);
        if (increase) {
            Token stitch = tokens.get(i + 1);
            String other = text.substring(stitch.start(), stitch.end()) + "2tog";
            Token last = tokens.get(is(tokens, i + 4, Meaning.ST) ? i + 4 : i + 3);
            all.add(new Alteration(replaced(text, token.start(), last.end(), other), SWAP));
        }
        boolean decrease = token.is(Meaning.NUMBER)
                && is(tokens, i + 1, Meaning.TOG)
                && tokens.get(i + 1).name() != null;
        if (decrease) {
            Token tog = tokens.get(i + 1);
            String stitch = text.substring(tog.start(), tog.end()).replaceFirst("(?i) ?tog$", "");
            String gap = tog.spaced() ? " " : "";
            String other = token.value() + gap + stitch + " in next st";
            all.add(new Alteration(replaced(text, token.start(), tog.end(), other), SWAP));
        }
    }

    /** "dc in next st" for "dc in next 3 sts". */
    private static void further(String text, List<Token> tokens, int i, List<Alteration> all) {
        boolean one = is(tokens, i, Meaning.NEXT) && is(tokens, i + 1, Meaning.ST) && is(tokens, i - 1, Meaning.IN);
        int number = is(tokens, i - 3, Meaning.NUMBER) ? tokens.get(i - 3).value() : 0;
        if (!one || number > 1) {
            return;
        }
        Token noun = tokens.get(i + 1);
        String word = text.substring(noun.start(), noun.end());
        String each = number == 1 ? "each of " : "";
        for (int stitches = 2; stitches <= 4; stitches++) {
            String place = each + "next " + stitches + " " + word + (word.endsWith("h") ? "es" : "s");
            all.add(new Alteration(
                    replaced(text, tokens.get(i).start(), noun.end(), place), MISSING + STEP * (stitches - 2)));
        }
    }

    private static boolean is(List<Token> tokens, int i, Meaning meaning) {
        return i >= 0 && i < tokens.size() && tokens.get(i).is(meaning);
    }

    private static String replaced(String text, int from, int to, String other) {
        return text.substring(0, from) + other + text.substring(to);
    }

    /**
     * A run and the number of its repeats, or two runs on either side, both by a little: one slip of the mind, though two
     * figures.
     */
    private static void both(WrittenLine line, List<Token> tokens, int from, boolean writesOne, List<Alteration> all) {
        for (int t = 0; t < tokens.size(); t++) {
            Token second = tokens.get(t);
            if (!second.is(Meaning.NUMBER) || counts(line, second)) {
                continue;
            }
            for (int r = Math.max(0, t - PAIR + 1); r < t; r++) {
                Token run = tokens.get(r);
                boolean number =
                        run.start() >= from && run.is(Meaning.NUMBER) && !times(tokens, r) && !counts(line, run);
                if (times(tokens, t) && number) {
                    both(line.text(), run, second, writesOne, all);
                } else if (times(tokens, t) && run.start() >= from && run.is(Meaning.STITCH) && alone(tokens, r)) {
                    missing(line.text(), run, second, all);
                } else if (number && run.value() == second.value() && runs(tokens, r) && runs(tokens, t)) {
                    mirrored(line.text(), run, middle(tokens, r, t), second, writesOne, all);
                }
            }
        }
    }

    /** Whether the number says how many stitches there are, and not how many are worked together. */
    private static boolean runs(List<Token> tokens, int i) {
        return !is(tokens, i + 1, Meaning.TOG);
    }

    /** A number left out before a stitch, and the number of its repeats. */
    private static void missing(String text, Token stitch, Token times, List<Alteration> all) {
        for (int more = -MOST_MORE; more <= MOST_MORE; more++) {
            if (more != 0 && times.value() + more > 1) {
                String later = replaced(text, times, times.value() + more);
                for (int number = 2; number <= 3; number++) {
                    String altered = replaced(later, stitch.start(), stitch.start(), number + " ");
                    all.add(new Alteration(altered, MISSING + STEP * (number - 2 + Math.abs(more)) - 1));
                }
            }
        }
    }

    /** The one number between two others; null where there is none, or more. */
    private static Token middle(List<Token> tokens, int first, int second) {
        Token middle = null;
        for (int i = first + 1; i < second; i++) {
            if (tokens.get(i).is(Meaning.NUMBER)) {
                if (middle != null || times(tokens, i)) {
                    return null;
                }
                middle = tokens.get(i);
            }
        }
        return middle;
    }

    /** "3 dc, 4 inc, 3 dc" for "2 dc, 5 inc, 2 dc": the runs on both sides, and perhaps what stands between them. */
    private static void mirrored(
            String text, Token run, Token middle, Token other, boolean writesOne, List<Alteration> all) {
        for (int by = -MOST_MORE; by <= MOST_MORE; by++) {
            if (by == 0 || run.value() + by < 1) {
                continue;
            }
            String last = replaced(text, other, other.value() + by, writesOne);
            for (int more = middle == null ? 0 : -MOST_MORE; more <= (middle == null ? 0 : MOST_MORE); more++) {
                if (more == 0 || middle.value() + more > 0) {
                    String between = more == 0 ? last : replaced(last, middle, middle.value() + more, writesOne);
                    String altered = replaced(between, run, run.value() + by, writesOne);
                    all.add(new Alteration(altered, STEP * (Math.abs(by) + Math.abs(more)) + 1));
                }
            }
        }
    }

    private static void both(String text, Token run, Token times, boolean writesOne, List<Alteration> all) {
        for (int more = -FURTHEST / 2; more <= FURTHEST / 2; more++) {
            for (int by = -MOST_MORE; by <= MOST_MORE; by++) {
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

    private static void swap(String text, Token token, Vocabulary vocabulary, List<Alteration> all) {
        String word = text.substring(token.start(), token.end());
        if (token.is(Meaning.INVDEC)) {
            boolean shouted = Character.isUpperCase(word.charAt(word.length() - 1));
            all.add(new Alteration(replaced(text, token.start(), token.end(), shouted ? "INC" : "inc"), SWAP));
            return;
        }
        String other = token.is(Meaning.INC)
                ? word.replace("increase", "decrease")
                        .replace("inc", "dec")
                        .replace("INC", "DEC")
                        .replace("Inc", "Dec")
                : word.replace("decrease", "increase")
                        .replace("dec", "inc")
                        .replace("DEC", "INC")
                        .replace("Dec", "Inc");
        String own = other.equals(word)
                ? vocabulary.other(token).map(name -> like(word, name)).orElse(word)
                : other;
        all.add(new Alteration(replaced(text, token.start(), token.end(), own), SWAP));
    }

    private static String like(String word, String name) {
        boolean capitals = word.equals(word.toUpperCase(Locale.ROOT));
        return capitals ? name.toUpperCase(Locale.ROOT) : name;
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
        if (value == 1 && next && after.matches("(?i) (sc|dc|hdc|htr|tr)\\b.*")) {
            return text.substring(0, token.start()) + after.substring(1);
        }
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
