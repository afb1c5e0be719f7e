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

    /** The text of a mark that says that what was said is wrong. */
    static final String WRONG = "wrong";

    private final List<Token> tokens;
    private final BitSet noise = new BitSet();
    private final Known known;
    private final List<Mark> marks = new ArrayList<>();
    private final List<String> speakers;
    private int at;

    private Marker(List<Token> tokens, List<Span> noise, Known known, List<String> speakers) {
        this.speakers = speakers;
        this.tokens = tokens;
        noise.forEach(stretch -> this.noise.set(stretch.start(), stretch.end()));
        this.known = known;
    }

    /**
     * @param speakers students whose message it is: initials are theirs before they are another's
     * @param noise stretches whose words and numbers count for nothing
     */
    static List<Mark> mark(List<Token> tokens, List<Span> noise, Known known, List<String> speakers) {
        Marker marker = new Marker(tokens, noise, known, speakers);
        while (marker.at < tokens.size()) {
            marker.step();
        }
        return marker.marks;
    }

    private void step() {
        if (inNoise()) {
            at++;
        } else if (!(lineNumber()
                || target()
                || sign()
                || shift()
                || rounds()
                || name()
                || part()
                || again()
                || relative()
                || noBetween()
                || exclaims()
                || ok()
                || cue()
                || number())) {
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
        if (token.is(".") && at > 0 && at + 1 < tokens.size() && Cues.is(Cue.ROUND, tokens.get(at - 1))) {
            return false;
        }
        if (token.is(".") && listLabel()) {
            return add(Kind.JOINT, ")", 1);
        }
        if (token.is(".") || token.is("!") || token.is("?") || token.is(";")) {
            return end();
        }
        boolean star =
                token.is("*") && at + 1 < tokens.size() && tokens.get(at + 1).glued();
        if (star && !(at > 0 && token.glued())) {
            return add(Kind.CORRECTION, "*", 1);
        }
        boolean joins = ",/:=&+()[→>-–—|*".contains(token.folded()) && token.kind() == Token.Kind.SIGN;
        boolean word = List.of("and", "but", "then", "n", "so").contains(token.folded())
                && !Cues.at(Cue.UNFINISHED, tokens, at);
        boolean versus = token.is("vs") || token.is("versus");
        return (joins || word || versus) && !shiftAt() && add(Kind.JOINT, versus ? "/" : token.folded(), 1);
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
        int length = Math.max(Cues.length(Cue.TARGET, tokens, at), source());
        if (length == 0 || afterTarget()) {
            return false;
        }
        int next = at + length;
        int words = 0;
        while (next < tokens.size()
                && words++ < 4
                && (Cues.is(Cue.FILLER, tokens.get(next)) || tokens.get(next).is(":"))) {
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

    /** "the paper says": what the pattern is written on, and a word for saying. */
    private int source() {
        int noun = Cues.length(Cue.SOURCE, tokens, at);
        int verb = noun == 0 ? 0 : Cues.length(Cue.SAYS, tokens, at + noun);
        boolean alone = noun == 1 && tokens.get(at).matches("pattern|sheet|chart|book|plan");
        return verb > 0 || alone ? noun + verb : 0;
    }

    /** "should be 42, not 43": the second number is what there is. */
    private boolean afterTarget() {
        Mark last = marks.isEmpty() ? null : marks.get(marks.size() - 1);
        return tokens.get(at).is("not")
                && last != null
                && (last.is(Kind.TARGET)
                        || last.is(Kind.JOINT)
                                && marks.size() > 1
                                && marks.get(marks.size() - 2).is(Kind.TARGET));
    }

    /** "did round 6 again", "made the head new", "pulled round 5 out". */
    private boolean again() {
        String verb = tokens.get(at).folded();
        boolean makes = Shape.matches(verb, "did|do|made|make|worked|crocheted");
        if (!makes
                && !Shape.matches(verb, "pulled|pull|pulling|took|take|taken|taking|ripped|rip|ripping|tore|undid")) {
            return false;
        }
        for (int next = at + 1; next < Math.min(tokens.size(), at + 6); next++) {
            Token token = tokens.get(next);
            boolean count = token.number()
                    && !Cues.is(Cue.ROUND, tokens.get(next - 1))
                    && !Cues.is(Cue.ROUNDS, tokens.get(next - 1));
            if (token.lineEnd() || token.kind() == Token.Kind.SIGN || count) {
                return false;
            }
            boolean anew = token.is("time") && tokens.get(next - 1).matches("more|other|second|another|third|last");
            if (makes && anew || token.matches(makes ? "again|new|anew|afresh|over" : "out|back|apart|down|undone")) {
                return add(Kind.PULLED_BACK, "again", 1);
            }
        }
        return false;
    }

    /** "my husband makes it 35": a count of the student's work, but not the student's. */
    private boolean relative() {
        if (!Cues.is(Cue.RELATIVE, tokens.get(at))) {
            return false;
        }
        for (int next = at + 1; next < Math.min(tokens.size(), at + 5); next++) {
            if (NumberWords.at(tokens, next).isPresent()) {
                return tokens.get(at + 1).matches("counted|counts|makes|made|says|said|gets|got|has|thinks|found|sees")
                        && add(Kind.OR, "relative", 1);
            }
        }
        return false;
    }

    private boolean name() {
        Optional<NameFinder.Named> named = known.names().at(tokens, at).or(this::initials);
        if (named.isEmpty() || Cues.length(Cue.ROUND, tokens, at) > 0) {
            return false;
        }
        put(Kind.NAME, List.of(), 0, named.get().name(), named.get().length());
        return true;
    }

    /** "C 30 I 31", "D & S both 24": initials where a count or another student's follow. */
    private Optional<NameFinder.Named> initials() {
        Optional<String> student = known.names().initials(tokens, at, speakers);
        boolean lone = tokens.get(at).matches("[ai]");
        boolean led =
                at == 0 || !tokens.get(at - 1).word() || tokens.get(at - 1).matches("and|n|for");
        int next = at + 1;
        boolean sign = next < tokens.size() && tokens.get(next).matches("[:=&-]");
        boolean work = next < tokens.size()
                && (NumberWords.at(tokens, next).isPresent()
                        || RoundLabels.at(tokens, next, known).isPresent()
                        || tokens.get(next).matches("and|n|both|has|got"));
        return student.filter(name -> led
                        && (sign
                                || work
                                        && (!lone
                                                || next < tokens.size()
                                                        && tokens.get(next).number())))
                .map(name -> new NameFinder.Named(name, 1));
    }

    private boolean part() {
        Optional<NameFinder.Named> named = known.parts().at(tokens, at);
        named.ifPresent(part -> put(Kind.PART, List.of(), 0, part.name(), part.length()));
        return named.isPresent();
    }

    /** "34 no 35". */
    private boolean noBetween() {
        return tokens.get(at).matches("no|nope")
                && (numberJustBefore() || marks.isEmpty())
                && NumberWords.at(tokens, at + 1).isPresent()
                && add(Kind.CORRECTION, "no", 1);
    }

    /** "R1-R3 ok": a word that says so only just after the rounds. */
    private boolean ok() {
        boolean justAfter = !marks.isEmpty()
                && marks.get(marks.size() - 1).is(Kind.ROUNDS)
                && marks.get(marks.size() - 1).after() == at;
        boolean says = tokens.get(at).matches("ok|okay|fine|good|[✓✔✅👍]");
        boolean goesOn = at + 1 < tokens.size()
                && (tokens.get(at + 1).is("?") || NumberWords.at(tokens, at + 1).isPresent());
        return justAfter && says && !goesOn && add(Kind.RIGHT, "ok", 1);
    }

    /** "Oh. 42 then", "ah! 12". */
    private boolean exclaims() {
        return tokens.get(at).matches("o+h+|a+h+|aha|hm+")
                && at + 1 < tokens.size()
                && (tokens.get(at + 1).matches("[.!,]|its|it")
                        || tokens.get(at + 1).number())
                && add(Kind.CORRECTION, "oh", 1);
    }

    private boolean afterNo() {
        Mark last = marks.isEmpty() ? null : marks.get(marks.size() - 1);
        return last != null && last.is(Kind.CORRECTION) && last.text().equals("no");
    }

    private boolean numberJustBefore() {
        int last = marks.size() - 1;
        last -= last > 0
                        && marks.get(last).is(Kind.JOINT)
                        && marks.get(last).text().equals(",")
                ? 1
                : 0;
        return last >= 0 && marks.get(last).number() && at - marks.get(last).after() <= 1;
    }

    private boolean cue() {
        if (tokens.get(at).begun().isEmpty()) {
            return false;
        }
        for (Map.Entry<Cue, Kind> cue : CUES.entrySet()) {
            if (Cues.at(cue.getKey(), tokens, at)) {
                return add(cue.getValue(), tokens.get(at).folded(), beforeRound(Cues.length(cue.getKey(), tokens, at)));
            }
        }
        for (Map.Entry<Cue, Kind> cue : LATER_CUES) {
            if (Cues.at(cue.getKey(), tokens, at)) {
                int length = Cues.length(cue.getKey(), tokens, at);
                String text = tokens.get(at + length - 1).matches("wrong|first|initially|originally")
                        ? WRONG
                        : tokens.get(at).folded();
                return add(cue.getValue(), text, length);
            }
        }
        return false;
    }

    /** "I'm on round" ends before "round", which belongs to the number after it. */
    private int beforeRound(int length) {
        boolean round = length > 1 && Cues.is(Cue.ROUND, tokens.get(at + length - 1));
        return round ? length - 1 : length;
    }

    /** "1. Anneliese R8 42": the number of a line, before a name or a round. */
    private boolean lineNumber() {
        boolean begins = at == 0 || tokens.get(at - 1).lineEnd();
        boolean numbered = begins
                && tokens.get(at).number()
                && at + 2 < tokens.size()
                && tokens.get(at + 1).matches("[.)]")
                && tokens.get(at + 1).glued();
        int next = at + 2;
        if (numbered
                && (known.names().at(tokens, next).isPresent()
                        || RoundLabels.at(tokens, next, known).isPresent())) {
            at += 2;
            return true;
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
        boolean stitches = after < tokens.size()
                && Cues.is(Cue.STITCHES, tokens.get(after))
                && !(after + 1 < tokens.size()
                        && tokens.get(after + 1).matches("markers?|holders?|guides?|counters?|dictionary|books?"));
        if (onRound(number.get(), stitches)) {
            return true;
        }
        boolean pronoun = tokens.get(at).is("one") && !stitches;
        if (pronoun || number.get().value() > 9_999 || !stitches && isNoise(after)) {
            at = after;
            return true;
        }
        boolean expected = targetAfter(after);
        Kind kind = expected ? Kind.TARGET : stitches ? Kind.COUNT : Kind.NUMBER;
        put(kind, List.of(), number.get().value(), "", number.get().length() + (stitches ? 1 : 0));
        outOf(number.get().value());
        partOfRound(number.get().value());
        return true;
    }

    /** "I'm on 25": the round being worked. */
    private boolean onRound(NumberWords.Found number, boolean stitches) {
        int after = at + number.length();
        boolean bound = after < tokens.size() && tokens.get(after).matches("for|on|in|at|of|the|[(:=]");
        if (stitches || bound || !known.has(number.value()) || !Cues.onRound(tokens, at)) {
            return false;
        }
        int from = at;
        put(Kind.UNFINISHED, List.of(), 0, "on", number.length());
        at = from;
        put(Kind.ROUNDS, List.of(number.value()), 0, "", number.length());
        return true;
    }

    /** "20 done", "15 stitches in", "10 stitches of round 8": so many that no round ends with. */
    private void partOfRound(int value) {
        boolean some = !known.expects(value) && !known.expects(value - 1) && !known.expects(value + 1);
        if (some && at < tokens.size() && tokens.get(at).matches("done|in|into|of|made|worked|along")) {
            boolean word = tokens.get(at).matches("done|made|worked|along");
            boolean round = RoundLabels.at(tokens, at + 1, known).isPresent();
            boolean into = tokens.get(at).matches("into|of");
            if (word || into && round || !into && !round) {
                add(Kind.UNFINISHED, "part", 1);
            }
        }
    }

    /** "42 expected, 41 got". */
    private boolean targetAfter(int after) {
        boolean due = after < tokens.size()
                && tokens.get(after).matches("expected|wanted|needed|due")
                && NumberWords.at(tokens, after + 1).isEmpty();
        boolean goal = after + 2 < tokens.size()
                && tokens.get(after).matches("is|was|being")
                && Shape.matches(
                        tokens.get(after + 1).folded() + " "
                                + tokens.get(after + 2).folded(),
                        "the (target|goal|aim|number|pattern|total)|what (the|it|i|we|was)|due .*|needed .*");
        boolean miscounted = after + 1 < tokens.size()
                && tokens.get(after).matches("was|is")
                && (tokens.get(after + 1).is("wrong")
                        || after + 2 < tokens.size()
                                && tokens.get(after + 2).matches("miscount|mistake|typo|slip|error"));
        return due || goal || miscounted;
    }

    /** "35/36", "35 of 36": the second is the count to reach. */
    private void outOf(int value) {
        boolean of = at < tokens.size()
                && (tokens.get(at).is("of")
                        || tokens.get(at).is("/") && tokens.get(at).glued());
        boolean the = of && at + 1 < tokens.size() && tokens.get(at + 1).matches("the|my");
        Optional<NumberWords.Found> due = of ? NumberWords.at(tokens, at + (the ? 2 : 1)) : Optional.empty();
        boolean chain = at >= 2 && tokens.get(at - 2).is("/")
                || due.isPresent()
                        && at + 1 + due.get().length() < tokens.size()
                        && tokens.get(at + 1 + due.get().length()).is("/");
        boolean most = due.isPresent() && 2 * value >= due.get().value()
                || !tokens.get(Math.min(at, tokens.size() - 1)).is("/");
        if (due.isPresent() && !chain && most && known.expects(due.get().value())) {
            put(
                    Kind.TARGET,
                    List.of(),
                    due.get().value(),
                    "",
                    (the ? 2 : 1) + due.get().length());
        }
    }

    private boolean isNoise(int after) {
        boolean outOf = after + 1 < tokens.size()
                && tokens.get(after).is("of")
                && NumberWords.at(tokens, after + (tokens.get(after + 1).is("the") ? 2 : 1))
                        .isPresent();
        boolean ofPart = after < tokens.size()
                && tokens.get(after).is("of")
                && (known.parts()
                                .at(tokens, Math.min(after + 1, tokens.size() - 1))
                                .isPresent()
                        || known.parts()
                                .at(tokens, Math.min(after + 2, tokens.size() - 1))
                                .isPresent());
        return !outOf && !ofPart && Noise.unitAfter(tokens, after) || Noise.wordBefore(tokens, at) && !afterNo();
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
