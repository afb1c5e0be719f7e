package roundwright.command;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import roundwright.course.Course;
import roundwright.group.CountReport;
import roundwright.group.StudentId;
import roundwright.mistakes.Advice;
import roundwright.mistakes.Adviser;
import roundwright.mistakes.Explanation;
import roundwright.mistakes.Explanations;
import roundwright.mistakes.Sentences;
import roundwright.mistakes.State;
import roundwright.mistakes.learning.Learning;
import roundwright.mistakes.story.Rates;
import roundwright.wording.Wording;

/**
 * {@code mistakes}: explains every reported count of a table.
 *
 * <p>Without {@code --json} it says what lies behind each count that is off, what to ask and what to do. With it, one object a
 * report comes in the order of the file. Rows that cannot be used are reported, and make the exit status 1.
 */
@Command(
        name = "mistakes",
        description = "Explains every reported count: what probably happened, what to ask, what to do.")
final class MistakesCommand extends Verb {
    private static final Wording WORDS = Wording.of("command");

    /** A check that is expected to tell less, in nats, is not worth a line. */
    private static final double WORTH_SAYING = 0.05;

    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "COURSE.md", description = "The course.")
    private String courseName;

    @Parameters(
            index = "1",
            paramLabel = "COUNTS.csv",
            description = "The counts: student,part,round,count; CSV or .xlsx.")
    private String countsName;

    @Option(names = "--json", description = "One JSON object a report.")
    private boolean json;

    @Option(
            names = "--rates",
            paramLabel = "story|learned",
            defaultValue = "learned",
            description =
                    "Take the rates as they are before anything is learned, or learn them from the counts (the default).")
    private String rates;

    MistakesCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    int run() throws CommandException {
        if (!rates.equals("story") && !rates.equals("learned")) {
            throw new CommandException.Usage(WORDS.say("mistakes.no-rates", rates));
        }
        CourseSource source = CourseSource.read(courseName, terminal);
        int status = source.reportErrors(terminal);
        Course course = source.course();
        CountsFile counts = CountsFile.read(countsName, terminal, course.pattern());
        counts.problems().forEach(terminal.err()::println);
        explain(course, counts);
        return counts.problems().isEmpty() ? status : ExitStatus.INPUT_HAS_ERRORS;
    }

    /** Deals with one student after another; what is said of a row is printed as soon as all rows before it have been. */
    private void explain(Course course, CountsFile counts) {
        List<CountReport> reports =
                counts.rows().stream().map(CountsFile.Row::report).toList();
        Adviser adviser = new Adviser(course.pattern(), course.settings().pace());
        Sentences sentences = new Sentences(course.pattern().terms());
        Map<State, Integer> totals = new EnumMap<>(State.class);
        InOrder lines = new InOrder(terminal.out(), reports.size());
        for (int row = 0; row < reports.size(); row++) {
            if (saysNothing(reports.get(row))) {
                lines.put(row, "");
            }
        }
        Explanations.each(course.pattern(), reports, rates(course, reports), (student, explanations) -> {
            for (int index = 0; index < explanations.size(); index++) {
                Explanation explanation = explanations.get(index);
                totals.merge(explanation.state(), 1, Integer::sum);
                Optional<Advice> advice = adviser.of(explanation, explanations.subList(0, index));
                int row = (int) explanation.report().sequence() - 1;
                String name = counts.rows().get(row).student();
                lines.put(
                        row,
                        json
                                ? Json.line(MistakesJson.of(name, explanation, advice))
                                : words(name, explanation, advice, sentences));
            }
        });
        lines.end();
        if (!json) {
            printTotals(totals);
        }
    }

    /** There is nothing to explain: the work was pulled back and not counted, or the round is still being worked. */
    private static boolean saysNothing(CountReport report) {
        boolean back = report.count().isEmpty() && report.checks().isEmpty();
        return back || report.kind() == CountReport.Kind.UNFINISHED;
    }

    private void printTotals(Map<State, Integer> totals) {
        int right = totals.getOrDefault(State.RIGHT, 0);
        int off = totals.getOrDefault(State.OFF, 0);
        int again = totals.getOrDefault(State.CANNOT_EXPLAIN, 0);
        terminal.out().println(WORDS.say("mistakes.total", right + off + again, right, off, again));
    }

    private Function<StudentId, Rates> rates(Course course, List<CountReport> reports) {
        if (rates.equals("story")) {
            return student -> Rates.STORY;
        }
        Learning learning = Learning.of(course.pattern(), reports);
        return student -> learning.student(student).rates();
    }

    /** Nothing for a count that is right. */
    private static String words(String student, Explanation explanation, Optional<Advice> advice, Sentences sentences) {
        if (explanation.state() == State.RIGHT) {
            return "";
        }
        CountReport report = explanation.report();
        List<String> lines = new ArrayList<>();
        lines.add(WORDS.say(
                "mistakes.line",
                student,
                report.part(),
                report.round(),
                report.count().orElse(0),
                explanation.written().orElse(0),
                sentences.causes(explanation, explanation.soFar())));
        explanation
                .question()
                .filter(question -> question.gain() > WORTH_SAYING)
                .ifPresent(question -> lines.add("  " + WORDS.say("mistakes.ask", question.words())));
        advice.map(Advice::best).ifPresent(choice -> {
            lines.add("  " + WORDS.say("mistakes.do", choice.words(), Math.round(choice.minutes())));
            choice.line().ifPresent(line -> lines.add("  " + WORDS.say("mistakes.work", line)));
        });
        return String.join(System.lineSeparator(), lines);
    }
}
