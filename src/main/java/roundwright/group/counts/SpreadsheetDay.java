package roundwright.group.counts;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDateTime;

/** Days as spreadsheets count them: 1 is 1 January 1900 and 29 February 1900, which never was, is counted; some begin with 1904. */
final class SpreadsheetDay {
    private static final LocalDateTime FROM_1900 = LocalDateTime.of(1899, 12, 30, 0, 0);
    private static final LocalDateTime FROM_1904 = LocalDateTime.of(1904, 1, 1, 0, 0);
    private static final BigDecimal SECONDS = BigDecimal.valueOf(24 * 60 * 60);
    private static final BigDecimal LAST = BigDecimal.valueOf(2_958_465);

    private SpreadsheetDay() {}

    /** The day in ISO form, with its time where it has one; the number itself where it is no day. */
    static String text(BigDecimal number, boolean from1904) {
        if (number.signum() < 0 || number.compareTo(LAST) > 0) {
            return number.toPlainString();
        }
        long seconds =
                number.multiply(SECONDS).setScale(0, RoundingMode.HALF_UP).longValueExact();
        LocalDateTime at = (from1904 ? FROM_1904 : FROM_1900).plusSeconds(seconds);
        boolean midnight = at.toLocalTime().toSecondOfDay() == 0;
        return midnight ? at.toLocalDate().toString() : at.toString();
    }

    /** The number of a day, as {@link #text} reads it. */
    static double number(LocalDateTime at) {
        return java.time.Duration.between(FROM_1900, at).toSeconds() / SECONDS.doubleValue();
    }
}
