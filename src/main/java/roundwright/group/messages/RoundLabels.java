package roundwright.group.messages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Rounds as students name them: "r12", "Rnds 5-7", "rounds 5, 6 and 7", "the 5th round". */
final class RoundLabels {
    /** @param length tokens taken up */
    record Found(List<Integer> rounds, int length) {
        Found {
            rounds = List.copyOf(rounds);
        }
    }

    /** "Round VII"; a lone "i" is more often a person. */
    private static final List<String> ROMAN = List.of(
            "i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x", "xi", "xii", "xiii", "xiv", "xv", "xvi",
            "xvii", "xviii", "xix", "xx");

    private final List<Token> tokens;
    private final Known known;
    private final List<Integer> rounds = new ArrayList<>();
    private boolean several;

    private RoundLabels(List<Token> tokens, Known known) {
        this.tokens = tokens;
        this.known = known;
    }

    static Optional<Found> at(List<Token> tokens, int at, Known known) {
        if (at >= tokens.size()) {
            return Optional.empty();
        }
        Optional<Found> ordinal = ordinal(tokens, at);
        return ordinal.or(() -> toldOrdinal(tokens, at, known))
                .or(() -> numberFirst(tokens, at, known))
                .or(() -> onwards(tokens, at))
                .or(() -> new RoundLabels(tokens, known).label(at));
    }

    private static Optional<Found> ordinal(List<Token> tokens, int at) {
        return NumberWords.ordinal(tokens, at)
                .filter(found -> at + found.length() < tokens.size()
                        && Cues.is(Cue.ROUND, tokens.get(at + found.length()))
                        && tokens.get(at + found.length()).folded().length() > 1)
                .map(found -> new Found(List.of(found.value()), found.length() + 1));
    }

    /** "tenth: 36", "the 7th was 42": the word is left out. */
    private static Optional<Found> toldOrdinal(List<Token> tokens, int at, Known known) {
        return NumberWords.ordinal(tokens, at)
                .filter(found -> known.has(found.value()))
                .flatMap(found -> {
                    int next = at + found.length();
                    boolean one = next < tokens.size() && tokens.get(next).is("one");
                    int told = next + (one ? 1 : 0);
                    boolean tells =
                            told < tokens.size() && tokens.get(told).matches("[:=-]|is|was|has|had|gave|came|–");
                    boolean counted = tells && fits(tokens, told + 1, found.value(), known)
                            || fits(tokens, told, found.value(), known)
                            || found.length() > 1 && countAhead(tokens, told, found.value(), known);
                    return counted
                            ? Optional.of(new Found(List.of(found.value()), told - at))
                            : Optional.<Found>empty();
                });
    }

    private static boolean fits(List<Token> tokens, int at, int round, Known known) {
        return NumberWords.at(tokens, at)
                .filter(count -> known.near(Optional.empty(), round, count.value(), 4))
                .isPresent();
    }

    /** "10th is proving tricky. 37": the next number is a count of it. */
    private static boolean countAhead(List<Token> tokens, int from, int round, Known known) {
        for (int next = from; next < Math.min(from + 14, tokens.size()); next++) {
            if (NumberWords.at(tokens, next).isPresent() && !tokens.get(next).is("one")) {
                return fits(tokens, next, round, known);
            }
        }
        return false;
    }

    /** "the 5 round", "7. Runde". */
    private static Optional<Found> numberFirst(List<Token> tokens, int at, Known known) {
        Token number = tokens.get(at);
        boolean dot = at + 1 < tokens.size()
                && tokens.get(at + 1).is(".")
                && tokens.get(at + 1).glued();
        int word = at + (dot ? 2 : 1);
        boolean round = number.number()
                && known.has(number.value())
                && word < tokens.size()
                && tokens.get(word).folded().length() > 2
                && Cues.is(Cue.ROUND, tokens.get(word));
        if (!round) {
            return Optional.empty();
        }
        Optional<NumberWords.Found> next = NumberWords.at(tokens, word + 1);
        boolean counted = next.isPresent()
                && known.near(Optional.empty(), number.value(), next.get().value(), 3);
        boolean said = at > 0 && tokens.get(at - 1).matches("the|in|on|of|my|for|this|now");
        return counted || said && next.isEmpty()
                ? Optional.of(new Found(List.of(number.value()), word + 1 - at))
                : Optional.empty();
    }

    /** "from 23 on": the first of some rounds. */
    private static Optional<Found> onwards(List<Token> tokens, int at) {
        if (!tokens.get(at).is("from")) {
            return Optional.empty();
        }
        int next = at + 1 + Cues.length(Cue.ROUND, tokens, at + 1);
        return NumberWords.at(tokens, next)
                .filter(found -> next + found.length() < tokens.size()
                        && tokens.get(next + found.length()).matches("on|onwards|onward|upwards"))
                .map(found -> new Found(List.of(found.value()), next + found.length() + 1 - at));
    }

