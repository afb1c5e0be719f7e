package roundwright.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import roundwright.course.Course;
import roundwright.course.calendar.CalendarFile;
import roundwright.course.calendar.CourseEvent;
import roundwright.course.calendar.CourseRun;
import roundwright.course.calendar.ImpossibleDates;
import roundwright.course.calendar.LessonEvents;
import roundwright.course.calendar.Meeting;
import roundwright.wording.Wording;

/** {@code dates}: a calendar file for a run of a course. Written over an earlier one it moves the events that are there. */
@Command(name = "dates", description = "Writes a calendar file (iCalendar) for a run of a course.")
final class DatesCommand extends Verb {
    private static final Wording WORDS = Wording.of("command");

    private final Terminal terminal;
    private final Clock clock;

    @Parameters(paramLabel = "COURSE.md", description = "The course file; - reads standard input.")
    private String name;

    @Option(
            names = "--from",
            required = true,
            paramLabel = "DATE",
            converter = DateArguments.Date.class,
            description = "The first lesson is on the first of the days from then on: 2027-01-05.")
    private LocalDate from;

    @Option(
            names = "--on",
            required = true,
            arity = "1..*",
            split = ",",
            paramLabel = "DAYS",
            converter = DateArguments.Weekday.class,
            description = "Days of the week: tuesday, or tue,thu.")
    private List<DayOfWeek> days;

    @Option(
            names = "--skip",
            arity = "1..*",
            split = ",",
            paramLabel = "DATE",
            converter = DateArguments.Date.class,
            description = "Days on which there is no lesson.")
    private List<LocalDate> skip = List.of();

    @Option(
            names = "--at",
            paramLabel = "TIME",
            converter = DateArguments.Time.class,
            description = "When lessons begin, by the clock of the place: 19:00, which is taken without it.")
    private LocalTime at = LocalTime.of(19, 0);

    @Option(
            names = "--zone",
            paramLabel = "ZONE",
            converter = DateArguments.Zone.class,
            description = "The place's time zone, such as Europe/London; without it, this machine's.")
    private ZoneId zone = ZoneId.systemDefault();

    @Option(names = "--place", paramLabel = "PLACE", description = "Where the course meets.")
    private String place;

    @Option(names = "--ics", required = true, paramLabel = "OUT.ics", description = "The calendar file to write.")
    private String out;

    DatesCommand(Terminal terminal, Clock clock) {
        this.terminal = terminal;
        this.clock = clock;
    }

    @Override
    int run() throws CommandException {
        CourseSource source = CourseSource.read(name, terminal);
        int status = source.reportErrors(terminal);
        Course course = source.course();
        if (course.lessons().isEmpty()) {
            throw new CommandException.Input(
                    WORDS.say("dates-no-lessons", source.source().name()));
        }
        try {
            write(course);
        } catch (ImpossibleDates impossible) {
            throw new CommandException.Input(impossible.getMessage());
        }
        return status;
    }

    private void write(Course course) throws CommandException, ImpossibleDates {
        CourseRun run = courseRun();
        List<Meeting> meetings = run.meetings(1, LessonEvents.minutes(course));
        List<CourseEvent> events = LessonEvents.of(course, meetings, run.place());
        Path target = SafeFile.path(out);
        CalendarFile file = before(target);
        String runName = course.name() + "\n" + from + "\n" + days + "\n" + at + "\n" + place;
        SafeFile.write(target, file.write(runName, course.name(), events, clock.instant()));
        events.forEach(event -> terminal.out().println(DateArguments.say(event)));
        run.remarks(meetings).forEach(terminal.err()::println);
    }

    private CourseRun courseRun() {
        Map<DayOfWeek, LocalTime> times = new LinkedHashMap<>();
        days.forEach(day -> times.put(day, at));
        return new CourseRun(from, new EnumMap<>(times), zone, Optional.ofNullable(place), new TreeSet<>(skip));
    }

    private CalendarFile before(Path target) throws CommandException, ImpossibleDates {
        try {
            return Files.isRegularFile(target) && Files.size(target) > 0
                    ? CalendarFile.after(Files.readString(target))
                    : CalendarFile.first();
        } catch (IOException unreadable) {
            throw new CommandException.Input(WORDS.say("dates-cannot-go-on", target));
        }
    }
}
