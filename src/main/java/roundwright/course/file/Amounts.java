package roundwright.course.file;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.course.CourseSettings.Tension;

/** Reads the amounts that settings state: minutes, stitches a minute, stitches and rounds to 10 cm. */
final class Amounts {
    private static final String NUMBER = "(\\d{1,5}(?:[.,]\\d{1,3})?)";
    private static final Pattern HOURS = Pattern.compile(
            "^" + NUMBER + "\\s*h(?:ours?|rs?)?\\b(?:\\s*(?:and\\s+)?(\\d{1,3})\\s*(?:m(?:in(?:ute)?s?)?\\b)?)?");
    private static final Pattern MINUTES =
            Pattern.compile("^" + NUMBER + "\\s*(?:m(?:in(?:ute)?s?)?\\b)?\\s*(?:$|[,;(a])");
    private static final Pattern PACE = Pattern.compile("^" + NUMBER + "\\s*(?:$|st(?:itche)?s?\\b)");
    private static final Pattern TENSION = Pattern.compile(NUMBER
            + "\\s*(?:st(?:itche)?s?|dc|sc|htr|hdc|tr)?\\b\\D{0,12}?" + NUMBER + "\\s*(?:r(?:oun|n)?ds?|rows?)?\\b");
    private static final Pattern ACROSS =
            Pattern.compile("(?:to|over|in|=|per)\\s*" + NUMBER + "\\s*(cm|mm|in(?:ch(?:es)?)?|\")");

    /** Longest session anyone holds, in minutes. */
    private static final int LONGEST_SESSION = 24 * 60;

    private Amounts() {}

    /** {@code 90 minutes}, {@code 90}, {@code 1.5 hours}, {@code 1 h 30}. */
    static OptionalInt minutes(String written) {
        Matcher hours = HOURS.matcher(written);
        if (hours.find()) {
            double minutes = 60 * number(hours.group(1)) + (hours.group(2) == null ? 0 : number(hours.group(2)));
            return sensible(minutes);
        }
        Matcher minutes = MINUTES.matcher(written);
        return minutes.find() ? sensible(number(minutes.group(1))) : OptionalInt.empty();
    }

    private static OptionalInt sensible(double minutes) {
        return minutes >= 1 && minutes <= LONGEST_SESSION
                ? OptionalInt.of((int) Math.round(minutes))
                : OptionalInt.empty();
    }

    /** {@code 7 stitches a minute}, {@code 7}. */
    static OptionalDouble pace(String written) {
        Matcher matcher = PACE.matcher(written);
        boolean read = matcher.find() && number(matcher.group(1)) > 0;
        return read ? OptionalDouble.of(number(matcher.group(1))) : OptionalDouble.empty();
    }

    /** {@code 18 stitches and 20 rounds to 10 cm}; inches are turned, and 4 inches stand for 10 cm as they do in the trade. */
    static Optional<Tension> tension(String written) {
        Matcher matcher = TENSION.matcher(written);
        if (!matcher.find()) {
            return Optional.empty();
        }
        Matcher across = ACROSS.matcher(written);
        double centimetres = across.find(matcher.end(1)) ? centimetres(number(across.group(1)), across.group(2)) : 10;
        double stitches = number(matcher.group(1)) * 10 / centimetres;
        double rounds = number(matcher.group(2)) * 10 / centimetres;
        return stitches > 0 && rounds > 0 && Double.isFinite(stitches + rounds)
                ? Optional.of(new Tension(stitches, rounds))
                : Optional.empty();
    }

    private static double centimetres(double number, String unit) {
        return switch (unit.charAt(0)) {
            case 'c' -> number;
            case 'm' -> number / 10;
            default -> number * 2.5;
        };
    }

    private static double number(String written) {
        return Double.parseDouble(written.replace(',', '.'));
    }
}
