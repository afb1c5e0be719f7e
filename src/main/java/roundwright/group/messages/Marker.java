package roundwright.group.messages;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundwright.group.messages.Mark.Kind;
import roundwright.notation.Span;

/** Goes through the tokens of a message and marks what matters; numbers that are no counts are left out. */
final class Marker {
    private static final Map<Cue, Kind> CUES = Map.of(
            Cue.UNFINISHED, Kind.UNFINISHED,
            Cue.PULLED_BACK, Kind.PULLED_BACK,
            Cue.RIGHT, Kind.RIGHT,
            Cue.ALL_RIGHT, Kind.ALL_RIGHT,
            Cue.SAME, Kind.SAME,
            Cue.HYPOTHETICAL, Kind.HYPOTHETICAL,
            Cue.DOUBT, Kind.DOUBT);

    private static final List<Map.Entry<Cue, Kind>> LATER_CUES = List.of(
            Map.entry(Cue.CORRECTION, Kind.CORRECTION),
            Map.entry(Cue.UNTIL, Kind.UNTIL),
            Map.entry(Cue.OR, Kind.OR),
            Map.entry(Cue.ALL, Kind.ALL),
            Map.entry(Cue.MINE, Kind.SELF),
            Map.entry(Cue.OTHER, Kind.OTHER),
            Map.entry(Cue.QUESTION, Kind.QUESTION_WORD));

    private final List<Token> tokens;
    private final BitSet noise = new BitSet();
    private final Known known;
    private final List<Mark> marks = new ArrayList<>();
    private int at;

    private Marker(List<Token> tokens, List<Span> noise, Known known) {
        this.tokens = tokens;
        noise.forEach(stretch -> this.noise.set(stretch.start(), stretch.end()));
        this.known = known;
    }

    /**
     * @param noise stretches whose words and numbers count for nothing
     */
    static List<Mark> mark(List<Token> tokens, List<Span> noise, Known known) {
        Marker marker = new Marker(tokens, noise, known);
        while (marker.at < tokens.size()) {
            marker.step();
        }
        return marker.marks;
    }

    private void step() {
        if (inNoise()) {
            at++;
        } else if (!(target() || sign() || shift() || rounds() || name() || part() || cue() || number())) {
            at++;
        }
    }

    private boolean inNoise() {
        return noise.get(tokens.get(at).span().start());
    }

    private boolean sign() {
        Token token = tokens.get(at);
        if (token.lineEnd()) {
            return add(Kind.JOINT, "\n", 1);
        }
        if (token.is(".")
                && at > 0
                && at + 1 < tokens.size()
                && Cues.is(Cue.ROUND, tokens.get(at - 1).folded())) {
            return false;
        }
        if (token.is(".") && listLabel()) {
            return add(Kind.JOINT, ")", 1);
        }
        if (token.is(".") || token.is("!") || token.is("?") || token.is(";")) {
            return end();
        }
        boolean joins = ",/:=&+()[→>-–—|*".contains(token.folded()) && token.kind() == Token.Kind.SIGN;
        boolean word = List.of("and", "but", "then", "n", "so").contains(token.folded());
        boolean versus = token.is("vs") || token.is("versus");
        return !shiftAt() && (joins || word || versus) && add(Kind.JOINT, versus ? "/" : token.folded(), 1);
    }

    /** "7. 42": the full stop after the number of a list. */
    private boolean listLabel() {
        return at > 0
                && tokens.get(at - 1).number()
                && tokens.get(at).glued()
                && at + 1 < tokens.size()
                && tokens.get(at + 1).number()
                && (at == 1
                        || tokens.get(at - 2).lineEnd()
                        || !tokens.get(at - 2).word());
    }

    private boolean end() {
        int after = at;
        StringBuilder signs = new StringBuilder();
        while (after < tokens.size() && ".!?;".contains(tokens.get(after).folded())) {
            signs.append(tokens.get(after++).folded());
        }
        return add(Kind.END, signs.toString(), after - at);
    }

    private boolean shiftAt() {
        return Shifts.at(tokens, at).isPresent();
    }

    private boolean shift() {
        Optional<Shifts.Found> found = Shifts.at(tokens, at);
        found.ifPresent(shift ->
                put(shift.clear() ? Kind.SHIFT : Kind.UNCLEAR_SHIFT, List.of(), shift.stitches(), "", shift.length()));
        return found.isPresent();
    }

    private boolean rounds() {
        Optional<RoundLabels.Found> found = RoundLabels.at(tokens, at, known);
        found.ifPresent(label -> put(Kind.ROUNDS, label.rounds(), 0, "", label.length()));
        return found.isPresent();
    }

