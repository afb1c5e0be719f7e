package roundwright.sheet.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundwright.course.Lesson;
import roundwright.pattern.Round;
import roundwright.pattern.Steps;
import roundwright.wording.Wording;

/** What a student reads of a round, for pages that are put together elsewhere. */
public final class RoundWords {
    private static final Wording WORDS = Wording.of("sheet");

    private RoundWords() {}

    /** "Round 9". */
    public static String name(Round round) {
        return LineText.name(round);
    }

    /** The line as the pattern writes it. */
    public static String written(WorkItem item) {
        return LineText.written(item.line());
    }

    /** What to do, one instruction a sentence. */
    public static List<String> instructions(WorkItem item) {
        List<String> instructions = new ArrayList<>();
        item.round().ifPresent(round -> instructions.addAll(LineText.words(item.line(), round)));
        if (LineText.unread(item.line())) {
            instructions.add(WORDS.say("unread-student"));
        }
        return instructions;
    }

    /** What the round does to the count: "42 → 39 stitches". */
    public static String change(Round round) {
        return LineText.change(round);
    }

    /** The round's steps, where a chart of them shows more than its words. */
    public static Optional<Steps> chart(WorkItem item) {
        return item.round().flatMap(Round::steps).filter(ChartPages::worthDrawing);
    }

    /** What to mind in a lesson. */
    public static List<String> cautions(CourseWork work, Lesson lesson) {
        return Cautions.of(work, lesson);
    }
}
