package roundwright.desktop.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.course.calendar.ImpossibleDates;
import roundwright.course.calendar.Meeting;
import roundwright.desktop.DeskOnFile;
import roundwright.desktop.desk.Desk;
import roundwright.group.Group;
import roundwright.workbook.GroupEdit;

class DatesTest {
    private static final GroupRun THURSDAYS = new GroupRun(
            Set.of(DayOfWeek.THURSDAY),
            LocalTime.of(18, 30),
            ZoneId.of("Europe/London"),
            Set.of(LocalDate.of(2027, 4, 8)),
            "a-key");

    @TempDir
    private Path folder;

    private DeskOnFile file;
    private Desk desk;

    @BeforeEach
    void open() {
        file = new DeskOnFile().course("harbour-light");
        desk = file.desk();
    }

    @AfterEach
    void close() {
        file.close();
    }

    private Group newGroup() {
        Group group = new Group(
                desk.workbook().newGroup(),
                desk.choice().course().orElseThrow(),
                "Thursday evenings",
                Optional.of(LocalDate.of(2027, 4, 1)),
                "The mill");
        desk.apply(new GroupEdit.AddGroup(group), () -> desk.chooseGroup(group.id()));
        return group;
    }

    private List<Meeting> meetings(Group group) throws ImpossibleDates {
        return new LessonDates(desk).meetings(desk.course().orElseThrow(), group, THURSDAYS, 0);
    }

    private void keepAndSave(Group group, Path path) throws ImpossibleDates {
        RunKeeping keeping = new RunKeeping(desk, suggested -> Optional.of(path));
        List<Meeting> meetings = meetings(group);
        keeping.keep(group, THURSDAYS, () -> keeping.save(group, THURSDAYS, meetings));
    }

    @Test
    void aRunIsRememberedAndUndoneAsOneNamedStep() throws ImpossibleDates {
        Group group = newGroup();
        new RunKeeping(desk, suggested -> Optional.empty()).keep(group, THURSDAYS, () -> {});
        assertEquals(Optional.of(THURSDAYS), GroupRun.of(desk.view(), group.id()));
        assertEquals(
                Optional.of("Undo: dates of Thursday evenings"), desk.workbook().undoName());
        assertEquals(Optional.of(LocalDate.of(2027, 4, 15)), new LessonDates(desk).of(2));
        desk.undo();
        assertEquals(Optional.empty(), GroupRun.of(desk.view(), group.id()));
    }

    @Test
    void lessonsToComeFollowFromTheLastOneHeld() throws ImpossibleDates {
        file.group(4);
        LessonDates dates = new LessonDates(desk);
        LocalDate held = dates.lastHeld().orElseThrow().date();
        int lesson = dates.lastHeld().orElseThrow().lesson().orElseThrow();
        List<Meeting> meetings = meetings(desk.group().orElseThrow().group());
        assertEquals(held, meetings.get(lesson - 1).start().toLocalDate());
        LocalDate next = meetings.get(lesson).start().toLocalDate();
        assertTrue(next.isAfter(held) && !next.isAfter(held.plusDays(7)), held + " " + next);
        assertEquals(DayOfWeek.THURSDAY, next.getDayOfWeek());
        assertEquals(8, meetings.size());
    }

    @Test
    void aCalendarSavedOverTheOldOneKeepsItsEvents() throws ImpossibleDates, IOException {
        Path path = folder.resolve("thursdays.ics");
        Group group = newGroup();
        keepAndSave(group, path);
        List<String> first = uids(path);
        Group later =
                new Group(group.id(), group.course(), group.name(), Optional.of(LocalDate.of(2027, 5, 1)), "The mill");
        keepAndSave(later, path);
        assertEquals(8, first.size());
        assertEquals(first, uids(path));
        assertTrue(Files.readString(path).contains("SEQUENCE:1"));
        assertTrue(desk.notice().orElse("").contains("thursdays.ics"));
        try (var files = Files.list(folder)) {
            assertEquals(1, files.count());
        }
    }

    private static List<String> uids(Path path) throws IOException {
        return Files.readAllLines(path).stream()
                .filter(line -> line.startsWith("UID:"))
                .toList();
    }

    @Test
    void aFileThatIsNoCalendarStaysAsItIs() throws ImpossibleDates, IOException {
        Path path = folder.resolve("list.ics");
        Files.writeString(path, "eggs, flour");
        keepAndSave(newGroup(), path);
        assertEquals("eggs, flour", Files.readString(path));
        assertTrue(
                desk.notice().orElse("").contains("not a calendar"),
                desk.notice().orElse(""));
    }

    @Test
    void aFolderThatIsNotThereIsSaidKindly() throws ImpossibleDates {
        keepAndSave(newGroup(), folder.resolve("gone").resolve("a.ics"));
        assertTrue(
                desk.notice().orElse("").contains("Choose another place"),
                desk.notice().orElse(""));
    }

    @Test
    void daysOffAreReadAsPeopleWriteThem() {
        String typed = "2027-04-06, 2027-12-30 to 2028-01-02";
        Set<LocalDate> days = DaysOff.read(typed).orElseThrow();
        assertEquals(5, days.size());
        assertEquals(typed, DaysOff.written(days));
        assertEquals(Optional.of(Set.of()), DaysOff.read("  "));
        for (String wrong : List.of("Easter", "2027-02-30", "2027-04-06 to 2026-01-01", "6/4/2027")) {
            assertEquals(Optional.empty(), DaysOff.read(wrong), wrong);
        }
    }

    @Test
    void aRunIsReadBackAsItWasWrittenAndRubbishIsNone() {
        assertEquals(Optional.of(THURSDAYS), GroupRun.read(THURSDAYS.written()));
        for (String rubbish : List.of("", "days=", "days=MOON;time=19:00;zone=UTC", "time=x;zone=UTC", "===;;")) {
            assertEquals(Optional.empty(), GroupRun.read(rubbish), rubbish);
        }
    }
}
