package roundwright.group.messages;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** The date and time that a chat puts before a message, in the many ways there are. */
final class Stamp {
    static final String TIME =
            "\\d{1,2}[:.]\\d{2}(?:[:.]\\d{2})?(?:[\\s\\u00a0\\u202f]?[aApP]\\.?[\\s\\u00a0\\u202f]?[mM]\\.?)?";

    /** How the months begin in the languages of the chat programs, each a word whole or cut short: "Mar" and "March", but not "Marek". */
    private static final List<String> MONTH = List.of(
            "jan(?:uary|uar|vier|uari)?|janv|ene(?:ro)?|gen(?:naio)?|janeiro",
            "feb(?:ruary|ruar|rero|braio|ruari)?|f[eé]v(?:r|rier|ereiro)?",
            "mar(?:ch|s|zo|ço)?|m[aä]r(?:z)?|mrz|mrt|maart",
            "apr(?:il|ile)?|avr(?:il)?|abr(?:il)?",
            "may|mai|mayo|mag(?:gio)?|mei|maio",
            "june?|juni|juin|junio|giu(?:gno)?|junho",
            "july?|juli|juil(?:let)?|julio|lug(?:lio)?|julho",
            "aug(?:ust|ustus)?|ao[uû]t|ago(?:sto)?",
            "sept?(?:ember|embre|tember|iembre)?|set(?:tembre|embro)?",
            "oct(?:ober|obre|ubre)?|okt(?:ober)?|ott(?:obre)?|out(?:ubro)?",
            "nov(?:ember|embre|iembre|embro)?",
            "dec(?:ember)?|dez(?:ember|embro)?|d[eé]c(?:embre)?|dic(?:iembre|embre)?");

    private static final String MONTHS = "(?:" + String.join("|", MONTH) + ")(?![\\p{L}])";
    private static final String WEEKDAY =
            "(?:(?:mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)(?:day)?|lun|mar|mer|jeu|ven|sam|dim|mo|di|mi|do|fr|sa|so|ma|wo|za|zo|seg|ter|qua|qui|sex|s[aá]b|dom)\\b\\.?";
    private static final String DATE = "(?:\\d{1,4}[./-]\\d{1,2}[./-]\\d{2,4}|\\d{1,2}\\.?\\s(?:de\\s)?" + MONTHS
            + "\\.?(?:\\s(?:de\\s)?\\d{4})?|" + MONTHS
            + "\\.?\\s\\d{1,2}(?:,?\\s\\d{4})?|" + WEEKDAY
            + "|today|yesterday)";

    /** Any stamp: a time, a date and a time, a weekday and a time, or a date alone. */
    static final String ANY = "(?:(?:" + WEEKDAY + ",?\\s)?(?:" + DATE + "|\\d{1,2}[./-]\\d{1,2}\\.?)"
            + "(?:,?\\s+(?:(?:at|à|um|a las|às|alle|kl\\.?|om)\\s)?|T)" + TIME + "|" + TIME + "(?:,?\\s+" + DATE + ")?|"
            + DATE + ")";

    /** No stamp is without two numbers and a sign between them, or the name of a day or a month. */
    private static final Pattern TRACE =
            Pattern.compile("\\d[.:/-]\\d|(?<!\\p{L})(?:" + WEEKDAY + "|" + MONTHS + "|today|yesterday)");

    private static final Pattern NUMBERS = Pattern.compile("(\\d{1,4})[./-](\\d{1,2})[./-](\\d{2,4})");
    private static final Pattern CLOCK = Pattern.compile(
            "(\\d{1,2})[:.](\\d{2})(?:[:.](\\d{2}))?(?:[\\s\\u00a0\\u202f]?([ap])\\.?[\\s\\u00a0\\u202f]?m)?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern DAY_MONTH = Pattern.compile(
            "(\\d{1,2})\\.?\\s(?:de\\s)?(" + MONTHS + ")\\.?(?:\\s(?:de\\s)?(\\d{4}))?", Pattern.CASE_INSENSITIVE);
    private static final Pattern MONTH_DAY =
            Pattern.compile("(" + MONTHS + ")\\.?\\s(\\d{1,2})(?:,?\\s(\\d{4}))?", Pattern.CASE_INSENSITIVE);

    private Stamp() {}

    /** Whether there may be a stamp in a line; a line without a trace of one need not be searched. */
    static boolean mayBeIn(String line) {
        return TRACE.matcher(Folding.small(line)).find();
    }

    /** Whether the dates of a text put the month first: one of them could be nothing else, and none says otherwise. */
    static boolean monthFirst(List<String> stamps) {
        boolean monthFirst = false;
        for (String stamp : stamps) {
            Matcher date = NUMBERS.matcher(stamp);
            if (date.find() && date.group(1).length() < 3) {
                if (Integer.parseInt(date.group(1)) > 12) {
                    return false;
                }
                monthFirst |= Integer.parseInt(date.group(2)) > 12;
            }
        }
        return monthFirst;
    }

    /** The time a stamp says, where it says the whole of it. */
    static Optional<LocalDateTime> read(String stamp, boolean monthFirst) {
        try {
            Matcher date = NUMBERS.matcher(stamp);
            if (date.find()) {
                String rest = stamp.substring(0, date.start()) + " " + stamp.substring(date.end());
                return at(numbers(date, monthFirst), rest);
            }
            return named(stamp);
        } catch (DateTimeException notADate) {
            return Optional.empty();
        }
    }

    private static int[] numbers(Matcher date, boolean monthFirst) {
        int first = Integer.parseInt(date.group(1));
        int second = Integer.parseInt(date.group(2));
        int third = Integer.parseInt(date.group(3));
        if (date.group(1).length() == 4) {
            return new int[] {first, second, third};
        }
        int year = third < 100 ? 2000 + third : third;
        return monthFirst ? new int[] {year, first, second} : new int[] {year, second, first};
    }

    private static Optional<LocalDateTime> named(String stamp) {
        Matcher dayMonth = DAY_MONTH.matcher(stamp);
        if (dayMonth.find() && dayMonth.group(3) != null) {
            return at(
                    new int[] {number(dayMonth.group(3)), month(dayMonth.group(2)), number(dayMonth.group(1))},
                    stamp.substring(dayMonth.end()));
        }
        Matcher monthDay = MONTH_DAY.matcher(stamp);
        if (monthDay.find() && monthDay.group(3) != null) {
            return at(
                    new int[] {number(monthDay.group(3)), month(monthDay.group(1)), number(monthDay.group(2))},
                    stamp.substring(monthDay.end()));
        }
        return Optional.empty();
    }

    private static Optional<LocalDateTime> at(int[] date, String clock) {
        Matcher time = CLOCK.matcher(clock);
        if (!time.find()) {
            return Optional.empty();
        }
        int hour = number(time.group(1));
        if (time.group(4) != null) {
            hour = hour % 12 + (time.group(4).equalsIgnoreCase("p") ? 12 : 0);
        }
        int second = time.group(3) == null ? 0 : number(time.group(3));
        return Optional.of(LocalDateTime.of(date[0], date[1], date[2], hour, number(time.group(2)), second));
    }

    private static int number(String digits) {
        return Integer.parseInt(digits);
    }

    private static int month(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        return 1
                + IntStream.range(0, MONTH.size())
                        .filter(index -> Shape.matches(small, MONTH.get(index)))
                        .findFirst()
                        .orElse(0);
    }
}
