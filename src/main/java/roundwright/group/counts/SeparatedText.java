package roundwright.group.counts;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Rows out of a text whose cells are parted by commas, semicolons, tabs or bars, with line breaks in quotes where there are any. */
final class SeparatedText {
    /** Where two part a text equally well, the first: commas stand in numbers and words, too. */
    private static final String SEPARATORS = "\t;|,";

    private static final int LOOKED_AT = 20_000;

    private final String text;
    private final char separator;
    private final RowsTaken taken = new RowsTaken();

    private SeparatedText(String text, char separator) {
        this.text = text;
        this.separator = separator;
    }

    static Table table(String text) throws NotATable {
        String plain = text.replace("\0", "");
        Optional<Character> said = said(plain);
        String body = said.isPresent() ? plain.substring(plain.indexOf('\n') + 1) : plain;
        return table(body, said.orElseGet(() -> likeliest(body)), said.isPresent() ? 1 : 0);
    }

    static Table table(String text, char separator) throws NotATable {
        return table(text.replace("\0", ""), separator, 0);
    }

    private static Table table(String body, char separator, int before) throws NotATable {
        SeparatedText reading = new SeparatedText(body, separator);
        int broken = reading.read(body, before, true);
        if (broken > 0) {
            // one quote that is never closed would make a single cell of all that follows
            reading.read(reading.from(broken - before), broken - 1, false);
        }
        return new Table("", reading.taken.rows(), broken);
    }

    /** Some spreadsheets write {@code sep=;} as a first line. */
    private static Optional<Character> said(String text) {
        String first = text.lines().findFirst().orElse("").strip();
        boolean says = first.length() == 5 && first.toLowerCase(Locale.ROOT).startsWith("sep=") && text.contains("\n");
        return says ? Optional.of(first.charAt(4)) : Optional.empty();
    }

    /** The sign that parts the first rows into most columns, the same number in most of them. */
    private static char likeliest(String text) {
        String start = text.substring(0, Math.min(text.length(), LOOKED_AT));
        char best = ',';
        long most = 0;
        for (char candidate : SEPARATORS.toCharArray()) {
            long worth = worth(widths(start, candidate));
            if (worth > most) {
                most = worth;
                best = candidate;
            }
        }
        return best;
    }

    /** How many cells each of the first rows would have. */
    private static List<Integer> widths(String start, char candidate) {
        List<Integer> widths = new ArrayList<>();
        try (CSVParser parser = format(candidate, true).parse(new StringReader(start))) {
            for (CSVRecord row : parser) {
                if (row.stream().anyMatch(cell -> !cell.isBlank())) {
                    widths.add(row.size());
                }
            }
        } catch (UncheckedIOException | IOException | IllegalStateException cutShort) {
            // a quotation mark that is open where the start ends, or for ever: the rows before it tell enough
        }
        return widths;
    }

    private static long worth(List<Integer> widths) {
        int[] found = widths.stream()
                .mapToInt(Integer::intValue)
                .filter(width -> width > 1)
                .sorted()
                .toArray();
        if (found.length == 0) {
            return 0;
        }
        int usual = found[found.length / 2];
        long steady = Arrays.stream(found).filter(width -> width == usual).count();
        return 1_000 * steady / widths.size() + Math.min(usual, 900);
    }

    /** The text from a line, counted from 1. */
    private String from(int line) {
        int at = 0;
        for (int passed = 1; passed < line; passed++) {
            at = text.indexOf('\n', at) + 1;
        }
        return text.substring(at);
    }

    /** Takes the rows; says the line of one that cannot be read, or 0. */
    private int read(String some, int linesBefore, boolean quotes) throws NotATable {
        int line = 1 + linesBefore;
        try (CSVParser parser = format(separator, quotes).parse(new StringReader(some))) {
            for (CSVRecord found : parser) {
                taken.add(line, found.toList());
                line = (int) parser.getCurrentLineNumber() + 1 + linesBefore;
            }
            return 0;
        } catch (UncheckedIOException | IOException | IllegalStateException unreadable) {
            return line;
        }
    }

    private static CSVFormat format(char separator, boolean quotes) {
        return CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setQuote(quotes ? '"' : null)
                .setIgnoreEmptyLines(false)
                .setIgnoreSurroundingSpaces(separator != '\t')
                .setTrailingData(true)
                .get();
    }
}
