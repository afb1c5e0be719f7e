package roundwright.course.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.Observance;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The calendar file, read back. */
class CalendarFileTest {
    private static final Instant NOW = Instant.parse("2026-11-24T20:00:00.123Z");

    private static List<CourseEvent> events(String from, int lessons, String zone) throws ImpossibleDates {
        CourseRun run = new CourseRun(
                LocalDate.parse(from),
                Map.of(DayOfWeek.TUESDAY, LocalTime.of(19, 0)),
                ZoneId.of(zone),
                Optional.of("Net loft, Quay 3; first floor"),
                Set.of());
        List<CourseEvent> events = new ArrayList<>();
        for (Meeting meeting : run.meetings(1, Collections.nCopies(lessons, 90))) {
            String details = "New: ring, “double crochet”\nBring: hook, café-coloured yarn, a marker \uD83E\uDDF6, "
                    + "scissors with rounded ends, a blunt needle";
            events.add(new CourseEvent(meeting, "Gull, lesson " + meeting.lesson(), details, run.place()));
        }
        return events;
    }

    private static String write(CalendarFile file, List<CourseEvent> events) {
        return file.write("group 7", "Gull", events, NOW);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Europe/London", "America/New_York", "Asia/Kolkata", "UTC", "+02:00"})
    void readsBackAsItWas(String zone) throws ImpossibleDates {
        List<CourseEvent> events = events("2027-03-02", 40, zone);
        ICalendar calendar = Biweekly.parse(write(CalendarFile.first(), events)).first();
        assertTrue(
                calendar.validate(ICalVersion.V2_0).isEmpty(),
                () -> calendar.validate(ICalVersion.V2_0).toString());
        assertEquals(events.size(), calendar.getEvents().size());
        for (int i = 0; i < events.size(); i++) {
            VEvent read = calendar.getEvents().get(i);
            Meeting meeting = events.get(i).meeting();
            assertEquals(
                    meeting.start().toInstant(), read.getDateStart().getValue().toInstant());
            assertEquals(meeting.end().toInstant(), read.getDateEnd().getValue().toInstant());
            assertEquals(events.get(i).details(), read.getDescription().getValue());
            assertEquals(events.get(i).place().get(), read.getLocation().getValue());
        }
    }

    /** Reads the local times with the offsets that the file itself gives; the library takes every summer time for an hour. */
    @ParameterizedTest
    @ValueSource(strings = {"Europe/London", "America/New_York", "Australia/Lord_Howe", "Pacific/Auckland"})
    void itsOwnRulesGiveTheRightInstants(String zone) throws ImpossibleDates {
        List<CourseEvent> events = events("2027-03-02", 60, zone);
        String text = write(CalendarFile.first(), events);
        ICalendar calendar = Biweekly.parse(text).first();
        List<Observance> observances = new ArrayList<>();
        calendar.getTimezoneInfo().getComponents().forEach(component -> {
            observances.addAll(component.getStandardTimes());
            observances.addAll(component.getDaylightSavingsTime());
        });
        List<String> local = text.lines()
                .filter(line -> line.startsWith("DTSTART;TZID=" + zone + ":"))
                .map(line -> line.substring(line.lastIndexOf(':') + 1))
                .toList();
        for (int i = 0; i < events.size(); i++) {
            ZonedDateTime start = events.get(i).meeting().start();
            assertEquals(DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss").format(start), local.get(i));
            assertEquals(start.getOffset(), offset(observances, local.get(i)), zone + " " + start);
        }
    }

    private static ZoneOffset offset(List<Observance> observances, String local) {
        Observance latest = observances.stream()
                .filter(one -> begins(one).compareTo(local) <= 0)
                .max((one, other) -> begins(one).compareTo(begins(other)))
                .orElseThrow();
        return ZoneOffset.ofTotalSeconds(
                (int) (latest.getTimezoneOffsetTo().getValue().getMillis() / 1000));
    }

    private static String begins(Observance observance) {
        return observance.getDateStart().getValue().getRawComponents().toString(true, false);
    }

    @Test
    void linesAreFoldedAndEndedAsTheStandardAsks() throws ImpossibleDates {
        String text = write(CalendarFile.first(), events("2027-03-02", 3, "Europe/London"));
        assertEquals(text.length() - text.replace("\n", "").length(), text.split("\r\n", -1).length - 1);
        for (String line : text.split("\r\n")) {
            assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
        }
    }

    @Test
    void changesKeepUidsAndCountUp() throws ImpossibleDates {
        String first = write(CalendarFile.first(), events("2027-03-02", 4, "Europe/London"));
        assertEquals(first, write(CalendarFile.after(first), events("2027-03-02", 4, "Europe/London")));
        String later = write(CalendarFile.after(first), events("2027-03-09", 3, "Europe/London"));
        assertEquals(uids(first), uids(later));
        assertEquals(List.of("1 CONFIRMED", "1 CONFIRMED", "1 CONFIRMED", "1 CANCELLED"), states(later));
        String back = write(CalendarFile.after(later), events("2027-03-09", 4, "Europe/London"));
        assertEquals(uids(first), uids(back));
        assertEquals(List.of("1 CONFIRMED", "1 CONFIRMED", "1 CONFIRMED", "2 CONFIRMED"), states(back));
    }

    @Test
    void runsDoNotShareUids() throws ImpossibleDates {
        List<CourseEvent> events = events("2027-03-02", 4, "Europe/London");
        Set<String> uids = uids(CalendarFile.first().write("group 1", "Gull", events, NOW));
        uids.addAll(uids(CalendarFile.first().write("group 2", "Gull", events, NOW)));
        assertEquals(8, uids.size());
    }

    private static Set<String> uids(String text) {
        return Biweekly.parse(text).first().getEvents().stream()
                .map(event -> event.getUid().getValue())
                .collect(Collectors.toCollection(java.util.TreeSet::new));
    }

    private static List<String> states(String text) {
        return Biweekly.parse(text).first().getEvents().stream()
                .map(event ->
                        event.getSequence().getValue() + " " + event.getStatus().getValue())
                .toList();
    }

    @Test
    void doesNotGoOnFromWhatIsNotItsOwn() {
        assertRefused("not a calendar", "Shopping: yarn");
        assertRefused(
                "other events",
                "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//x//EN\r\nBEGIN:VEVENT\r\nUID:a\r\nDTSTAMP:20270101T000000Z\r\n"
                        + "DTSTART:20270101T100000Z\r\nDTEND:20270101T110000Z\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n");
    }

    private static void assertRefused(String words, String text) {
        String message = assertThrows(ImpossibleDates.class, () -> CalendarFile.after(text))
                .getMessage();
        assertTrue(message.contains(words), message);
    }
}
