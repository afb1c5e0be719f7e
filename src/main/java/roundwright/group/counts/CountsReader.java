package roundwright.group.counts;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.group.CountReport;
import roundwright.group.counts.Column.Kind;
import roundwright.wording.Wording;

/** Makes reports of a table's rows. A row that cannot be used says why and where, and does not keep the others from being used. */
public final class CountsReader {
    private static final Wording WORDS = Wording.of("group");
    private static final int LARGEST = 9_999;
    private static final Pattern NUMBER =
            Pattern.compile("[^\\d-]{0,12}(-?\\d{1,9})(?:[.,]0+)?\\s*(?:sts?\\.?|stitches)?\\??");
    private static final Pattern UNFINISHED = Pattern.compile(
            "(?i)(?:\\.\\.\\.|…|\\?|~|unfinished|not finished|so far)\\s*(\\d{0,4}).*|(\\d{0,4})\\s*(?:\\.\\.\\.|…|~|so far|unfinished)");
    private static final Pattern NOTHING = Pattern.compile("(?i)|-|–|—|n/?a|none|absent|x|\\.");
    private static final Pattern DAY = Pattern.compile("(\\d{1,2})[./-](\\d{1,2})[./-](\\d{2,4})");

    private final ColumnMatch match;
    private final Roll roll;
    private final List<CountRow> rows = new ArrayList<>();
    private final List<CellTrouble> troubles = new ArrayList<>();

    private CountsReader(ColumnMatch match, Roll roll) {
        this.match = match;
        this.roll = roll;
    }

    /** What came of a table: the reports, and every cell that could not be used. */
    public record Result(List<CountRow> rows, List<CellTrouble> troubles) {
        public Result {
            rows = List.copyOf(rows);
            troubles = List.copyOf(troubles);
        }
    }

    public static Result read(Table table, ColumnMatch match, Roll roll) {
        CountsReader reader = new CountsReader(match, roll);
        table.rows().stream().skip(match.headings() ? 1 : 0).forEach(reader::row);
        return new Result(reader.rows, reader.troubles);
    }

    private void row(Table.Row row) {
        for (int column = 0; column < match.columns().size(); column++) {
            Column meaning = match.columns().get(column);
            if (meaning.is(Kind.COUNT) || meaning.is(Kind.COUNTS_OF_ROUND) || meaning.is(Kind.COUNTS_OF_STUDENT)) {
                count(row, column, meaning);
            }
        }
    }

    private void count(Table.Row row, int column, Column meaning) {
        String cell = plain(row.cell(column));
        boolean pulledBack = yes(at(row, Kind.PULLED_BACK));
        if (NOTHING.matcher(cell).matches() && !pulledBack) {
            return;
        }
        Optional<String> student = student(row, meaning);
        OptionalInt round = round(row, meaning);
        Optional<String> part =
                student.isPresent() && round.isPresent() ? part(row, column, meaning) : Optional.empty();
        if (part.isEmpty()) {
            return;
        }
        boolean start = pulledBack && round.getAsInt() == 0;
        if (!start && !roll.has(part.get(), round.getAsInt())) {
            trouble(row, column, WORDS.say("table.no-round", part.get(), round.getAsInt()));
            return;
        }
        file(
                row,
                column,
                cell,
                new CountRow(
                        row.line(),
                        student.get(),
                        part.get(),
                        round.getAsInt(),
                        kind(cell, pulledBack),
                        OptionalInt.empty(),
                        date(row),
                        note(row)));
    }

    private void file(Table.Row row, int column, String cell, CountRow without) {
        OptionalInt count = without.kind() == CountReport.Kind.UNFINISHED ? soFar(cell) : number(cell);
        boolean needed = without.kind() == CountReport.Kind.COUNTED;
        if (count.isEmpty() && (needed || !cell.isEmpty() && without.kind() == CountReport.Kind.PULLED_BACK)) {
            trouble(row, column, WORDS.say("table.no-number", cell));
        } else if (count.isPresent() && (count.getAsInt() < 0 || count.getAsInt() > LARGEST)) {
            trouble(row, column, WORDS.say("table.impossible", cell));
        } else {
            rows.add(new CountRow(
                    without.line(),
                    without.student(),
                    without.part(),
                    without.round(),
                    without.kind(),
                    count,
                    without.date(),
                    without.note()));
        }
    }

