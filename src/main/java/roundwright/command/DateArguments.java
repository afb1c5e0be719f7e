package roundwright.command;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import roundwright.course.calendar.CourseEvent;
import roundwright.wording.Dates;
import roundwright.wording.Wording;

/** Dates, times, weekdays and zones as people type them, and a lesson's date as they read it. */
final class DateArguments {
    private static final Wording WORDS = Wording.of("command");
    private static final DateTimeFormatter SHOWN = Dates.as("EEEE d MMMM uuuu, HH:mm");
    private static final int FEWEST_LETTERS = 2;

    private DateArguments() {}

    static String say(CourseEvent event) {
        return WORDS.say("dates-lesson", SHOWN.format(event.meeting().start()), event.title());
    }

    /** {@code 2027-01-05}. */
    static final class Date implements ITypeConverter<LocalDate> {
        @Override
        public LocalDate convert(String text) {
            try {
                return LocalDate.parse(text.strip());
            } catch (DateTimeException impossible) {
                throw new TypeConversionException(WORDS.say("dates-no-date", text));
            }
        }
    }

    /** {@code 19:00}, {@code 9:30} or {@code 19}. */
    static final class Time implements ITypeConverter<LocalTime> {
        @Override
        public LocalTime convert(String text) {
            try {
                return LocalTime.parse(text.strip().replace('.', ':'), DateTimeFormatter.ofPattern("H[:mm]"));
            } catch (DateTimeException impossible) {
                throw new TypeConversionException(WORDS.say("dates-no-time", text));
            }
        }
    }

    /** {@code Tuesday}, {@code tue} or {@code tu}. */
    static final class Weekday implements ITypeConverter<DayOfWeek> {
        @Override
        public DayOfWeek convert(String text) {
            String start = text.strip().toUpperCase(Locale.ROOT).replaceFirst("(?<=DAY)S$", "");
            return Arrays.stream(DayOfWeek.values())
                    .filter(day ->
                            start.length() >= FEWEST_LETTERS && day.name().startsWith(start))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException(WORDS.say("dates-no-weekday", text)));
        }
    }

    /** {@code Europe/London}. */
    static final class Zone implements ITypeConverter<ZoneId> {
        @Override
        public ZoneId convert(String text) {
            try {
                return ZoneId.of(text.strip());
            } catch (DateTimeException unknown) {
                throw new TypeConversionException(WORDS.say("dates-no-zone", text));
            }
        }
    }
}
