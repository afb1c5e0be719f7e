package roundwright.sheet.content;

import java.util.ArrayList;
import java.util.List;
import roundwright.pattern.Round;
import roundwright.sheet.markup.Element;
import roundwright.wording.Wording;

/** The rounds of a lesson as a student works them: a box to tick, what to do, the count before and after, and a box for the count. */
final class RoundTable {
    private static final Wording WORDS = Wording.of("sheet");

    private RoundTable() {}

    /** A table for each part, under its name. */
    static List<Element> of(List<WorkItem> items) {
        List<Element> tables = new ArrayList<>();
        for (List<WorkItem> part : byPart(items)) {
            String name = part.get(0).part();
            Element body = Element.of("tbody");
            part.forEach(
                    item -> body.add(item.round().map(round -> row(item, round)).orElseGet(() -> between(item))));
            Element table = Element.styled("table", "rounds", head(), body);
            tables.add(Element.styled("div", "part", Element.of("h3", name), table));
        }
        return tables;
    }

    /** Stretches of one part each, in working order. */
    static List<List<WorkItem>> byPart(List<WorkItem> items) {
        List<List<WorkItem>> parts = new ArrayList<>();
        for (WorkItem item : items) {
            boolean same = !parts.isEmpty()
                    && parts.get(parts.size() - 1).get(0).part().equals(item.part());
            if (!same) {
                parts.add(new ArrayList<>());
            }
            parts.get(parts.size() - 1).add(item);
        }
        return parts;
    }

    private static Element head() {
        return Boxes.headRow(
                WORDS.say("column-done"),
                WORDS.say("column-round"),
                WORDS.say("column-do"),
                WORDS.say("column-start"),
                WORDS.say("column-end"),
                WORDS.say("column-count"));
    }

    private static Element row(WorkItem item, Round round) {
        return Element.styled(
                "tr",
                "round",
                Boxes.cell("done", Boxes.tick()),
                Boxes.rowHead(round.number()).with("class", "number"),
                Boxes.cell("do", instructions(item)),
                Boxes.cell("start", start(round)),
                Boxes.cell("end", LineText.number(round.count())),
                Boxes.cell("mine", Boxes.count()));
    }

    private static String start(Round round) {
        boolean fromRing = round.steps().filter(steps -> steps.takes() == 0).isPresent();
        return fromRing ? WORDS.say("from-nothing") : LineText.number(LineText.before(round));
    }

    private static List<Element> instructions(WorkItem item) {
        List<Element> lines = new ArrayList<>();
        if (item.again().isPresent()) {
            return List.of(Element.styled(
                    "p", "again", WORDS.say("same-as", item.again().get())));
        }
        lines.add(Element.styled("p", "written", LineText.written(item.line())));
        LineText.words(item.line(), item.round().orElseThrow())
                .forEach(words -> lines.add(Element.styled("p", "words", words)));
        if (LineText.unread(item.line())) {
            lines.add(Element.styled("p", "words", WORDS.say("unread-student")));
        }
        return lines;
    }

    private static Element between(WorkItem item) {
        return Element.styled(
                "tr",
                "between",
                Boxes.cell("done", Boxes.tick()),
                Boxes.cell("do", LineText.written(item.line())).with("colspan", "5"));
    }
}
