package roundwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundwright.notation.LineReader;
import roundwright.notation.NameFinder;
import roundwright.notation.Problem;
import roundwright.notation.Severity;
import roundwright.notation.Span;
import roundwright.notation.Terms;
import roundwright.notation.WrittenLine;
import roundwright.wording.Beginning;
import roundwright.wording.Wording;

/** What a person should know of a line, in sentences with their places. */
final class LineProblems implements LineAccount {
    private static final Wording WORDS = Wording.of("pattern");

    private static final int LONGEST_QUOTE = 60;

    private final WrittenLine line;
    private final List<Problem> problems = new ArrayList<>();

    LineProblems(WrittenLine line) {
        this.line = line;
    }

    @Override
    public List<Problem> problems() {
        return problems;
    }

    /** The sums do not fit. */
    List<Problem> wrong(Interpretation way, Below below, List<String> mends) {
        if (!way.fitsBelow()) {
            boolean many = way.takes() > below.stitches();
            String message = many
                    ? WORDS.say("problem.uses-too-many", way.takes(), below.stitches())
                    : WORDS.say("problem.uses-too-few", way.takes(), below.stitches(), below.stitches() - way.takes());
            add(Severity.ERROR, many ? "uses-too-many" : "uses-too-few", steps(), message, mends);
        }
        if (!way.fitsStated()) {
            String message = WORDS.say("problem.makes-other-count", way.makes(), way.stated());
            List<String> offered = way.fitsBelow() ? mends : List.of();
            add(Severity.ERROR, "makes-other-count", count(), message, offered);
        }
        return problems;
    }

    void notUnderstood(Terms terms) {
        if (line.doubts().isEmpty()) {
            String example = roundwright.notation.Stitch.DOUBLE_CROCHET.written(terms);
            add(
                    Severity.ERROR,
                    "not-understood",
                    whole(),
                    WORDS.say("problem.not-understood-whole", example),
                    List.of());
        }
        if (line.text().length() > LineReader.LONGEST) {
            String message = WORDS.say("problem.line-too-long", LineReader.LONGEST);
            add(Severity.ERROR, "line-too-long", whole(), message, List.of());
            return;
        }
        for (Span doubt : line.doubts()) {
            String words = Beginning.shown(doubt.of(line.text()).strip(), LONGEST_QUOTE);
            add(Severity.ERROR, "not-understood", doubt, WORDS.say("problem.not-understood", words), List.of());
        }
    }

    void noRoomKnown() {
        add(Severity.WARNING, "no-room-known", steps(), WORDS.say("problem.no-room-known"), List.of());
    }

    void tooLarge() {
        add(Severity.ERROR, "too-large", whole(), WORDS.say("problem.too-large"), List.of());
    }

    void noSuchRound(int number, Span span) {
        add(Severity.ERROR, "no-such-round", span, WORDS.say("problem.no-such-round", number), List.of());
    }

    void otherTerms(Terms terms) {
        if (line.text().length() > LineReader.LONGEST) {
            return;
        }
        NameFinder.ofOtherTerms(line.text(), terms)
                .ifPresent(span -> add(
                        Severity.WARNING,
                        "other-terms",
                        span,
                        WORDS.say("problem.other-terms", span.of(line.text()), terms.other(), terms),
                        List.of()));
    }

    void numbering(Numbering.Oddity oddity) {
        boolean twice = oddity.missing() == 0;
        String message = twice
                ? WORDS.say("problem.numbered-twice", oddity.number())
                : WORDS.say("problem.number-missing", oddity.number(), oddity.before(), oddity.missing());
        add(
                twice ? Severity.WARNING : Severity.REMARK,
                twice ? "numbered-twice" : "number-missing",
                line.label().map(WrittenLine.Label::span).orElse(whole()),
                message,
                List.of());
    }

    void assumed(Decision decision, Span span) {
        boolean more = decision.option() == 0 == (decision.habit() == roundwright.notation.Habit.REPEAT_FROM);
        String words = span.of(line.text());
        add(
                Severity.REMARK,
                "assumed",
                span,
                more ? WORDS.say("problem.read-as-more", words) : WORDS.say("problem.read-as-in-all", words),
                List.of());
    }

    private void add(Severity severity, String key, Span span, String message, List<String> suggestions) {
        problems.add(new Problem(severity, key, span, message, suggestions));
    }

    private Span whole() {
        return new Span(0, line.text().length());
    }

    private Span steps() {
        return line.body().stream()
                .map(roundwright.notation.Node::span)
                .reduce(Span::to)
                .orElse(whole());
    }

    private Span count() {
        return Optional.of(line.counts())
                .filter(counts -> !counts.isEmpty())
                .map(counts -> counts.get(0).span())
                .orElse(whole());
    }
}
