package roundwright.command;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
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

    @Parameters(index = "1", paramLabel = "COUNTS.csv", description = "The counts: student,part,round,count.")
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

    /** A row's explanation with what came before it. */
    private record Explained(CountsFile.Row row, Explanation explanation, Optional<Advice> advice) {}

    @Override
    int run() throws CommandException {
        if (!rates.equals("story") && !rates.equals("learned")) {
            throw new CommandException.Usage(WORDS.say("mistakes.no-rates", rates));
        }
        CourseSource source = CourseSource.read(courseName, terminal);
        int status = source.reportErrors(terminal);
        Course course = source.course();
        CountsFile counts = CountsFile.read(TextSource.read(countsName, terminal), course.pattern());
        counts.problems().forEach(terminal.err()::println);
        List<Explained> explained = explain(course, counts);
        if (json) {
            explained.forEach(each -> terminal.out()
                    .println(Json.line(MistakesJson.of(each.row().student(), each.explanation(), each.advice()))));
        } else {
            print(course, explained);
        }
        return counts.problems().isEmpty() ? status : ExitStatus.INPUT_HAS_ERRORS;
    }

    private List<Explained> explain(Course course, CountsFile counts) {
        List<CountReport> reports =
                counts.rows().stream().map(CountsFile.Row::report).toList();
        Explanations explanations = Explanations.of(course.pattern(), reports, rates(course, reports));
        Map<Long, Explanation> bySequence = new HashMap<>();
        Map<StudentId, List<Explanation>> byStudent = new LinkedHashMap<>();
        for (CountReport report : reports) {
            byStudent.computeIfAbsent(report.student(), explanations::of);
        }
        byStudent
                .values()
                .forEach(list -> list.forEach(
                        explanation -> bySequence.put(explanation.report().sequence(), explanation)));
        Adviser adviser = new Adviser(course.pattern(), course.settings().pace());
        Map<StudentId, List<Explanation>> before = new HashMap<>();
        List<Explained> explained = new ArrayList<>();
        for (CountsFile.Row row : counts.rows()) {
            Explanation explanation = bySequence.get(row.report().sequence());
            if (explanation != null) {
                List<Explanation> earlier =
                        before.computeIfAbsent(row.report().student(), student -> new ArrayList<>());
                explained.add(new Explained(row, explanation, adviser.of(explanation, earlier)));
                earlier.add(explanation);
            }
        }
        return explained;
    }

    private Function<StudentId, Rates> rates(Course course, List<CountReport> reports) {
        if (rates.equals("story")) {
            return student -> Rates.STORY;
        }
        Learning learning = Learning.of(course.pattern(), reports);
        return student -> learning.student(student).rates();
    }

    private void print(Course course, List<Explained> explained) {
        Sentences sentences = new Sentences(course.pattern().terms());
        explained.stream()
                .filter(each -> each.explanation().state() != State.RIGHT)
                .forEach(each -> print(each, sentences));
        terminal.out()
                .println(WORDS.say(
                        "mistakes.total",
                        explained.size(),
                        count(explained, State.RIGHT),
                        count(explained, State.OFF),
                        count(explained, State.CANNOT_EXPLAIN)));
    }

    private static int count(List<Explained> explained, State state) {
        return (int) explained.stream()
                .filter(each -> each.explanation().state() == state)
                .count();
    }

    private void print(Explained each, Sentences sentences) {
        CountReport report = each.row().report();
        terminal.out()
                .println(WORDS.say(
                        "mistakes.line",
                        each.row().student(),
                        report.part(),
                        report.round(),
                        report.count().orElse(0),
                        each.explanation().written().orElse(0),
                        sentences.causes(each.explanation(), each.explanation().soFar())));
        each.explanation()
                .question()
                .filter(question -> question.gain() > WORTH_SAYING)
                .ifPresent(question -> terminal.out().println("  " + WORDS.say("mistakes.ask", question.words())));
        each.advice().map(Advice::best).ifPresent(choice -> {
            terminal.out().println("  " + WORDS.say("mistakes.do", choice.words(), Math.round(choice.minutes())));
            choice.line().ifPresent(line -> terminal.out().println("  " + WORDS.say("mistakes.work", line)));
        });
    }
}
