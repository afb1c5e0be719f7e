package roundwright.group.counts;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.Month;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** When something was said, as people and spreadsheets write it. A day without a time is taken at noon. */
final class DayCell {
    private static final String TIME = "(?:[T ,]+(?:at )?(?<hour>\\d{1,2})[:.](?<minute>\\d{2})(?:[:.]\\d{2})?.*)?";
    private static final Pattern YEAR_FIRST =
            Pattern.compile("(?<year>\\d{4})[-/.](?<month>\\d{1,2})[-/.](?<day>\\d{1,2})" + TIME);
    private static final Pattern YEAR_LAST = Pattern.compile(
            "(?<first>\\d{1,2})(?<sign>[-/.])\\s*(?<second>\\d{1,2})[-/.]\\s*(?<year>\\d{4}|\\d{2})" + TIME);
    private static final Pattern DAY_MONTH = Pattern.compile(
            "(?i)(?:[a-z]{3,9}[ ,.]+)?(?<day>\\d{1,2})(?:st|nd|rd|th|\\.)?[ -](?<name>[a-z]{3,9})\\.?[ ,-]+(?<year>\\d{4}|\\d{2})"
                    + TIME);
    private static final Pattern MONTH_DAY =
            Pattern.compile("(?i)(?<name>[a-z]{3,9})\\.? (?<day>\\d{1,2})(?:st|nd|rd|th)?,? (?<year>\\d{4})" + TIME);

    private DayCell() {}

    /**
     * Reads a cell; empty where it is no day.
     *
     * @param monthFirst whether in 3/4/2027 the month comes first
     */
    static Optional<LocalDateTime> read(String cell, boolean monthFirst) {
        try {
            return numbers(cell, monthFirst).or(() -> names(cell));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    private static Optional<LocalDateTime> numbers(String cell, boolean monthFirst) {
        Matcher iso = YEAR_FIRST.matcher(cell);
        if (iso.matches()) {
            return Optional.of(at(iso, number(iso, "month"), number(iso, "day")));
        }
        Matcher last = YEAR_LAST.matcher(cell);
        if (!last.matches()) {
            return Optional.empty();
        }
        boolean swapped = monthFirst && !last.group("sign").equals(".");
        return Optional.of(
                at(last, number(last, swapped ? "first" : "second"), number(last, swapped ? "second" : "first")));
    }

    private static Optional<LocalDateTime> names(String cell) {
        for (Pattern form : new Pattern[] {DAY_MONTH, MONTH_DAY}) {
            Matcher named = form.matcher(cell);
            if (named.matches()) {
                return month(named.group("name")).map(month -> at(named, month, number(named, "day")));
            }
        }
        return Optional.empty();
    }

    private static Optional<Integer> month(String name) {
        String plain = name.toUpperCase(Locale.ROOT);
        for (Month month : Month.values()) {
            if (month.name().startsWith(plain) || plain.equals("SEPT") && month == Month.SEPTEMBER) {
                return Optional.of(month.getValue());
            }
        }
        return Optional.empty();
    }

    private static LocalDateTime at(Matcher found, int month, int day) {
        int year = number(found, "year");
        LocalDate date = LocalDate.of(year < 100 ? 2000 + year : year, month, day);
        return found.group("hour") == null
                ? date.atTime(LocalTime.NOON)
                : date.atTime(number(found, "hour"), number(found, "minute"));
    }

    private static int number(Matcher found, String group) {
        return Integer.parseInt(found.group(group));
    }

    /** Whether days such as 3/14/2027 show that the month comes first in all of them. */
    static boolean monthFirst(java.util.stream.Stream<String> cells) {
        int[] votes = new int[2];
        cells.map(YEAR_LAST::matcher).filter(Matcher::matches).forEach(day -> {
            votes[0] += number(day, "first") > 12 ? 1 : 0;
            votes[1] += number(day, "second") > 12 ? 1 : 0;
        });
        return votes[1] > votes[0];
    }
}
