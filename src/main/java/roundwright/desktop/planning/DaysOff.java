package roundwright.desktop.planning;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Days without a lesson as people type them: {@code 2027-04-06, 2027-12-20 to 2028-01-03}. */
final class DaysOff {
    private static final String DATE = "(\\d{4}-\\d{1,2}-\\d{1,2})";
    private static final Pattern STRETCH = Pattern.compile(DATE + "(?:\\s*(?:to|–|\\.\\.)\\s*" + DATE + ")?");

    /** No holiday is longer. */
    private static final int LONGEST = 400;

    private DaysOff() {}

    /** One date, year first; empty for anything else. */
    static Optional<LocalDate> date(String text) {
        String[] parts = text.strip().split("-");
        if (!text.strip().matches("\\d{4}-\\d{1,2}-\\d{1,2}")) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    LocalDate.of(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]), Integer.parseInt(parts[2])));
        } catch (DateTimeException noDay) {
            return Optional.empty();
        }
    }

    /** All days named; empty where something is no date. */
    static Optional<Set<LocalDate>> read(String text) {
        Set<LocalDate> days = new TreeSet<>();
        for (String piece : text.split("[,;\\n]")) {
            if (!piece.isBlank() && !add(piece.strip(), days)) {
                return Optional.empty();
            }
        }
        return Optional.of(days);
    }

    private static boolean add(String piece, Set<LocalDate> days) {
        Matcher stretch = STRETCH.matcher(piece);
        if (!stretch.matches()) {
            return false;
        }
        Optional<LocalDate> first = date(stretch.group(1));
        Optional<LocalDate> last = stretch.group(2) == null ? first : date(stretch.group(2));
        boolean sensible = first.isPresent()
                && last.isPresent()
                && !last.get().isBefore(first.get())
                && last.get().isBefore(first.get().plusDays(LONGEST));
        if (sensible) {
            first.get().datesUntil(last.get().plusDays(1)).forEach(days::add);
        }
        return sensible;
    }

    /** The days, neighbouring ones drawn together. */
    static String written(Set<LocalDate> days) {
        List<String> said = new ArrayList<>();
        List<LocalDate> sorted = new ArrayList<>(new TreeSet<>(days));
        int from = 0;
        for (int i = 1; i <= sorted.size(); i++) {
            boolean ends = i == sorted.size()
                    || !sorted.get(i).equals(sorted.get(i - 1).plusDays(1));
            if (ends) {
                LocalDate first = sorted.get(from);
                LocalDate last = sorted.get(i - 1);
                said.add(first.equals(last) ? first.toString() : first + " to " + last);
                from = i;
            }
        }
        return String.join(", ", said);
    }
}
