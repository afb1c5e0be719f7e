package roundwright.course.calendar;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.component.VTimezone;
import biweekly.io.TimezoneAssignment;
import biweekly.io.text.ICalWriter;
import biweekly.property.RawProperty;
import biweekly.property.Status;
import biweekly.property.TextProperty;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.UUID;
import roundwright.wording.Wording;

/**
 * The calendar file of a run.
 *
 * <p>Written anew after a change, it goes on from the file before: an event keeps its UID, its sequence number rises where
 * anything of it changed, and an event whose lesson is gone stays as cancelled, so that calendars that have it take it out.
 */
public final class CalendarFile {
    private static final Wording WORDS = Wording.of("course");
    private static final String LESSON = "X-ROUNDWRIGHT-LESSON";
    private static final String PRODUCT = "-//Roundwright//Roundwright//EN";

    private final Map<Integer, VEvent> before;

    private CalendarFile(Map<Integer, VEvent> before) {
        this.before = before;
    }

    /** A run whose calendar has not been written yet. */
    public static CalendarFile first() {
        return new CalendarFile(Map.of());
    }

    /** Goes on from a calendar that was written before. A text that is not such a calendar is refused. */
    public static CalendarFile after(String text) throws ImpossibleDates {
        ICalendar calendar = Biweekly.parse(text).first();
        if (calendar == null) {
            throw new ImpossibleDates(WORDS.say("dates-not-a-calendar"));
        }
        Map<Integer, VEvent> events = new TreeMap<>();
        for (VEvent event : calendar.getEvents()) {
            events.put(lessonOf(event), event);
        }
        return new CalendarFile(events);
    }

    private static int lessonOf(VEvent event) throws ImpossibleDates {
        RawProperty lesson = event.getExperimentalProperty(LESSON);
        boolean whole = event.getUid() != null && event.getDateStart() != null && event.getDateEnd() != null;
        if (!whole || lesson == null || !lesson.getValue().matches("[0-9]{1,6}")) {
            throw new ImpossibleDates(WORDS.say("dates-other-events"));
        }
        return Integer.parseInt(lesson.getValue());
    }

    /**
     * The calendar file's text.
     *
     * @param run names the run among all others: UIDs of new events follow from it
     * @param name the calendar's name
     * @param events at least one
     * @param now when it is written
     */
    public String write(String run, String name, List<CourseEvent> events, Instant now) {
        ICalendar calendar = new ICalendar();
        calendar.setVersion(ICalVersion.V2_0);
        calendar.setProductId(PRODUCT);
        calendar.setName(name);
        Map<Integer, VEvent> gone = new TreeMap<>(before);
        for (CourseEvent event : events) {
            VEvent old = gone.remove(event.meeting().lesson());
            calendar.addEvent(
                    withHistory(component(event), old, run, event.meeting().lesson(), now));
        }
        gone.forEach((lesson, old) -> calendar.addEvent(withHistory(cancelled(old), old, run, lesson, now)));
        setZone(calendar, events.get(0).meeting().start().getZone());
        return text(calendar);
    }

    private static String text(ICalendar calendar) {
        StringWriter text = new StringWriter();
        try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
            // the library folds by characters, the standard by octets
            writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
            writer.write(calendar);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return Folding.fold(text.toString());
    }

    private static void setZone(ICalendar calendar, ZoneId zone) {
        List<VEvent> events = calendar.getEvents();
        long start = events.stream()
                .mapToLong(event -> event.getDateStart().getValue().getTime())
                .min()
                .orElseThrow();
        long end = events.stream()
                .mapToLong(event -> event.getDateEnd().getValue().getTime())
                .max()
                .orElseThrow();
        VTimezone rules = ZoneRules.of(zone, Instant.ofEpochMilli(start), Instant.ofEpochMilli(end));
        calendar.getTimezoneInfo().setDefaultTimezone(new TimezoneAssignment(TimeZone.getTimeZone(zone), rules));
    }

    private static VEvent component(CourseEvent event) {
        VEvent component = new VEvent();
        component.setSummary(event.title());
        component.setDescription(event.details());
        event.place().ifPresent(component::setLocation);
        component.setDateStart(Date.from(event.meeting().start().toInstant()), true);
        component.setDateEnd(Date.from(event.meeting().end().toInstant()), true);
        component.setStatus(Status.confirmed());
        return component;
    }

    private static VEvent cancelled(VEvent old) {
        VEvent component = new VEvent(old);
        component.setStatus(Status.cancelled());
        return component;
    }

    private static VEvent withHistory(VEvent component, VEvent old, String run, int lesson, Instant now) {
        component.setExperimentalProperty(LESSON, Integer.toString(lesson));
        boolean same = old != null && shown(old).equals(shown(component));
        component.setUid(old == null ? uid(run, lesson) : old.getUid().getValue());
        component.setSequence(old == null ? 0 : sequence(old) + (same ? 0 : 1));
        component.setDateTimeStamp(
                same ? old.getDateTimeStamp().getValue() : Date.from(now.truncatedTo(ChronoUnit.SECONDS)));
        return component;
    }

    private static String uid(String run, int lesson) {
        byte[] name = (run + "\n" + lesson).getBytes(StandardCharsets.UTF_8);
        return UUID.nameUUIDFromBytes(name) + "@roundwright";
    }

    private static int sequence(VEvent event) {
        return event.getSequence() == null ? 0 : event.getSequence().getValue();
    }

    /** All that a person sees of an event. */
    private static List<Object> shown(VEvent event) {
        return List.of(
                text(event.getSummary()),
                text(event.getDescription()),
                text(event.getLocation()),
                text(event.getStatus()),
                event.getDateStart().getValue().getTime(),
                event.getDateEnd().getValue().getTime());
    }

    private static String text(TextProperty property) {
        return property == null || property.getValue() == null ? "" : property.getValue();
    }
}
