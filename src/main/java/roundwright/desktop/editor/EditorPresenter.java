package roundwright.desktop.editor;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import roundwright.course.file.CourseFile;
import roundwright.course.file.FileProblem;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.work.Task;
import roundwright.notation.Severity;
import roundwright.notation.Span;
import roundwright.wording.Wording;
import roundwright.workbook.CourseEdit;

/**
 * The text being edited and what is wrong in it. The text is read away from the event thread; what was read last stands until
 * the next reading is done.
 */
public final class EditorPresenter {
    private static final Wording WORDS = Wording.of("desktop");

    private final Desk desk;
    private final Runnable read;
    private CourseFile file = CourseFile.read("");
    private String text = "";

    /** Tells the listener on the event thread when the text has been read. */
    public EditorPresenter(Desk desk, Runnable read) {
        this.desk = desk;
        this.read = read;
        desk.course().ifPresent(course -> {
            file = course.file();
            text = file.text();
        });
    }

    /** What the file holds now. */
    public String kept() {
        return desk.course().map(course -> course.kept().text()).orElse("");
    }

    /** Takes in a text as typed so far, reads it, and puts it into the file. */
    public void take(String typed) {
        if (typed.equals(text) && typed.equals(file.text())) {
            return;
        }
        text = typed;
        desk.work().submit(new Task<CourseFile>() {
            @Override
            public CourseFile away() {
                return CourseFile.read(typed);
            }

            @Override
            public void here(CourseFile result) {
                file = result;
                read.run();
                keep(result);
            }

            @Override
            public void failed(Exception failure) {
                desk.tell(String.valueOf(failure.getMessage()));
            }
        });
    }

    private void keep(CourseFile result) {
        desk.course()
                .filter(course -> !course.kept().text().equals(result.text()))
                .ifPresent(course -> {
                    String name = result.course().name().isBlank()
                            ? course.kept().name()
                            : result.course().name();
                    desk.know(result);
                    desk.apply(new CourseEdit.ReplaceCourseText(course.kept().id(), name, result.text()));
                });
    }

    /** Everything that should be known of the text that was read last, in the order of its places. */
    public List<FileProblem> problems() {
        return file.problems();
    }

    /** The text that the problems are of. */
    public String readText() {
        return file.text();
    }

    /** How many need to be mended, in a sentence. */
    public String summary() {
        long errors = problems().stream().filter(FileProblem::isError).count();
        long others = problems().size() - errors;
        if (problems().isEmpty()) {
            return WORDS.say("editor-all-right");
        }
        return WORDS.say("editor-summary", errors, others);
    }

    /** The problem at a place of the text, else the next one after it, else the first. */
    public Optional<FileProblem> near(int offset) {
        Optional<FileProblem> at = problems().stream()
                .filter(problem -> problem.problem().span().start() <= offset
                        && offset <= problem.problem().span().end())
                .min(Comparator.comparing(problem -> problem.problem().severity()));
        return at.or(() -> after(offset));
    }

    /** The next problem after a place, the first one after the last. */
    public Optional<FileProblem> after(int offset) {
        return problems().stream()
                .filter(problem -> problem.problem().span().start() > offset)
                .findFirst()
                .or(() -> problems().stream().findFirst());
    }

    /** What to write instead at a problem, and where. */
    public Optional<Instead> instead(FileProblem problem) {
        return problem.problem().suggestion().map(words -> new Instead(problem.replaceable(), words));
    }

    /** A stretch of the text and what to write in its place. */
    public record Instead(Span at, String words) {}

    /** Where the counts of rounds stand in the margin: the line of the text, from 0, and what to show. */
    public List<MarginCount> counts() {
        return MarginCount.of(file);
    }

    /** Whether a problem has to be mended. */
    public static boolean grave(FileProblem problem) {
        return problem.problem().severity() == Severity.ERROR;
    }
}
