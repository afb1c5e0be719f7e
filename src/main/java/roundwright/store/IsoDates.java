package roundwright.store;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;

/** The one way dates and times go into the file and come out: ISO text, times in UTC to the millisecond. */
final class IsoDates {
    private static final long DAY = 86_400;

    private IsoDates() {}

    static String text(LocalDate date) {
        return date.toString();
    }

    /** As {@link Instant#toString}, written digit by digit: an import writes very many. */
    static String text(Instant time) {
        LocalDate day = LocalDate.ofEpochDay(Math.floorDiv(time.getEpochSecond(), DAY));
        int millis = time.getNano() / 1_000_000;
        if (day.getYear() < 0 || day.getYear() > 9_999) {
            return time.truncatedTo(ChronoUnit.MILLIS).toString();
        }
        int second = (int) Math.floorMod(time.getEpochSecond(), DAY);
        StringBuilder text = new StringBuilder(24);
        write(text, day.getYear(), 1_000).append('-');
        write(text, day.getMonthValue(), 10).append('-');
        write(text, day.getDayOfMonth(), 10).append('T');
        write(text, second / 3_600, 10).append(':');
        write(text, second / 60 % 60, 10).append(':');
        write(text, second % 60, 10);
        return (millis == 0 ? text : write(text.append('.'), millis, 100))
                .append('Z')
                .toString();
    }

    /** As many digits as the largest place has. */
    private static StringBuilder write(StringBuilder text, int number, int largestPlace) {
        for (int place = largestPlace; place > 0; place /= 10) {
            text.append((char) ('0' + number / place % 10));
        }
        return text;
    }

    static LocalDate date(String text) {
        return LocalDate.parse(text);
    }

    /** A file of a large group holds many thousands of times, so those written by {@link #text(Instant)} are read digit by digit. */
    static Instant time(String text) {
        int length = text.length();
        boolean whole = length == 20;
        boolean thousandths = length == 24 && text.charAt(19) == '.';
        if (!(whole || thousandths) || text.charAt(length - 1) != 'Z' || !marked(text)) {
            return Instant.parse(text);
        }
        LocalDate date = LocalDate.of(digits(text, 0, 4), digits(text, 5, 7), digits(text, 8, 10));
        int hour = digits(text, 11, 13);
        int minute = digits(text, 14, 16);
        int second = digits(text, 17, 19);
        if (hour > 23 || minute > 59 || second > 59) {
            return Instant.parse(text);
        }
        long seconds = date.toEpochDay() * 86_400 + hour * 3_600 + minute * 60 + second;
        return Instant.ofEpochSecond(seconds, thousandths ? digits(text, 20, 23) * 1_000_000L : 0);
    }

    private static boolean marked(String text) {
        return text.charAt(4) == '-'
                && text.charAt(7) == '-'
                && text.charAt(10) == 'T'
                && text.charAt(13) == ':'
                && text.charAt(16) == ':';
    }

    private static int digits(String text, int from, int to) {
        int number = 0;
        for (int i = from; i < to; i++) {
            int digit = text.charAt(i) - '0';
            if (digit < 0 || digit > 9) {
                throw new DateTimeParseException("not a digit", text, i);
            }
            number = number * 10 + digit;
        }
        return number;
    }
}
