package roundwright.wording;

import java.time.DayOfWeek;
import java.time.Month;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.ChronoField;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Days and times as the program writes them: {@code Dates.as("EEE d MMM")} writes "Tue 3 Mar". The names are the program's own, as all it
 * says: fetching those of a country takes long the first time, and they change from one Java to the next.
 */
public final class Dates {
    private static final Pattern NAME_OR_REST = Pattern.compile("EEEE|EEE|MMMM|MMM|(?:(?!EEE|MMM).)+");
    private static final int SHORT = 3;

    private Dates() {}

    /** A way of writing, in the letters of {@link DateTimeFormatter}; names of days and months are "Tue", "Tuesday", "Sept", "September". */
    public static DateTimeFormatter as(String pattern) {
        DateTimeFormatterBuilder builder = new DateTimeFormatterBuilder();
        Matcher piece = NAME_OR_REST.matcher(pattern);
        while (piece.find()) {
            switch (piece.group()) {
                case "EEEE" -> builder.appendText(ChronoField.DAY_OF_WEEK, days(name -> name));
                case "EEE" -> builder.appendText(ChronoField.DAY_OF_WEEK, days(Dates::cut));
                case "MMMM" -> builder.appendText(ChronoField.MONTH_OF_YEAR, months(name -> name));
                case "MMM" ->
                    builder.appendText(
                            ChronoField.MONTH_OF_YEAR, months(name -> name.equals("September") ? "Sept" : cut(name)));
                default -> builder.appendPattern(piece.group());
            }
        }
        return builder.toFormatter(Locale.UK);
    }

    private static Map<Long, String> days(UnaryOperator<String> form) {
        return named(List.of(DayOfWeek.values()), form);
    }

    private static Map<Long, String> months(UnaryOperator<String> form) {
        return named(List.of(Month.values()), form);
    }

    /** Both count from 1. */
    private static Map<Long, String> named(List<? extends Enum<?>> values, UnaryOperator<String> form) {
        Map<Long, String> names = new HashMap<>();
        for (Enum<?> value : values) {
            String name = value.name().charAt(0) + value.name().substring(1).toLowerCase(Locale.ROOT);
            names.put(value.ordinal() + 1L, form.apply(name));
        }
        return names;
    }

    private static String cut(String name) {
        return name.substring(0, SHORT);
    }
}
