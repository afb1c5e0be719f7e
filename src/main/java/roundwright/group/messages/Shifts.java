package roundwright.group.messages;

import java.util.List;
import java.util.Optional;

/** Counts said as so many stitches more or fewer than due: "two too many", "short by one", "+1". */
final class Shifts {
    /**
     * @param clear whether it says which way
     * @param length tokens taken up
     */
    record Found(int stitches, boolean clear, int length) {}

    private static final int MOST = 40;

    private Shifts() {}

    static Optional<Found> at(List<Token> tokens, int at) {
        return signed(tokens, at).or(() -> after(tokens, at)).or(() -> before(tokens, at));
    }

    /** "+1", "-2": a sign glued to the number and not to what is before. */
    private static Optional<Found> signed(List<Token> tokens, int at) {
        Token sign = tokens.get(at);
        boolean minus = sign.is("-") || sign.is("−") || sign.is("–");
        if (!minus && !sign.is("+")
                || sign.glued() && at > 0 && !tokens.get(at - 1).is("(")) {
            return Optional.empty();
        }
        boolean small = at + 1 < tokens.size()
                && tokens.get(at + 1).number()
                && tokens.get(at + 1).glued()
                && tokens.get(at + 1).value() <= 5;
        return small
                ? Optional.of(new Found(
                        minus ? -tokens.get(at + 1).value() : tokens.get(at + 1).value(), true, 2))
                : Optional.empty();
    }

    /** "two too many", "one stitch short". */
    private static Optional<Found> after(List<Token> tokens, int at) {
        Optional<NumberWords.Found> amount = amount(tokens, at);
        if (amount.isEmpty()) {
            return Optional.empty();
        }
        int next = at + amount.get().length();
        next += next < tokens.size() && Cues.is(Cue.STITCHES, tokens.get(next)) ? 1 : 0;
        next += next < tokens.size() && tokens.get(next).is("of") ? 1 : 0;
        next += next < tokens.size() && tokens.get(next).matches("is|are|was|were") ? 1 : 0;
        int more = Cues.length(Cue.MORE, tokens, next);
        int less = Cues.length(Cue.LESS, tokens, next);
        int off = next < tokens.size()
                        && (tokens.get(next).is("off") || tokens.get(next).is("out"))
                ? 1
                : 0;
        int words = Math.max(Math.max(more, less), off);
        int due = words == 0 || off > 0 ? 0 : ofDue(tokens, next + words);
        if (words == 0 || due == 0 && othersCounted(tokens, next + words)) {
            return Optional.empty();
        }
        words += due;
        int stitches = less > 0 ? -amount.get().value() : amount.get().value();
        return Optional.of(new Found(stitches, off == 0, next + words + stitchWord(tokens, next + words) - at));
    }

    /** "two short of 24": the number that is due, and how many tokens say so. */
    private static int ofDue(List<Token> tokens, int at) {
        return at < tokens.size() && tokens.get(at).is("of")
                ? NumberWords.at(tokens, at + 1)
                        .filter(found -> found.value() > 5)
                        .map(found -> 1 + found.length())
                        .orElse(0)
                : 0;
    }

    /** "short by 2", "missing one", "gained a stitch". */
    private static Optional<Found> before(List<Token> tokens, int at) {
        int lost = Cues.length(Cue.LOST, tokens, at);
        int gained = Cues.length(Cue.GAINED, tokens, at);
        int off = Cues.length(Cue.OFF, tokens, at);
        boolean sum = at > 0
                && tokens.get(at).matches("plus|minus")
                && !tokens.get(at - 1).number();
        boolean roundBefore = at > 1 && Cues.is(Cue.ROUND, tokens.get(at - 2));
        if (sum || roundBefore) {
            lost = Math.max(lost, tokens.get(at).is("minus") ? 1 : 0);
            gained = Math.max(gained, tokens.get(at).is("plus") ? 1 : 0);
        }
        int words = Math.max(Math.max(lost, gained), off);
        Optional<NumberWords.Found> amount = words == 0 ? Optional.empty() : amount(tokens, at + words);
        if (amount.isEmpty()) {
            return Optional.empty();
        }
        int next = at + words + amount.get().length();
        if (othersCounted(tokens, next) || amount.get().value() > 9) {
            return Optional.empty();
        }
        int stitches = lost > 0 ? -amount.get().value() : amount.get().value();
        return Optional.of(new Found(stitches, off == 0, next + stitchWord(tokens, next) - at));
    }

    private static int stitchWord(List<Token> tokens, int at) {
        return at < tokens.size() && Cues.is(Cue.STITCHES, tokens.get(at)) ? 1 : 0;
    }

    private static Optional<NumberWords.Found> amount(List<Token> tokens, int at) {
        if (at >= tokens.size()) {
            return Optional.empty();
        }
        Token token = tokens.get(at);
        if (token.is("a") || token.is("an")) {
            return at + 1 < tokens.size() && tokens.get(at + 1).is("couple")
                    ? Optional.of(new NumberWords.Found(2, 2 + of(tokens, at + 2)))
                    : Optional.of(new NumberWords.Found(1, 1));
        }
        if (token.is("couple")) {
            return Optional.of(new NumberWords.Found(2, 1 + of(tokens, at + 1)));
        }
        return NumberWords.at(tokens, at).filter(found -> found.value() <= MOST);
    }

    private static int of(List<Token> tokens, int at) {
        return at < tokens.size() && tokens.get(at).is("of") ? 1 : 0;
    }

    /** "one more round", "two extra rows", "a missing marker": what is too many or lost is no stitch. */
    private static boolean othersCounted(List<Token> tokens, int at) {
        if (at >= tokens.size()) {
            return false;
        }
        Token next = tokens.get(at);
        boolean round = Cues.is(Cue.ROUND, next)
                && !(at + 1 < tokens.size() && tokens.get(at + 1).number());
        return round
                || Cues.is(Cue.ROUNDS, next)
                        && !(at + 1 < tokens.size() && tokens.get(at + 1).number())
                || next.word() && !Cues.is(Cue.STITCHES, next) && Noise.unitAfter(tokens, at)
                || List.of(
                                "minute",
                                "hour",
                                "day",
                                "time",
                                "to",
                                "ball",
                                "marker",
                                "week",
                                "lesson",
                                "inc",
                                "dec",
                                "increase",
                                "decrease",
                                "go",
                                "evening",
                                "question")
                        .contains(next.folded());
    }
}
