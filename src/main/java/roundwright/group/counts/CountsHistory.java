package roundwright.group.counts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.group.CountReport;
import roundwright.group.RoundPlace;
import roundwright.wording.Wording;

/**
 * Rows of one table as the history they tell, in their order. A row on a round that was pulled back to is that round worked once more,
 * so the work was pulled back below it first. Of a second count of a round, with nothing pulled back between, it has to be said what it
 * is: refused with its place, since which of the two is meant cannot be known; or a correction.
 */
public final class CountsHistory {
    private static final Wording WORDS = Wording.of("group");

    private record Key(String student, RoundPlace place) {}

    private final List<CountRow> rows = new ArrayList<>();
    private final List<CellTrouble> troubles = new ArrayList<>();
    private final Map<Key, CountRow> holding = new HashMap<>();

    private final boolean corrects;

    private CountsHistory(boolean corrects) {
        this.corrects = corrects;
    }

    /** A second count is refused. */
    public static CountsHistory of(List<CountRow> rows) {
        CountsHistory history = new CountsHistory(false);
        rows.forEach(history::take);
        return history;
    }

    /** A second count corrects the first; where it says the same, it is passed over. */
    public static CountsHistory correcting(List<CountRow> rows) {
        CountsHistory history = new CountsHistory(true);
        rows.forEach(history::take);
        return history;
    }

    /** The reports, those that follow from others among them. */
    public List<CountRow> rows() {
        return List.copyOf(rows);
    }

    /** Rows that were left out. */
    public List<CellTrouble> troubles() {
        return List.copyOf(troubles);
    }

    private void take(CountRow row) {
        Optional<CountRow> before = Optional.ofNullable(holding.get(new Key(row.student(), row.place())));
        boolean back = row.kind() == CountReport.Kind.PULLED_BACK;
        boolean again = before.isPresent() && before.get().kind() == CountReport.Kind.PULLED_BACK;
        boolean finished = before.isPresent() && before.get().kind() == CountReport.Kind.UNFINISHED;
        if (before.isPresent() && !back && !again && !finished) {
            second(row, before.get());
            return;
        }
        if (again) {
            hold(backBelow(row));
        }
        hold(row);
    }

    private void second(CountRow row, CountRow before) {
        if (!corrects) {
            troubles.add(twice(row, before));
        } else if (row.kind() != before.kind() || !row.count().equals(before.count())) {
            hold(row);
        }
    }

    private void hold(CountRow row) {
        if (row.kind() == CountReport.Kind.PULLED_BACK) {
            holding.keySet().removeIf(key -> above(key, row));
        }
        rows.add(row);
        if (row.count().isPresent() || row.kind() == CountReport.Kind.UNFINISHED) {
            holding.put(new Key(row.student(), row.place()), row);
        }
    }

    private static boolean above(Key key, CountRow row) {
        return key.student().equals(row.student())
                && key.place().part().equals(row.place().part())
                && key.place().round() > row.place().round();
    }

    private static CountRow backBelow(CountRow row) {
        RoundPlace below =
                new RoundPlace(row.place().part(), Math.max(0, row.place().round() - 1));
        return new CountRow(
                row.line(),
                row.column(),
                row.student(),
                below,
                CountReport.Kind.PULLED_BACK,
                OptionalInt.empty(),
                row.said(),
                "",
                Map.of());
    }

    private static CellTrouble twice(CountRow row, CountRow before) {
        String message = WORDS.say(
                "table.twice", row.student(), row.place().part(), row.place().round(), before.line());
        String cell = row.count().isPresent() ? Integer.toString(row.count().getAsInt()) : "";
        return new CellTrouble(row.line(), row.column(), cell, message, true);
    }
}
