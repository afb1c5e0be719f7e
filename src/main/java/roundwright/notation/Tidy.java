package roundwright.notation;

import java.util.ArrayList;
import java.util.List;

/** Takes out of a line's tokens what only decorates it, and reads arrows between steps as the commas they stand for. */
final class Tidy {
    /** A label in italics is no longer than this. */
    private static final int LONGEST_LABEL = 7;

    private final List<Token> tokens;

    private Tidy(List<Token> tokens) {
        this.tokens = tokens;
    }

    static List<Token> of(List<Token> tokens) {
        List<Token> kept = tokens;
        Tidy tidy = new Tidy(tokens);
        if (tidy.bold()) {
            kept = tokens.stream().filter(token -> !token.is(Meaning.STARS)).toList();
        } else if (tidy.italics() > 0) {
            kept = tidy.without(tidy.first(), tidy.italics());
        }
        int adverb = new Tidy(kept).adverb();
        if (adverb >= 0) {
            kept = new ArrayList<>(kept);
            kept.remove(adverb);
        }
        return new Tidy(kept).arrows();
    }

    private Meaning meaning(int place) {
        return place >= 0 && place < tokens.size() ? tokens.get(place).meaning() : Meaning.FINISH;
    }

    private int first() {
        int first = 0;
        while (meaning(first) == Meaning.DASH || meaning(first) == Meaning.MARK) {
            first++;
        }
        return first;
    }

    /** Whether the line begins with two asterisks: they make words bold and repeat nothing. */
    private boolean bold() {
        return meaning(first()) == Meaning.STARS;
    }

    /** Where the asterisk stands that ends a label in italics ("*Rnd 3:* …"); 0 where there is none. */
    private int italics() {
        int first = first();
        boolean label = meaning(first) == Meaning.STAR && meaning(first + 1) == Meaning.ROUND;
        for (int place = first + 2; label && place < first + LONGEST_LABEL; place++) {
            if (meaning(place) == Meaning.STAR) {
                return place;
            }
        }
        return 0;
    }

    private List<Token> without(int one, int other) {
        List<Token> kept = new ArrayList<>(tokens);
        kept.remove(other);
        kept.remove(one);
        return kept;
    }

    /** Where "first" stands near the line's beginning and says when, not where: "ok so first you do 6 dc"; else -1. */
    private int adverb() {
        for (int place = 0; place < LONGEST_LABEL && place < tokens.size(); place++) {
            boolean when = meaning(place + 1) == Meaning.WORK || meaning(place + 1) == Meaning.COMMA;
            if (meaning(place) == Meaning.FIRST && when) {
                return place;
            }
        }
        return -1;
    }

    private List<Token> arrows() {
        List<Token> all = null;
        int angles = 0;
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            angles += token.is(Meaning.OPEN) && token.value() == '<' ? 1 : 0;
            boolean arrow = token.is(Meaning.EQUALS) && token.value() != '=' && stepAfter(i);
            boolean angle = token.is(Meaning.SHUT) && token.value() == '>' && --angles < 0;
            if (arrow || angle) {
                angles = Math.max(0, angles);
                all = all == null ? new ArrayList<>(tokens) : all;
                all.set(i, Token.mark(Meaning.COMMA, ',', token.start(), token.end(), token.spaced()));
            }
        }
        return all == null ? tokens : all;
    }

    /** Whether a step that is not the count comes after the mark. */
    private boolean stepAfter(int mark) {
        int place = mark + 1;
        while (meaning(place) == Meaning.WORK || meaning(place) == Meaning.THE) {
            place++;
        }
        if (meaning(place) == Meaning.OPEN || meaning(place) == Meaning.STAR) {
            return meaning(place + 1) != Meaning.NUMBER
                    || meaning(place + 2).makes() && meaning(place + 3) != Meaning.SHUT;
        }
        boolean numbered = meaning(place) == Meaning.NUMBER;
        while (numbered && (meaning(place + 1) == Meaning.ST || meaning(place + 1) == Meaning.FILLER)) {
            place++;
        }
        boolean makes = meaning(numbered ? place + 1 : place).makes() || numbered && meaning(place + 1) == Meaning.IN;
        return makes
                && !(numbered
                        && (meaning(place + 2) == Meaning.FINISH
                                || meaning(place + 2).parts() && last(place + 2)));
    }

    private boolean last(int from) {
        for (int place = from; place < tokens.size(); place++) {
            if (meaning(place).makes() && meaning(place) != Meaning.SLIP && meaning(place) != Meaning.CHAIN) {
                return false;
            }
        }
        return true;
    }
}
