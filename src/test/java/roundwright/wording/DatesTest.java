package roundwright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DatesTest {
    private static final LocalDateTime SOME_TUESDAY = LocalDateTime.of(2026, 9, 1, 18, 5);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "EEE d MMM|Tue 1 Sept",
                "EEEE d MMMM|Tuesday 1 September",
                "EEE d MMM, HH:mm|Tue 1 Sept, 18:05",
                "EEEE d MMMM uuuu, HH:mm|Tuesday 1 September 2026, 18:05",
                "d MMMM|1 September",
                "HH:mm|18:05",
                "uuuu-MM-dd|2026-09-01"
            })
    void daysAreWrittenInWordsOfOurOwn(String pattern, String written) {
        assertEquals(written, Dates.as(pattern).format(SOME_TUESDAY));
    }

    @ParameterizedTest
    @CsvSource({"EEE d MMM", "EEEE d MMMM uuuu"})
    void everyDayOfAYearIsWrittenAsInTheTradesCountry(String pattern) {
        DateTimeFormatter country = DateTimeFormatter.ofPattern(pattern, Locale.UK);
        DateTimeFormatter own = Dates.as(pattern);
        for (int day = 0; day < 366; day++) {
            LocalDateTime date = SOME_TUESDAY.plusDays(day);
            // other versions of Java cut the one long name at other letters
            assertEquals(
                    country.format(date).replace("Sept", "Sep"),
                    own.format(date).replace("Sept", "Sep"));
        }
    }
}
