package roundwright.pattern;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import roundwright.notation.Habit;
import roundwright.notation.Kept;
import roundwright.notation.LineReader;
import roundwright.notation.ScannedLine;
import roundwright.notation.Statement;
import roundwright.notation.Vocabulary;
import roundwright.notation.WrittenLine;

/** What a pattern says about its own way of writing: words it defines, and whether its starting chains count. */
final class Statements {
    /** Marks are believed when they are seen in as many lines. */
    private static final int MARKED_LINES = 2;

    private final Vocabulary vocabulary = new Vocabulary();
    private final Map<SourceLine, Seen> seen = new IdentityHashMap<>();
    private final Map<Habit, Integer> startingChains = new EnumMap<>(Habit.class);

    /** A line that might have been a statement. */
    private record Seen(ScannedLine line, boolean tells) {}

    Vocabulary vocabulary() {
        return vocabulary;
    }

    void readAll(List<PartText> parts) {
        int marked = 0;
        boolean points = false;
        CountNoun noun = new CountNoun();
        LabelWords labels = new LabelWords();
        Kept kept = new Kept();
        for (PartText part : parts) {
            if (LeadingNumbers.runOn(part)) {
                vocabulary.defineNumbersAlone();
            }
            for (SourceLine line : part.lines()) {
                labels.see(line.text());
                kept.see(line.text());
                noun.see(line.text());
                points |= pointed(line.text());
                marked += Vocabulary.looksMarked(line.text()) ? 1 : 0;
            }
        }
        labels.define(vocabulary);
        if (points) {
            vocabulary.defineCountNoun("points");
        }
        for (PartText part : parts) {
            for (SourceLine line : part.lines()) {
                read(line);
            }
        }
        noun.word().ifPresent(vocabulary::defineCountNoun);
        kept.define(vocabulary);
        if (marked >= MARKED_LINES) {
            vocabulary.defineMarks();
        }
    }

    /** Whether the line calls a stitch a point, as translators of languages do that have one word for both. */
    private static boolean pointed(String text) {
        return text.contains("same point") || text.contains("next point") || text.contains("low point");
    }

    private void read(SourceLine line) {
        if (!Statement.possible(line.text())) {
            return;
        }
        ScannedLine scanned = new ScannedLine(line.text(), vocabulary);
        Statement statement = Statement.read(scanned);
        seen.put(line, new Seen(scanned, statement.tells()));
        if (statement.startingChain().isPresent()) {
            int option = statement.startingChain().getAsInt();
            startingChains.put(statement.single() ? Habit.SINGLE_CHAIN : Habit.STARTING_CHAIN, option);
            if (!statement.single()) {
                startingChains.put(Habit.TALL_CHAIN, option);
            }
        }
    }

    List<WrittenLine> lines(PartText part) {
        List<WrittenLine> lines = new ArrayList<>(part.lines().size());
        for (SourceLine line : part.lines()) {
            lines.add(read(line, seen.get(line)));
        }
        return lines;
    }

    private WrittenLine read(SourceLine line, Seen before) {
        if (before == null) {
            return LineReader.read(line.text(), vocabulary);
        }
        return before.tells() ? WrittenLine.telling(line.text()) : LineReader.read(before.line());
    }

    /** The habits that someone settled, and those that the pattern itself settles where no one did. */
    Habits over(Habits habits) {
        Habits all = habits;
        for (Map.Entry<Habit, Integer> said : startingChains.entrySet()) {
            boolean open = !habits.overruled().containsKey(said.getKey());
            all = open ? all.with(said.getKey(), said.getValue()) : all;
        }
        return all;
    }
}
