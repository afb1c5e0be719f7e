package roundwright.group.counts;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Rows of cells, as they were found.
 *
 * @param separator what stands between cells: comma, semicolon, tab or bar
 * @param rows every row that is not blank, the one with the headings too
 */
public record Table(char separator, List<Row> rows) {
    /** More rows than any year of any teacher has; the rest is not looked at. */
    public static final int MOST_ROWS = 200_000;

    private static final String SEPARATORS = ",;\t|";
    private static final int LOOKED_AT = 30;

    /**
     * One row.
     *
     * @param line number of the line it begins on, from 1
     */
    public record Row(int line, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        /** The cell of a column from 0; blank where the row is too short. */
        public String cell(int column) {
            return column < cells.size() ? cells.get(column).strip() : "";
        }

        boolean blank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    public Table {
        rows = List.copyOf(rows);
    }

    /** A table out of a file, whatever letters and separators it is written with. */
    public static Table of(byte[] file) {
        return of(TableText.of(file));
    }

    /** A table out of a text, such as a block copied from a spreadsheet. */
    public static Table of(String text) {
        String plain = text.replace("\0", "");
        Optional<Character> said = said(plain);
        String body = said.isPresent() ? plain.substring(plain.indexOf('\n') + 1) : plain;
        char separator = said.orElseGet(() -> likeliest(body));
        return new Table(separator, rows(body, separator, said.isPresent() ? 1 : 0));
    }

    /** Some spreadsheets write {@code sep=;} as a first line. */
    private static Optional<Character> said(String text) {
        String first = text.lines().findFirst().orElse("").strip();
        boolean says = first.length() == 5 && first.toLowerCase(Locale.ROOT).startsWith("sep=") && text.contains("\n");
        return says ? Optional.of(first.charAt(4)) : Optional.empty();
    }

    /** The sign that parts the first lines into most columns, the same number in each. */
    private static char likeliest(String text) {
        List<String> lines =
                text.lines().filter(line -> !line.isBlank()).limit(LOOKED_AT).toList();
        char best = ',';
        long most = 0;
        for (char candidate : SEPARATORS.toCharArray()) {
            long least = lines.stream()
                    .mapToLong(line ->
                            line.chars().filter(sign -> sign == candidate).count())
                    .min()
                    .orElse(0);
            long steady = lines.stream()
                    .filter(line ->
                            line.chars().filter(sign -> sign == candidate).count() == least)
                    .count();
            long worth = least == 0 ? 0 : 1_000 * steady / lines.size() + least;
            if (worth > most) {
                most = worth;
                best = candidate;
            }
        }
        return best;
    }

    private static List<Row> rows(String text, char separator, int linesBefore) {
        List<Row> rows = parsed(text, separator, linesBefore, true);
        // one quote that is never closed would make a single cell of all that follows
        return rows.isEmpty() && !text.isBlank() ? parsed(text, separator, linesBefore, false) : rows;
    }

    private static List<Row> parsed(String text, char separator, int linesBefore, boolean quotes) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setQuote(quotes ? '"' : null)
                .setIgnoreEmptyLines(false)
                .setIgnoreSurroundingSpaces(separator != '\t')
                .get();
        List<Row> rows = new ArrayList<>();
        try (CSVParser parser = format.parse(new StringReader(text))) {
            int line = 1;
            for (CSVRecord found : parser) {
                Row row = new Row(line + linesBefore, found.toList());
                line = (int) parser.getCurrentLineNumber() + 1;
                if (!row.blank() && rows.size() < MOST_ROWS) {
                    rows.add(row);
                }
            }
            return rows;
        } catch (UncheckedIOException | IOException | IllegalStateException unreadable) {
            return quotes ? List.of() : rows;
        }
    }

    /** How many columns the widest of the first rows has. */
    public int columns() {
        return rows.stream()
                .limit(1_000)
                .mapToInt(row -> row.cells().size())
                .max()
                .orElse(0);
    }
}
