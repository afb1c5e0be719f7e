package roundwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundwright.notation.Terms;
import roundwright.notation.Vocabulary;
import roundwright.notation.WrittenLine;

/**
 * Reads a whole pattern as written: every line, its arithmetic against the round below, and what the writer's habits are.
 *
 * <p>{@code PatternReader.read(Optional.empty(), List.of(new PartText("Ball", lines)))}.
 */
public final class PatternReader {
    private PatternReader() {}

    /** Reads with the terms given, or found out from the words where they are not. */
    public static Pattern read(Optional<Terms> terms, List<PartText> parts) {
        return read(terms, parts, Habits.NONE);
    }

    /** As {@link #read(Optional, List)}, with some of the writer's habits settled by someone who knows. */
    public static Pattern read(Optional<Terms> terms, List<PartText> parts, Habits habits) {
        Statements statements = new Statements();
        statements.readAll(parts);
        List<List<WrittenLine>> written = parts.stream().map(statements::lines).toList();
        Terms holding = terms.orElseGet(() -> TermsFinder.find(written));
        Leaning leaning = new Leaning(statements.over(habits));
        List<Part> read = readAll(parts, written, holding, leaning, statements.vocabulary());
        if (leaning.undecided() && !leaning.settle().isEmpty()) {
            read = readAll(parts, written, holding, leaning, statements.vocabulary());
        }
        return new Pattern(holding, read);
    }

    /**
     * Reads bare lines: a blank line, or a heading that begins with {@code #}, begins a new part; every other line is one
     * line of the pattern. Parts are named by their heading, or by their number.
     */
    public static Pattern readBare(Optional<Terms> terms, CharSequence text) {
        return read(terms, BareLines.parts(text));
    }

    private static List<Part> readAll(
            List<PartText> parts,
            List<List<WrittenLine>> written,
            Terms terms,
            Leaning leaning,
            Vocabulary vocabulary) {
        List<Part> read = new ArrayList<>();
        PartReader before = null;
        for (int i = 0; i < parts.size(); i++) {
            PartReader reader = new PartReader(terms, leaning, vocabulary);
            reader = before == null ? reader : reader.after(before);
            read.add(reader.read(parts.get(i), written.get(i)));
            before = reader;
        }
        return read;
    }
}
