package roundwright.desktop.planning;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.course.calendar.CourseRun;
import roundwright.course.calendar.ImpossibleDates;
import roundwright.course.calendar.LessonEvents;
import roundwright.course.calendar.Meeting;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.Group;
import roundwright.group.Session;
import roundwright.workbook.GroupView;

/**
 * When the lessons of the group in hand are: those that were held, on the day on which they were held; those to come, on the
 * days on which the group meets, from the last one held or else from the group's start on.
 */
public final class LessonDates {
    private final Desk desk;

    public LessonDates(Desk desk) {
        this.desk = desk;
    }

    /** When a lesson was held. */
    public Optional<LocalDate> held(int lesson) {
        return session(lesson).map(Session::date);
    }

    private Optional<Session> session(int lesson) {
        return desk.group().stream()
                .flatMap(group -> group.sessions().stream())
                .filter(session -> session.lesson().equals(OptionalInt.of(lesson)))
                .findFirst();
    }

    /** The last lesson held up to today; empty where none was. */
    Optional<Session> lastHeld() {
        return desk.group().stream()
                .flatMap(group -> group.sessions().stream())
                .filter(session ->
                        session.lesson().isPresent() && !session.date().isAfter(desk.today()))
                .max(Comparator.comparing(Session::date));
    }

    /** When a lesson is; empty where nobody can say. */
    public Optional<LocalDate> of(int lesson) {
        return held(lesson)
                .or(() -> meetings().stream()
                        .filter(meeting -> meeting.lesson() == lesson)
                        .map(meeting -> meeting.start().toLocalDate())
                        .findFirst());
    }

    /** The run of the group in hand: as it was said, or else weekly on the day of the group's start. */
    Optional<GroupRun> run() {
        return desk.group()
                .map(GroupView::group)
                .flatMap(group -> GroupRun.of(desk.view(), group.id())
                        .or(() -> group.start().map(LessonDates::weekly)));
    }

    private static GroupRun weekly(LocalDate start) {
        return new GroupRun(
                java.util.Set.of(start.getDayOfWeek()),
                LocalTime.of(19, 0),
                ZoneId.systemDefault(),
                java.util.Set.of(),
                "");
    }

    /** All lessons' meetings in order, from the first; none where the group has no start. */
    List<Meeting> meetings() {
        Optional<Group> group = desk.group().map(GroupView::group);
        if (group.flatMap(Group::start).isEmpty() || desk.course().isEmpty()) {
            return List.of();
        }
        try {
            return meetings(desk.course().get(), group.get(), run().orElseThrow(), 0);
        } catch (ImpossibleDates impossible) {
            return List.of();
        }
    }

    /** The meetings of all lessons, and of some more after the last, by a run that need not be the one in the file. */
    List<Meeting> meetings(OpenCourse open, Group group, GroupRun run, int more) throws ImpossibleDates {
        List<Integer> minutes = new ArrayList<>(LessonEvents.minutes(open.course()));
        for (int i = 0; i < more; i++) {
            minutes.add(open.course().settings().sessionMinutes());
        }
        CourseRun fromStart = run.from(group.start().orElseThrow(), group);
        List<Meeting> planned = fromStart.meetings(1, minutes);
        Optional<Session> last = lastHeld();
        int held = last.flatMap(session -> session.lesson().stream().boxed().findFirst())
                .filter(number -> number <= minutes.size())
                .orElse(0);
        List<Meeting> meetings = new ArrayList<>();
        for (int lesson = 1; lesson <= held; lesson++) {
            meetings.add(onItsDay(planned.get(lesson - 1), run));
        }
        if (held < minutes.size()) {
            LocalDate from = last.filter(session -> held > 0)
                    .map(session -> session.date().plusDays(1))
                    .orElse(group.start().get());
            meetings.addAll(run.from(from, group).meetings(held + 1, minutes.subList(held, minutes.size())));
        }
        return meetings;
    }

    private Meeting onItsDay(Meeting planned, GroupRun run) {
        Duration length = planned.length();
        return held(planned.lesson())
                .map(day -> new Meeting(planned.lesson(), day.atTime(run.time()).atZone(run.zone()), length))
                .orElse(planned);
    }
}
