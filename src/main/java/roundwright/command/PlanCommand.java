package roundwright.command;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import roundwright.course.Course;
import roundwright.course.file.CourseEdits;
import roundwright.course.planning.CannotPlan;
import roundwright.course.planning.LessonsOfPlan;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlanItems;
import roundwright.course.planning.PlanRemark;
import roundwright.course.planning.PlanRemarks;
import roundwright.course.planning.PlanRequest;
import roundwright.course.planning.PlanSettings;
import roundwright.course.planning.Planner;
import roundwright.wording.Wording;

/** {@code plan}: splits the pattern of a course into lessons. */
@Command(name = "plan", description = "Splits the pattern of a course file into lessons, at the least cost there is.")
final class PlanCommand extends Verb {
    private static final Wording WORDS = Wording.of("command");

    private final Terminal terminal;

    @Parameters(paramLabel = "COURSE.md", description = "The course file; - reads standard input.")
    private String name;

    @Option(names = "--json", description = "Gives the plan as one JSON value.")
    private boolean json;

    @Option(names = "--sessions", paramLabel = "N", description = "Number of lessons; without it, the best number.")
    private Integer sessions;

    @Option(names = "--minutes", paramLabel = "M", description = "Length of a session, instead of the course's.")
    private Double minutes;

    @Option(names = "--pace", paramLabel = "P", description = "Stitches a minute, instead of the course's.")
    private Double pace;

    @Option(
            names = "--most-new",
            paramLabel = "K",
            description = "New techniques that a lesson after the first should have at most; 2 without it.")
    private int mostNew = PlanSettings.USUAL_MOST_NEW;

    @Option(
            names = "--homework",
            paramLabel = "MINUTES",
            description = "The longest homework after a lesson; without it, none.")
    private double homework;

    @Option(names = "--write", description = "Writes the lessons into the course file; all else in it stays as it is.")
    private boolean write;

    PlanCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    int run() throws CommandException {
        if (write && name.equals("-")) {
            throw new CommandException.Usage(WORDS.say("plan-write-to-standard-input"));
        }
        checkNumbers();
        CourseSource source = CourseSource.read(name, terminal);
        int status = source.reportErrors(terminal);
        PlanSettings settings = settings(source.course());
        PlanItems items = PlanItems.of(source.course().uses(), settings.pace());
        Plan plan = plan(items, settings);
        if (write) {
            source.replace(CourseEdits.of(source.file())
                    .lessons(LessonsOfPlan.of(plan, source.course().lessons()))
                    .text());
        }
        show(source.course(), plan, remarks(source.course(), items, plan));
        return status;
    }

    private void checkNumbers() throws CommandException {
        atLeast("--sessions", 1, sessions == null ? 1 : sessions);
        atLeast("--minutes", 1, minutes == null ? 1 : minutes);
        atLeast("--most-new", 0, mostNew);
        atLeast("--homework", 0, homework);
        if (pace != null && !(pace > 0 && Double.isFinite(pace))) {
            throw new CommandException.Usage(WORDS.say("number-above-nothing", "--pace"));
        }
    }

    private static void atLeast(String option, int least, double given) throws CommandException {
        if (!(given >= least && Double.isFinite(given))) {
            throw new CommandException.Usage(WORDS.say("number-too-small", option, least));
        }
    }

    private PlanSettings settings(Course course) {
        double stated = course.settings().pace().orElse(PlanItems.USUAL_PACE);
        return new PlanSettings(
                minutes == null ? course.settings().sessionMinutes() : minutes,
                pace == null ? stated : pace,
                mostNew,
                homework);
    }

    private Plan plan(PlanItems items, PlanSettings settings) throws CommandException {
        try {
            OptionalInt asked = sessions == null ? OptionalInt.empty() : OptionalInt.of(sessions);
            return Planner.plan(PlanRequest.of(items.items(), settings, asked));
        } catch (CannotPlan impossible) {
            throw new CommandException.Input(impossible.getMessage());
        }
    }

    private List<PlanRemark> remarks(Course course, PlanItems items, Plan plan) {
        boolean assumed = pace == null && course.settings().pace().isEmpty();
        Stream<PlanRemark> usual = assumed
                ? Stream.of(new PlanRemark(OptionalInt.empty(), WORDS.say("plan-usual-pace", PlanItems.USUAL_PACE)))
                : Stream.empty();
        return Stream.of(usual, items.remarks().stream(), PlanRemarks.of(plan).stream())
                .flatMap(remarks -> remarks)
                .toList();
    }

    /** What one lesson fewer and one more would cost, where the number was left open. */
    private List<Plan> others(Plan plan) {
        int best = plan.lessons().size();
        return sessions != null
                ? List.of()
                : Stream.of(best - 1, best + 1)
                        .filter(number -> number >= 1 && number <= plan.items().size())
                        .flatMap(number -> plan(plan, number).stream())
                        .toList();
    }

    private static Optional<Plan> plan(Plan plan, int lessons) {
        try {
            return Optional.of(Planner.plan(PlanRequest.of(plan.items(), plan.settings(), OptionalInt.of(lessons))));
        } catch (CannotPlan impossible) {
            return Optional.empty();
        }
    }

    private void show(Course course, Plan plan, List<PlanRemark> remarks) {
        if (json) {
            terminal.out().println(PlanJson.line(plan, remarks));
        } else {
            new PlanText(course, plan, remarks, others(plan)).lines().forEach(terminal.out()::println);
        }
        if (write) {
            terminal.err().println(WORDS.say("plan-written", plan.lessons().size(), name));
        }
    }
}
