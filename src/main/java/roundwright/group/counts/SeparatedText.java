package roundwright.group.counts;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Rows out of a text whose cells are parted by commas, semicolons, tabs or bars, with line breaks in quotes where there are any. */
final class SeparatedText {
    private static final String SEPARATORS = ",;\t|";
    private static final int LOOKED_AT = 30;

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

    /** The sign that parts the first lines into most columns, the same number in each; what stands in quotes parts nothing. */
    private static char likeliest(String text) {
        List<String> lines = text.lines()
                .map(line -> line.replaceAll("\"[^\"]*\"", ""))
                .filter(line -> !line.isBlank())
                .limit(LOOKED_AT)
                .toList();
        char best = ',';
        long most = 0;
        for (char candidate : SEPARATORS.toCharArray()) {
            long worth = worth(lines, candidate);
            if (worth > most) {
                most = worth;
                best = candidate;
            }
        }
        return best;
    }

    private static long worth(List<String> lines, char candidate) {
        long[] found = lines.stream()
                .mapToLong(
                        line -> line.chars().filter(sign -> sign == candidate).count())
                .filter(number -> number > 0)
                .sorted()
                .toArray();
        if (found.length == 0) {
            return 0;
        }
        long usual = found[found.length / 2];
        long steady = java.util.stream.LongStream.of(found)
                .filter(number -> number == usual)
                .count();
        return 1_000 * steady / lines.size() + Math.min(usual, 900);
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
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setQuote(quotes ? '"' : null)
                .setIgnoreEmptyLines(false)
                .setIgnoreSurroundingSpaces(separator != '\t')
                .setTrailingData(true)
                .get();
        int line = 1 + linesBefore;
        try (CSVParser parser = format.parse(new StringReader(some))) {
            for (CSVRecord found : parser) {
                taken.add(line, found.toList());
                line = (int) parser.getCurrentLineNumber() + 1 + linesBefore;
            }
            return 0;
        } catch (UncheckedIOException | IOException | IllegalStateException unreadable) {
            return line;
        }
    }
}
