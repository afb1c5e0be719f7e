package roundwright.desktop.planning;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import roundwright.course.Course;
import roundwright.course.calendar.CalendarFile;
import roundwright.course.calendar.CourseEvent;
import roundwright.course.calendar.ImpossibleDates;
import roundwright.course.calendar.LessonEvents;
import roundwright.course.calendar.Meeting;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.work.Task;
import roundwright.group.Group;
import roundwright.wording.Dates;
import roundwright.wording.Wording;
import roundwright.workbook.Edit;
import roundwright.workbook.GroupEdit;
import roundwright.workbook.SettingEdit;
import roundwright.workbook.Several;
import roundwright.workbook.WholeFile;

/** Keeps a group's run in the file, and saves it as a calendar file. */
final class RunKeeping {
    private static final Wording WORDS = Wording.of("desktop");
    private static final DateTimeFormatter DAY = Dates.as("EEEE d MMMM yyyy, HH:mm");
    private static final DateTimeFormatter END = Dates.as("HH:mm");

    private final Desk desk;
    private final Function<String, Optional<Path>> target;

    RunKeeping(Desk desk, Function<String, Optional<Path>> target) {
        this.desk = desk;
        this.target = target;
    }

    /** "**1** Tuesday 2 March 2027, 19:00 to 20:30 · Into the ring". */
    String line(Meeting meeting) {
        String name = desk.course()
                .flatMap(open -> open.lesson(meeting.lesson()))
                .map(lesson -> lesson.name())
                .orElse("");
        return WORDS.say("dates-line", meeting.lesson(), DAY.format(meeting.start()), END.format(meeting.end()), name);
    }

    List<String> remarks(GroupRun run, Group group, List<Meeting> meetings) {
        return run.from(group.start().orElseThrow(), group).remarks(meetings);
    }

    /** Keeps it as one step of undo; what comes then runs in any case, changed or not. */
    void keep(Group group, GroupRun run, Runnable then) {
        List<Edit> edits = new ArrayList<>();
        Group before = desk.group().orElseThrow().group();
        if (!before.equals(group)) {
            edits.add(new GroupEdit.ChangeGroup(group));
        }
        String setting = GroupRun.setting(group.id());
        if (!desk.view().setting(setting).equals(Optional.of(run.written()))) {
            edits.add(new SettingEdit.SetSetting(setting, Optional.of(run.written())));
        }
        if (edits.isEmpty()) {
            then.run();
        } else {
            desk.apply(new Several(WORDS.say("edit-dates", group.name()), edits), then);
        }
    }

    /** Asks for a file and writes the calendar into it, going on from what stands there. */
    void save(Group group, GroupRun run, List<Meeting> meetings) {
        Course course = desk.course().orElseThrow().course();
        String suggested = group.name().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-") + ".ics";
        List<CourseEvent> events =
                LessonEvents.of(course, meetings, Optional.of(group.place()).filter(place -> !place.isBlank()));
        String name = WORDS.say("course-and-group", course.name(), group.name());
        Instant now = desk.now();
        target.apply(suggested).ifPresent(path -> write(path, before -> before.write(run.key(), name, events, now)));
    }

    private void write(Path path, Function<CalendarFile, String> text) {
        desk.work().submit(new Task<Void>() {
            @Override
            public Void away() throws IOException, ImpossibleDates {
                boolean there = Files.exists(path) && Files.size(path) > 0;
                CalendarFile before = there ? CalendarFile.after(Files.readString(path)) : CalendarFile.first();
                WholeFile.write(path, text.apply(before));
                return null;
            }

            @Override
            public void here(Void nothing) {
                desk.tell(WORDS.say("calendar-saved", path));
            }

            @Override
            public void failed(Exception failure) {
                desk.tell(
                        failure instanceof ImpossibleDates
                                ? failure.getMessage()
                                : WORDS.say("cannot-write-file", path));
            }
        });
    }
}
