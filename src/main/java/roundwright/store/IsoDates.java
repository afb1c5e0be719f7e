package roundwright.store;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** The one way dates and times go into the file and come out: ISO text, times in UTC to the millisecond. */
final class IsoDates {
    private IsoDates() {}

    static String text(LocalDate date) {
        return date.toString();
    }

    static String text(Instant time) {
        return time.truncatedTo(ChronoUnit.MILLIS).toString();
    }

    static LocalDate date(String text) {
        return LocalDate.parse(text);
    }

    static Instant time(String text) {
        return Instant.parse(text);
    }
}