    private Optional<Found> label(int at) {
        int word = Math.max(Cues.length(Cue.ROUND, tokens, at), Cues.length(Cue.ROUNDS, tokens, at));
        if (word == 0 || at > 0 && tokens.get(at - 1).number() && tokens.get(at).glued()) {
            return Optional.empty();
        }
        several = Cues.length(Cue.ROUNDS, tokens, at) > 0;
        if (several && at > 0 && NumberWords.at(tokens, at - 1).isPresent()) {
            // "the first four rounds: 6, 12, 18, 24"
            return Optional.empty();
        }
        int next = passSigns(at + word);
        Optional<NumberWords.Found> first = number(next);
        if (first.isEmpty()) {
            return Optional.empty();
        }
        rounds.add(first.get().value());
        next += first.get().length();
        boolean count =
                !known.has(first.get().value()) && known.expects(first.get().value());
        if (count || next < tokens.size() && tokens.get(next).matches("times|x|more")) {
            return Optional.empty();
        }
        int end = more(next);
        return Optional.of(new Found(rounds, end - at));
    }

    /** "Rnd. 5", "round #5", "round no 5", "round\n5". */
    private int passSigns(int at) {
        int next = at;
        while (next < tokens.size()
                && (tokens.get(next).lineEnd()
                        || List.of(".", "#", ":", "no", "number", "nr", "s", "(", "-")
                                .contains(tokens.get(next).folded()))) {
            next++;
        }
        return next;
    }

    private Optional<NumberWords.Found> number(int at) {
        int roman = at < tokens.size() ? ROMAN.indexOf(tokens.get(at).folded()) : -1;
        if (roman > 0) {
            return Optional.of(new NumberWords.Found(roman + 1, 1));
        }
        return NumberWords.at(tokens, at).filter(found -> found.value() <= 999);
    }

    private int more(int at) {
        int next = at;
        while (true) {
            int joint = Math.max(Cues.length(Cue.TO, tokens, next), listJoint(next));
            int number = next + joint + roundWord(next + joint);
            Optional<NumberWords.Found> found = joint == 0 && !oneMore(next) ? Optional.empty() : number(number);
            if (found.isEmpty()
                    || !joins(next, found.get().value(), number + found.get().length())) {
                return next;
            }
            boolean range = Cues.length(Cue.TO, tokens, next) > 0;
            extend(range, found.get().value());
            next = number + found.get().length();
        }
    }

    /** "rounds 7 8 and 9": the next number goes on with the list. */
    private boolean oneMore(int at) {
        return several
                && number(at)
                        .filter(found -> found.value() == rounds.get(rounds.size() - 1) + 1)
                        .isPresent();
    }

    /** "r5 to r7", "r5-r7": the word may come again. */
    private int roundWord(int at) {
        return Math.max(Cues.length(Cue.ROUND, tokens, at), Cues.length(Cue.ROUNDS, tokens, at));
    }

    private int listJoint(int at) {
        if (at >= tokens.size()) {
            return 0;
        }
        Token token = tokens.get(at);
        boolean and = List.of("and", "&", "+", "n").contains(token.folded());
        boolean comma = several && (token.is(",") || token.is("/")) || token.is("/") && token.glued();
        return and
                ? 1
                : comma ? 1 + (at + 1 < tokens.size() && tokens.get(at + 1).is("and") ? 1 : 0) : 0;
    }

    private void extend(boolean range, int last) {
        for (int round = range ? rounds.get(rounds.size() - 1) + 1 : last; round <= last; round++) {
            rounds.add(round);
        }
    }

    /** Whether a number after a joint is one more round, and no count. */
    private boolean joins(int joint, int value, int after) {
        int last = rounds.get(rounds.size() - 1);
        if (value <= last || !known.has(value) || value - last > 200) {
            return false;
        }
        boolean spacedDash =
                "-–—".contains(tokens.get(joint).folded()) && !tokens.get(joint).glued();
        boolean word = tokens.get(joint).word() && Cues.length(Cue.TO, tokens, joint) > 0;
        boolean dash = "-–—".contains(tokens.get(joint).folded());
        if (several) {
            return !(spacedDash && rounds.size() > 1) && !labelsNext(after);
        }
        if (word || roundWord(joint + 1) > 0) {
            return true;
        }
        // "r1 - 6" says what round 1 has, "r5-6 30" says two rounds
        return numberFollows(after)
                && !(dash && spacedDash && known.near(Optional.empty(), last, value, 0))
                && !labelsNext(after);
    }

    /** "rounds 5, 6 = …" is fine; "r5 and 6 = 36" after a count was said is another label, but here none was said yet. */
    private boolean labelsNext(int after) {
        return after < tokens.size() && tokens.get(after).is(")");
    }

    private boolean numberFollows(int after) {
        for (int next = after; next < Math.min(after + 8, tokens.size()); next++) {
            Token token = tokens.get(next);
            if (token.lineEnd() || ".!?;".contains(token.folded()) || roundWord(next) > 0) {
                return false;
            }
            if (NumberWords.at(tokens, next).isPresent() && !token.is("one")) {
                return true;
            }
        }
        return false;
    }
}