    private static CountReport.Kind kind(String cell, boolean pulledBack) {
        if (pulledBack) {
            return CountReport.Kind.PULLED_BACK;
        }
        return UNFINISHED.matcher(cell).matches() ? CountReport.Kind.UNFINISHED : CountReport.Kind.COUNTED;
    }

    private Optional<String> student(Table.Row row, Column meaning) {
        if (meaning.student().isPresent()) {
            return meaning.student();
        }
        String written = plain(at(row, Kind.STUDENT));
        Optional<String> found = roll.student(written);
        if (found.isEmpty()) {
            int column = match.column(Kind.STUDENT).orElse(0);
            trouble(
                    row,
                    column,
                    written.isEmpty() ? WORDS.say("table.nobody") : WORDS.say("table.unknown-student", written));
        }
        return found;
    }

    private OptionalInt round(Table.Row row, Column meaning) {
        if (meaning.is(Kind.COUNTS_OF_ROUND)) {
            return OptionalInt.of(meaning.round());
        }
        String written = plain(at(row, Kind.ROUND));
        OptionalInt round = number(written);
        if (round.isEmpty() || round.getAsInt() < 0) {
            trouble(row, match.column(Kind.ROUND).orElse(0), WORDS.say("table.no-round-number", written));
            return OptionalInt.empty();
        }
        return round;
    }

    private Optional<String> part(Table.Row row, int column, Column meaning) {
        String written = plain(at(row, Kind.PART));
        Optional<String> part = meaning.part().or(() -> written.isEmpty() ? roll.onlyPart() : roll.part(written));
        if (part.isEmpty()) {
            int where = match.column(Kind.PART).orElse(column);
            trouble(
                    row,
                    where,
                    written.isEmpty()
                            ? WORDS.say("table.which-part", Wording.list(roll.parts()))
                            : WORDS.say("table.unknown-part", written, Wording.list(roll.parts())));
        }
        return part;
    }

    private Optional<LocalDate> date(Table.Row row) {
        String written = at(row, Kind.DATE);
        try {
            Matcher day = DAY.matcher(written);
            if (day.find()) {
                int year = Integer.parseInt(day.group(3));
                return Optional.of(LocalDate.of(
                        year < 100 ? 2000 + year : year,
                        Integer.parseInt(day.group(2)),
                        Integer.parseInt(day.group(1))));
            }
            return written.isEmpty()
                    ? Optional.empty()
                    : Optional.of(LocalDate.parse(written.substring(0, Math.min(10, written.length()))));
        } catch (DateTimeException notADate) {
            return Optional.empty();
        }
    }

    private String note(Table.Row row) {
        return plain(at(row, Kind.NOTE));
    }

    private String at(Table.Row row, Kind kind) {
        return match.column(kind).map(row::cell).orElse("");
    }

    /** Without the apostrophe that keeps a spreadsheet from computing a cell. */
    private static String plain(String cell) {
        return cell.matches("'[=+\\-@'].*") ? cell.substring(1) : cell;
    }

    private static boolean yes(String cell) {
        return cell.matches("(?i)y|yes|true|1|x|✓|✔|ja|oui|si|sí|pulled back");
    }

    private static OptionalInt number(String cell) {
        Matcher number = NUMBER.matcher(cell);
        return number.matches() ? OptionalInt.of(Integer.parseInt(number.group(1))) : OptionalInt.empty();
    }

    private static OptionalInt soFar(String cell) {
        String digits = cell.replaceAll("\\D", "");
        return digits.isEmpty() || digits.length() > 4 ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(digits));
    }

    private void trouble(Table.Row row, int column, String message) {
        troubles.add(new CellTrouble(row.line(), column + 1, row.cell(column), message));
    }
}
