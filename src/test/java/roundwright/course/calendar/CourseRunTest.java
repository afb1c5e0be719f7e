package roundwright.course.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** When a run meets. */
class CourseRunTest {
    private static final LocalTime EVENING = LocalTime.of(19, 0);
    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    private static CourseRun run(String from, Map<DayOfWeek, LocalTime> times, String... off) {
        Set<LocalDate> daysOff = new TreeSet<>();
        for (String day : off) {
            daysOff.add(LocalDate.parse(day));
        }
        return new CourseRun(LocalDate.parse(from), times, LONDON, Optional.empty(), daysOff);
    }

    private static List<String> starts(CourseRun run, int lessons) throws ImpossibleDates {
        return run.meetings(1, Collections.nCopies(lessons, 90)).stream()
                .map(meeting -> meeting.start().toLocalDateTime().toString())
                .toList();
    }

    @Test
    void meetsOnItsWeekdaysFromTheDateOn() throws ImpossibleDates {
        CourseRun run = run(
                "2027-01-06",
                Map.of(DayOfWeek.TUESDAY, EVENING, DayOfWeek.THURSDAY, LocalTime.of(10, 30)),
                "2027-01-14");
        assertEquals(
                List.of("2027-01-07T10:30", "2027-01-12T19:00", "2027-01-19T19:00", "2027-01-21T10:30"),
                starts(run, 4));
    }

    @Test
    void keepsTheClockOfThePlaceThroughSummerTime() throws ImpossibleDates {
        CourseRun run = run("2027-03-23", Map.of(DayOfWeek.TUESDAY, EVENING));
        List<Meeting> meetings = run.meetings(3, List.of(90, 120));
        assertEquals("2027-03-23T19:00Z[Europe/London]", meetings.get(0).start().toString());
        assertEquals(
                "2027-03-30T19:00+01:00[Europe/London]", meetings.get(1).start().toString());
        assertEquals(Duration.ofMinutes(120), meetings.get(1).length());
        assertEquals(4, meetings.get(1).lesson());
    }

    @Test
    void saysWhereTheClockLeavesATimeOut() throws ImpossibleDates {
        CourseRun run = run("2027-03-28", Map.of(DayOfWeek.SUNDAY, LocalTime.of(1, 30)), "2027-03-29");
        List<String> remarks = run.remarks(run.meetings(1, List.of(90)));
        assertEquals(2, remarks.size());
        assertTrue(remarks.get(0).contains("2027-03-29"), remarks.get(0));
        assertTrue(remarks.get(1).contains("01:30") && remarks.get(1).contains("02:30"), remarks.get(1));
    }

    @Test
    void refusesWhatCannotBeHeld() {
        assertRefused("which days", run("2027-03-28", Map.of()), 1);
        assertRefused("between 1970", run("0001-03-28", Map.of(DayOfWeek.SUNDAY, EVENING)), 1);
        String[] sundays = LocalDate.parse("2027-01-03")
                .datesUntil(LocalDate.parse("2028-06-01"), java.time.Period.ofWeeks(1))
                .map(LocalDate::toString)
                .toArray(String[]::new);
        assertRefused("whole year", run("2027-01-01", Map.of(DayOfWeek.SUNDAY, EVENING), sundays), 1);
    }

    private static void assertRefused(String words, CourseRun run, int lessons) {
        String message =
                assertThrows(ImpossibleDates.class, () -> starts(run, lessons)).getMessage();
        assertTrue(message.contains(words), message);
    }
}
