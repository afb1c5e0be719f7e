package roundwright.group.counts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import roundwright.group.counts.Column.Kind;
import roundwright.wording.Wording;

/** Makes reports of a table's rows. A row that cannot be used says why and where, and does not keep the others from being used. */
public final class CountsReader {
    private static final Wording WORDS = Wording.of("group");

    /** Rows that are looked at to see whether the day or the month is written first. */
    private static final int DAYS_LOOKED_AT = 2_000;

    private final ColumnMatch match;
    private final Roll roll;
    private final boolean monthFirst;
    private final List<Integer> countColumns;
    private final List<CountRow> rows = new ArrayList<>();
    private final List<CellTrouble> troubles = new ArrayList<>();
    private final UnknownsFound unknowns = new UnknownsFound();

    private CountsReader(Table table, ColumnMatch match, Roll roll) {
        this.match = match;
        this.roll = roll;
        this.monthFirst = match.column(Kind.DATE)
                .map(column -> DayCell.monthFirst(
                        table.rows().stream().limit(DAYS_LOOKED_AT).map(row -> row.cell(column))))
                .orElse(false);
        this.countColumns = IntStream.range(0, match.columns().size())
                .filter(column -> match.columns().get(column).kind().counts())
                .boxed()
                .toList();
    }

    /** What came of a table: the reports in its order, every cell that could not be used, and what is to be decided. */
    public record Result(List<CountRow> rows, List<CellTrouble> troubles, Unknowns unknowns) {
        public Result {
            rows = List.copyOf(rows);
            troubles = List.copyOf(troubles);
        }
    }

    /** Reads a table as a match says; where the match is not usable, nothing is found. */
    public static Result read(Table table, ColumnMatch match, Roll roll) {
        CountsReader reader = new CountsReader(table, match, roll);
        if (table.openQuote() > 0) {
            String message = WORDS.say("table.open-quote");
            reader.trouble(new CellTrouble(table.openQuote(), 1, "\"", message, false));
        }
        if (match.usable()) {
            table.rows().stream().skip(match.headingRows()).forEach(row -> new RowReading(reader, row).read());
        }
        return new Result(reader.rows, reader.troubles, reader.unknowns.found());
    }

    Roll roll() {
        return roll;
    }

    boolean monthFirst() {
        return monthFirst;
    }

    List<Integer> countColumns() {
        return countColumns;
    }

    Column meaning(int column) {
        return match.columns().get(column);
    }

    Optional<Integer> column(Kind kind) {
        return match.column(kind);
    }

    UnknownsFound unknowns() {
        return unknowns;
    }

    void found(CountRow row) {
        rows.add(row);
    }

    void trouble(CellTrouble trouble) {
        troubles.add(trouble);
    }
}
