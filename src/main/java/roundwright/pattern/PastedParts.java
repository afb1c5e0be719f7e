package roundwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import roundwright.notation.LineReader;
import roundwright.notation.WrittenLine;

/** Finds where the parts of a pasted pattern begin. */
final class PastedParts {
    private final List<Row> rows;
    private final boolean numbered;

    /** A line with what its words tell. */
    private record Row(BareLines.Row written, WrittenLine read) {
        SourceLine line() {
            return written.line();
        }

        Optional<PartHeading> heading() {
            return PartHeading.of(read);
        }
    }

    PastedParts(List<BareLines.Row> written) {
        rows = written.stream()
                .map(row -> new Row(row, LineReader.read(row.line().text())))
                .toList();
        numbered = rows.stream().anyMatch(row -> row.read().label().isPresent());
    }

    PastedPattern cut() {
        List<Integer> starts = starts();
        List<Integer> cuts = new ArrayList<>();
        for (int start : starts) {
            cuts.add(cutBefore(start, cuts.isEmpty()));
        }
        if (cuts.isEmpty()) {
            return new PastedPattern(lines(0, rows.size()), List.of());
        }
        Set<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        List<PartText> parts = new ArrayList<>();
        for (int i = 0; i < cuts.size(); i++) {
            int end = i + 1 < cuts.size() ? cuts.get(i + 1) : rows.size();
            parts.add(part(cuts.get(i), starts.get(i), end, names));
        }
        return new PastedPattern(lines(0, cuts.get(0)), parts);
    }

    /** The first rounds of parts: where numbers begin again or, without numbers, below a heading that stands apart. */
    private List<Integer> starts() {
        List<Integer> starts = new ArrayList<>();
        int last = 0;
        int round = -1;
        for (int i = firstRound(); i < rows.size(); i++) {
            Row row = rows.get(i);
            if (!round(row)) {
                continue;
            }
            int number = row.read().label().map(WrittenLine.Label::first).orElse(0);
            boolean again = numbered ? number <= last && number <= 1 : headed(round + 1, i);
            if (starts.isEmpty() || again || marked(round + 1, i)) {
                starts.add(i);
            }
            last = row.read().label().map(WrittenLine.Label::last).orElse(0);
            round = i;
        }
        return starts;
    }

    /** Where any round is the first by its number, what stands before it is none: "3 balls of wool". */
    private int firstRound() {
        return IntStream.range(0, rows.size())
                .filter(i -> rows.get(i)
                        .read()
                        .label()
                        .filter(label -> label.first() <= 1)
                        .isPresent())
                .findFirst()
                .orElse(0);
    }

    /** Where a pattern numbers its rounds, a line without a number is none: "Abbreviations: sc single crochet". */
    private boolean round(Row row) {
        return numbered ? row.read().label().isPresent() : row.read().stitches();
    }

    private boolean headed(int from, int to) {
        return IntStream.range(from, to)
                .anyMatch(i ->
                        rows.get(i).written().gap() && rows.get(i).heading().isPresent());
    }

    /** Whether a heading with its mark stands there, which begins a part whatever the numbers say. */
    private boolean marked(int from, int to) {
        return IntStream.range(from, to)
                .anyMatch(i -> rows.get(i).heading().map(PartHeading::marked).orElse(false));
    }

    /** The line of a part that begins with a round: its heading, or what stands below the last blank line, or the round. */
    private int cutBefore(int start, boolean first) {
        int from = belowLastRound(start);
        Optional<Integer> heading = last(
                from,
                start,
                i -> rows.get(i).heading().filter(found -> !found.onlyHowMany()).isPresent());
        if (first) {
            return heading.or(() -> last(from, start, i -> rows.get(i).read().founds()))
                    .orElse(start);
        }
        return heading.or(() -> last(from, start + 1, i -> rows.get(i).written().gap()))
                .orElse(start);
    }

    private int belowLastRound(int start) {
        int from = start;
        while (from > 0 && !round(rows.get(from - 1))) {
            from--;
        }
        return from;
    }

    private static Optional<Integer> last(int from, int to, java.util.function.IntPredicate wanted) {
        return IntStream.range(from, to).filter(wanted).boxed().reduce((earlier, later) -> later);
    }

    private PartText part(int from, int start, int end, Set<String> names) {
        Optional<PartHeading> heading =
                from < start ? rows.get(from).heading().filter(found -> !found.onlyHowMany()) : Optional.empty();
        List<SourceLine> lines = new ArrayList<>();
        heading.flatMap(found -> found.rest(rows.get(from).line())).ifPresent(lines::add);
        lines.addAll(lines(heading.isPresent() ? from + 1 : from, end));
        return new PartText(named(heading.map(PartHeading::name).orElse("Part " + (names.size() + 1)), names), lines);
    }

    /** No two parts have one name. */
    private static String named(String wanted, Set<String> names) {
        String name = wanted;
        for (int i = 2; !names.add(name); i++) {
            name = wanted + " " + i;
        }
        return name;
    }

    private List<SourceLine> lines(int from, int to) {
        return rows.subList(from, to).stream().map(Row::line).toList();
    }
}
