package roundwright.desktop.planning;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundwright.course.calendar.CourseRun;
import roundwright.group.Group;
import roundwright.group.GroupId;
import roundwright.workbook.WorkbookView;

/**
 * When a group meets, as the file remembers it beside the group's start and place.
 *
 * @param days the days of the week
 * @param time when lessons begin, by the clock of the place
 * @param zone the place's time zone
 * @param off days without a lesson
 * @param key tells the run's events in calendars from those of every other run
 */
record GroupRun(Set<DayOfWeek> days, LocalTime time, ZoneId zone, Set<LocalDate> off, String key) {
    GroupRun {
        days = Set.copyOf(days);
        off = Set.copyOf(off);
    }

    /** Where the file remembers a group's run. */
    static String setting(GroupId group) {
        return "run-" + group.value();
    }

    /** What the file remembers; empty where it remembers nothing that can be read. */
    static Optional<GroupRun> of(WorkbookView view, GroupId group) {
        return view.setting(setting(group)).flatMap(GroupRun::read);
    }

    /** One line, {@code days=TUESDAY;time=19:00;zone=Europe/London;off=2027-04-06;key=…}. */
    String written() {
        return "days=" + joined(new TreeSet<>(days).stream()) + ";time=" + time + ";zone=" + zone + ";off="
                + joined(new TreeSet<>(off).stream()) + ";key=" + key;
    }

    private static String joined(Stream<?> values) {
        return values.map(String::valueOf).collect(Collectors.joining(","));
    }

    static Optional<GroupRun> read(String line) {
        Map<String, String> values = new HashMap<>();
        for (String pair : line.split(";")) {
            String[] parts = pair.split("=", 2);
            values.put(parts[0], parts.length > 1 ? parts[1] : "");
        }
        try {
            return Optional.of(new GroupRun(
                    list(values.get("days")).map(DayOfWeek::valueOf).collect(Collectors.toSet()),
                    LocalTime.parse(values.getOrDefault("time", "")),
                    ZoneId.of(values.getOrDefault("zone", "")),
                    list(values.get("off")).map(LocalDate::parse).collect(Collectors.toSet()),
                    values.getOrDefault("key", "")));
        } catch (DateTimeException | IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }

    private static Stream<String> list(String text) {
        return Arrays.stream(String.valueOf(text).split(",")).filter(part -> !part.isEmpty());
    }

    /** The run from a date on. */
    CourseRun from(LocalDate date, Group group) {
        Map<DayOfWeek, LocalTime> times = new EnumMap<>(DayOfWeek.class);
        days.forEach(day -> times.put(day, time));
        Optional<String> place = Optional.of(group.place()).filter(text -> !text.isBlank());
        return new CourseRun(date, times, zone, place, off);
    }
}
