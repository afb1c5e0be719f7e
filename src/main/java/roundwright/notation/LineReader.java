package roundwright.notation;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import roundwright.notation.WrittenLine.Label;
import roundwright.notation.WrittenLine.Reference;

/** Reads one written line into its tree, without regard to the lines around it. */
public final class LineReader {
    /** No written round is longer than this, in characters; what is, is no line of a pattern. */
    public static final int LONGEST = 20_000;

    private LineReader() {}

    private static WrittenLine tooLong(String text) {
        return new WrittenLine(
                text,
                Optional.empty(),
                List.of(),
                Set.of(),
                List.of(),
                Optional.empty(),
                List.of(new Span(0, text.length())),
                Set.of(),
                Set.of(),
                true,
                0,
                0,
                Optional.empty(),
                false,
                WrittenLine.Chain.NONE);
    }

    /** The line's label, tree, counts and all that its words alone tell. Never fails, whatever the text. */
    public static WrittenLine read(String text) {
        return read(text, new Vocabulary());
    }

    /** As {@link #read(String)}, in a pattern with words of its own. */
    public static WrittenLine read(String text, Vocabulary vocabulary) {
        return read(new ScannedLine(text, vocabulary));
    }

    /** As {@link #read(String)}, of a line that may have been looked at before. */
    public static WrittenLine read(ScannedLine scanned) {
        String text = scanned.text();
        if (text.length() > LONGEST) {
            return tooLong(text);
        }
        Vocabulary vocabulary = scanned.vocabulary();
        Reading line = new Reading(scanned);
        LabelReader labels = new LabelReader(line.cursor);
        Optional<Label> label = labels.read();
        if (label.isEmpty() && vocabulary.numbersAlone()) {
            label = labels.numberAlone();
        }
        countBefore(line, label);
        line.labelled = label.isPresent();
        line.body = line.cursor.at;
        Optional<Reference> reference = new ReferenceReader(line).read();
        line.stitches = reference.isPresent();
        line.taken = reference.isPresent();
        List<Node> body = new SequenceReader(line).line();
        if (!line.labelled && !line.taken && (!line.beyondSlips && !(line.ring && line.worked) || prose(line))) {
            line.stitches = false;
            line.doubts.clear();
        }
        unread(line, label, body);
        return new WrittenLine(
                text,
                label,
                body,
                OpenHabits.of(body),
                line.counts,
                reference,
                line.doubts,
                line.features,
                line.names,
                line.stitches,
                line.rounds,
                TermsEvidence.of(line),
                said(line),
                line.hole,
                chain(line));
    }

    /** The chain that the line begins with: a ring of chains, one that it works along, or all that it makes. */
    private static WrittenLine.Chain chain(Reading line) {
        boolean worked = line.features.contains(Feature.FOUNDATION_CHAIN);
        int along = line.chainsClear && (worked || !line.stitches) ? line.chains : 0;
        boolean round = line.features.contains(Feature.OVAL);
        return new WrittenLine.Chain(line.ringChains > 0 ? line.ringChains : along, round ? 0 : line.from);
    }

    /** Doubts the whole of a line that closes a piece, or that has a label and no step in it. */
    private static void unread(Reading line, Optional<Label> label, List<Node> body) {
        if (!line.labelled && seam(line)) {
            line.doubt(new Span(0, line.text.length()));
        }
        if (line.labelled && !line.stitches && onlyChain(line, body)) {
            return;
        }
        boolean counted = line.labelled && !line.stitches && countAtEnd(line);
        if (line.labelled && !line.stitches && (counted || !onlyTells(line, label.get()))) {
            line.stitches = true;
            line.doubt(new Span(
                    label.get().span().end(), Math.max(label.get().span().end(), line.text.length())));
        }
    }

    /** "Rnd 1: Ch 60, join = 60": takes the chains of a line that makes nothing else, and counts them, for what it makes. */
    private static boolean onlyChain(Reading line, List<Node> body) {
        boolean only = line.chains >= StartReader.SHORTEST_RING
                && line.doubts.isEmpty()
                && line.counts.stream().anyMatch(count -> count.value() == line.chains);
        if (only) {
            boolean told = !body.isEmpty() && body.get(0) instanceof Node.Note;
            Span span = told ? body.remove(0).span() : new Span(0, line.text.length());
            body.add(
                    0,
                    new Node.Work(
                            span,
                            Node.Manner.CHAIN,
                            StitchName.CHAIN,
                            0,
                            1,
                            Times.of(line.chains),
                            Hold.BOTH,
                            Node.Target.NEXT,
                            ""));
            line.stitches = true;
        }
        return only;
    }

    /** "Rnd 9: hen stitch around (40)": takes in a count at the line's end, which shows that the line is a round. */
    private static boolean countAtEnd(Reading line) {
        Cursor cursor = line.cursor;
        cursor.at = cursor.size();
        cursor.at -= cursor.is(-1, Meaning.STOP) ? 1 : 0;
        boolean unit = cursor.is(-2, Meaning.ST) || cursor.is(-2, Meaning.STITCH);
        Token number = cursor.peek(unit ? -3 : -2);
        boolean found =
                cursor.is(-1, Meaning.SHUT) && number.is(Meaning.NUMBER) && cursor.is(unit ? -4 : -3, Meaning.OPEN);
        if (found && line.counts.isEmpty()) {
            line.counts.add(new WrittenLine.Count(number.value(), number.span(), true));
        }
        return found;
    }

