package roundwright.store;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.time.temporal.IsoFields;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Which of a file's dated copies are kept: the newest of each of the last 7 days that have one, of the last 8 weeks and of the
 * last 12 months, and all of the newest day, lest one made now replace this morning's. Days without a copy do not count, so that a summer's break costs nothing; days are those of UTC.
 */
final class Thinning {
    static final int DAYS = 7;
    static final int WEEKS = 8;
    static final int MONTHS = 12;

    private Thinning() {}

    /** The moments whose copies are kept, out of all there are. */
    static Set<Instant> kept(Collection<Instant> moments) {
        List<Instant> newestFirst = List.copyOf(new TreeSet<>(moments).descendingSet());
        Set<Instant> kept = new HashSet<>();
        newestFirst.stream()
                .filter(moment -> day(moment).equals(day(newestFirst.get(0))))
                .forEach(kept::add);
        keepFirstOfEach(newestFirst, Thinning::day, DAYS, kept);
        keepFirstOfEach(newestFirst, Thinning::week, WEEKS, kept);
        keepFirstOfEach(newestFirst, moment -> YearMonth.from(day(moment)), MONTHS, kept);
        return kept;
    }

    private static void keepFirstOfEach(
            List<Instant> newestFirst, Function<Instant, Object> span, int spans, Set<Instant> kept) {
        Set<Object> seen = new HashSet<>();
        for (Instant moment : newestFirst) {
            if (seen.size() < spans && seen.add(span.apply(moment))) {
                kept.add(moment);
            }
        }
    }

    private static LocalDate day(Instant moment) {
        return moment.atOffset(ZoneOffset.UTC).toLocalDate();
    }

    private static Object week(Instant moment) {
        LocalDate day = day(moment);
        return List.of(day.get(IsoFields.WEEK_BASED_YEAR), day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
    }
}