    /** "should be 36": the phrase, some filling, a number, and the numbers that stand in a row with it. */
    private boolean target() {
        int length = Cues.length(Cue.TARGET, tokens, at);
        if (length == 0) {
            return false;
        }
        int next = at + length;
        int words = 0;
        while (next < tokens.size()
                && words++ < 4
                && (Cues.is(Cue.FILLER, tokens.get(next).folded())
                        || tokens.get(next).is(":"))) {
            next++;
        }
        Optional<NumberWords.Found> number = NumberWords.at(tokens, next);
        if (number.isEmpty() || Shifts.at(tokens, next).isPresent()) {
            return false;
        }
        put(
                Kind.TARGET,
                List.of(),
                number.get().value(),
                "",
                next - at + number.get().length());
        return true;
    }

    private boolean name() {
        Optional<NameFinder.Named> named = known.names().at(tokens, at);
        if (named.isEmpty() || Cues.length(Cue.ROUND, tokens, at) > 0) {
            return false;
        }
        put(Kind.NAME, List.of(), 0, named.get().name(), named.get().length());
        return true;
    }

    private boolean part() {
        Optional<NameFinder.Named> named = known.parts().at(tokens, at);
        named.ifPresent(part -> put(Kind.PART, List.of(), 0, part.name(), part.length()));
        return named.isPresent();
    }

    private boolean cue() {
        for (Map.Entry<Cue, Kind> cue : CUES.entrySet()) {
            if (Cues.at(cue.getKey(), tokens, at)) {
                return add(cue.getValue(), tokens.get(at).folded(), Cues.length(cue.getKey(), tokens, at));
            }
        }
        for (Map.Entry<Cue, Kind> cue : LATER_CUES) {
            if (Cues.at(cue.getKey(), tokens, at)) {
                return add(cue.getValue(), tokens.get(at).folded(), Cues.length(cue.getKey(), tokens, at));
            }
        }
        return false;
    }

    private boolean number() {
        Optional<NumberWords.Found> ordinal = NumberWords.ordinal(tokens, at);
        if (ordinal.isPresent()) {
            at += ordinal.get().length();
            return true;
        }
        Optional<NumberWords.Found> number = NumberWords.at(tokens, at);
        if (number.isEmpty()) {
            return false;
        }
        int after = at + number.get().length();
        boolean stitches =
                after < tokens.size() && Cues.is(Cue.STITCHES, tokens.get(after).folded());
        boolean pronoun = tokens.get(at).is("one") && !stitches;
        if (pronoun || number.get().value() > 9_999 || !stitches && isNoise(after)) {
            at = after;
            return true;
        }
        boolean expected = targetAfter(after);
        Kind kind = expected ? Kind.TARGET : stitches ? Kind.COUNT : Kind.NUMBER;
        put(kind, List.of(), number.get().value(), "", number.get().length() + (stitches ? 1 : 0));
        outOf();
        return true;
    }

    /** "42 expected, 41 got". */
    private boolean targetAfter(int after) {
        return after < tokens.size()
                && tokens.get(after).folded().matches("expected|wanted|needed")
                && NumberWords.at(tokens, after + 1).isEmpty();
    }

    /** "35/36", "35 of 36": the second is the count to reach. */
    private void outOf() {
        boolean of = at < tokens.size()
                && (tokens.get(at).is("of")
                        || tokens.get(at).is("/") && tokens.get(at).glued());
        Optional<NumberWords.Found> due = of ? NumberWords.at(tokens, at + 1) : Optional.empty();
        boolean chain = at >= 2 && tokens.get(at - 2).is("/")
                || due.isPresent()
                        && at + 1 + due.get().length() < tokens.size()
                        && tokens.get(at + 1 + due.get().length()).is("/");
        if (due.isPresent() && !chain && known.expects(due.get().value())) {
            put(Kind.TARGET, List.of(), due.get().value(), "", 1 + due.get().length());
        }
    }

    private boolean isNoise(int after) {
        boolean outOf = after + 1 < tokens.size()
                && tokens.get(after).is("of")
                && NumberWords.at(tokens, after + 1).isPresent();
        return !outOf && Noise.unitAfter(tokens, after) || Noise.wordBefore(tokens, at);
    }

    private boolean add(Kind kind, String text, int length) {
        put(kind, List.of(), 0, text, length);
        return true;
    }

    private void put(Kind kind, List<Integer> rounds, int value, String text, int length) {
        Span span = tokens.get(at).span().to(tokens.get(at + length - 1).span());
        marks.add(new Mark(kind, rounds, value, text, span, at, at + length));
        at += length;
    }
}