    private static Optional<WrittenLine.Said> said(Reading line) {
        return line.startSaid.isPresent()
                ? Optional.of(new WrittenLine.Said(line.startHabit, line.startSaid.getAsInt()))
                : Optional.empty();
    }

    /** "(18) Rnd 3: …": the count stands before the label. */
    private static void countBefore(Reading line, Optional<Label> label) {
        if (label.isEmpty()) {
            return;
        }
        Token open = line.cursor.peek(-line.cursor.at);
        Token number = line.cursor.peek(1 - line.cursor.at);
        boolean count = open.is(Meaning.OPEN)
                && number.is(Meaning.NUMBER)
                && number.end() < label.get().span().start();
        if (count) {
            line.counts.add(new WrittenLine.Count(number.value(), number.span(), true));
        }
    }

    /** Whether a line with a label has an instruction in it that is no round: "Rnd 12: fasten off". */
    private static boolean onlyTells(Reading line, Label label) {
        Cursor cursor = line.cursor;
        cursor.at = 0;
        boolean words = false;
        for (int i = 0; i < cursor.size(); i++) {
            Token token = cursor.peek(i);
            switch (token.meaning()) {
                case NOTE, MARKER, COLOUR, JOIN, TURN, CLOSE, CHAIN -> {
                    return token.feature() != Feature.OTHER && line.counts.isEmpty();
                }
                default ->
                    words |= token.start() >= label.span().end()
                            && !token.meaning().parts();
            }
        }
        return !words && line.counts.isEmpty();
    }

    /** Whether the line tells of amounts and names no stitch but in passing: "3 x 100 g cones of 5 mm cord". */
    private static boolean measures(Reading line) {
        Cursor cursor = line.cursor;
        boolean measure = false;
        for (int i = 0; i < cursor.size(); i++) {
            boolean figure = cursor.is(i - 1, Meaning.NUMBER)
                    || Character.isDigit(line.text.charAt(cursor.peek(i).start()));
            measure |= cursor.is(i, Meaning.MEASURE) && figure;
            Meaning after = cursor.peek(i + 1).meaning();
            if (cursor.is(i, Meaning.NUMBER)
                    && (after.makes()
                            || after == Meaning.TIMES
                                    && cursor.peek(i + 2).meaning().makes())) {
                return false;
            }
        }
        return measure;
    }

    /** Whether the line tells of closing or flattening a piece: "flatten, sc 5 through both sides". */
    private static boolean seam(Reading line) {
        Cursor cursor = line.cursor;
        cursor.at = 0;
        boolean layers = false;
        for (int i = 0; i < cursor.size(); i++) {
            layers |= cursor.is(i, Meaning.LAYERS);
        }
        return layers && cursor.is(Meaning.UNKNOWN) && line.counts.isEmpty();
    }

    /** Whether the line is a heading: a few words without a number, one of them not of the trade, or the name of a group alone ("SHELL"). */
    private static boolean title(Cursor cursor) {
        boolean strange = false;
        int words = 0;
        for (int i = 0; i < cursor.size(); i++) {
            Meaning meaning = cursor.peek(i).meaning();
            if (meaning == Meaning.MARK) {
                continue;
            }
            if (meaning.parts() || meaning == Meaning.NUMBER || meaning == Meaning.OPEN) {
                return false;
            }
            strange |= meaning == Meaning.UNKNOWN;
            words++;
        }
        return strange || words == 1 && cursor.has(Meaning.SPECIAL);
    }

    /** Whether a line without a label only talks: it has words that are not of rounds, and nothing that says how many. */
    private static boolean prose(Reading line) {
        Cursor cursor = line.cursor;
        cursor.at = 0;
        if (measures(line) || talk(cursor)) {
            return true;
        }
        int strange = line.text.startsWith("I ") || line.text.startsWith("I'") || title(cursor) ? 2 : 0;
        boolean note = false;
        for (int i = 0; i < cursor.size(); i++) {
            Meaning after = cursor.peek(i + 1).meaning();
            switch (cursor.peek(i).meaning()) {
                case UNKNOWN, NOT -> strange++;
                case NOTE -> note = true;
                case NUMBER -> {
                    if (after.makes() || after == Meaning.TIMES) {
                        return false;
                    }
                }
                case EACH, AROUND, TOEND, MAGIC, RING, REPEAT, STAR, HOOK, EVEN, EVENLY, SAME -> {
                    return false;
                }
                default -> {}
            }
        }
        return strange >= 2 || note && strange > 0;
    }

    /** Whether the line has so many words that are not of rounds that it only talks, whatever else it has. */
    private static boolean talk(Cursor cursor) {
        int strange = 0;
        for (int i = 0; i < cursor.size(); i++) {
            strange += cursor.is(i, Meaning.UNKNOWN) ? 1 : 0;
            if (cursor.is(i, Meaning.NUMBER) && cursor.peek(i + 1).meaning().makes()) {
                return false;
            }
        }
        return strange >= 4 || strange >= 3 && 3 * strange >= cursor.size();
    }
}
