package roundwright.sheet.content;

import java.util.ArrayList;
import java.util.List;
import roundwright.notation.Problem;
import roundwright.pattern.Round;
import roundwright.sheet.chart.ChartPicture;
import roundwright.sheet.markup.Element;
import roundwright.wording.Wording;

/** The rounds of a lesson for the teacher: the line, what it says in words, its sum, and its chart. */
final class TeacherRounds {
    private static final Wording WORDS = Wording.of("sheet");
    private static final double SIDE = 88;
    private static final int MOST_SIGNS = 90;

    private final CourseWork work;

    TeacherRounds(CourseWork work) {
        this.work = work;
    }

    List<Element> of(List<WorkItem> items) {
        List<Element> tables = new ArrayList<>();
        for (List<WorkItem> part : RoundTable.byPart(items)) {
            Element body = Element.of("tbody");
            part.forEach(
                    item -> body.add(item.round().map(round -> row(item, round)).orElseGet(() -> between(item))));
            Element head = Boxes.headRow(
                    WORDS.say("column-round"),
                    WORDS.say("column-line"),
                    WORDS.say("column-end"),
                    WORDS.say("column-chart"));
            tables.add(Element.styled(
                    "div",
                    "part",
                    Element.of("h3", part.get(0).part()),
                    Element.styled("table", "taught", head, body)));
        }
        return tables;
    }

    private Element row(WorkItem item, Round round) {
        return Element.styled(
                "tr",
                "round",
                Boxes.rowHead(round.number()).with("class", "number"),
                Boxes.cell("do", line(item)),
                Boxes.cell("end", LineText.number(round.count())),
                Boxes.cell("drawn", chart(item)));
    }

    private List<Element> line(WorkItem item) {
        if (item.again().isPresent()) {
            return List.of(Element.styled(
                    "p", "again", WORDS.say("same-as", item.again().get())));
        }
        List<Element> said = new ArrayList<>();
        said.add(Element.styled("p", "written", LineText.written(item.line())));
        add(said, "words", item.line().words());
        add(said, "sum", item.line().sum());
        item.line().problems().stream()
                .map(Problem::message)
                .forEach(message -> said.add(Element.styled("p", "problem", WORDS.say("check-line", message))));
        if (LineText.unread(item.line())) {
            said.add(Element.styled("p", "problem", WORDS.say("unread-teacher")));
        }
        return said;
    }

    private static void add(List<Element> said, String style, String text) {
        if (!text.isBlank()) {
            said.add(Element.styled("p", style, text));
        }
    }

    private List<Object> chart(WorkItem item) {
        return item.again().isPresent()
                ? List.of()
                : item.round()
                        .<List<Object>>map(round -> chart(item.part(), round))
                        .orElse(List.of());
    }

    private List<Object> chart(String part, Round round) {
        return round.steps()
                .filter(ChartPages::worthDrawing)
                .filter(steps -> steps.makes() <= MOST_SIGNS)
                .<List<Object>>map(steps ->
                        List.of(ChartPicture.of(steps, work.terms(), SIDE, work.chartOf(part, round.number(), false))))
                .orElse(List.of());
    }

    private static Element between(WorkItem item) {
        return Element.styled(
                "tr", "between", Boxes.cell("do", LineText.written(item.line())).with("colspan", "4"));
    }
}
