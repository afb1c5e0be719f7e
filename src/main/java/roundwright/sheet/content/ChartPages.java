package roundwright.sheet.content;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundwright.pattern.Round;
import roundwright.pattern.Step;
import roundwright.pattern.Steps;
import roundwright.pattern.chart.ChartWords;
import roundwright.sheet.chart.ChartPicture;
import roundwright.sheet.markup.Element;
import roundwright.wording.Wording;

/**
 * The charts of the rounds of a lesson that are more than the same stitch all the way round, and a key to their signs.
 *
 * @param side of a chart in points
 */
record ChartPages(CourseWork work, boolean leftHanded, double side) {
    private static final Wording WORDS = Wording.of("sheet");
    private static final int CROWDED = 50;

    /** Beyond this no sign can be told from its neighbour on paper. */
    private static final int MOST_SIGNS = 160;

    List<Element> of(List<WorkItem> items) {
        List<WorkItem> drawn = items.stream()
                .filter(item -> item.again().isEmpty() && steps(item).isPresent())
                .toList();
        if (drawn.isEmpty()) {
            return List.of();
        }
        List<Element> all = new ArrayList<>();
        all.add(Element.styled("p", "lead", WORDS.say(leftHanded ? "chart-reading-left" : "chart-reading")));
        Element charts = Element.styled("div", "charts");
        drawn.forEach(item -> charts.add(figure(item)));
        all.add(charts);
        all.add(key(drawn));
        return all;
    }

    private static Optional<Steps> steps(WorkItem item) {
        return item.round().flatMap(Round::steps).filter(ChartPages::worthDrawing);
    }

    static boolean worthDrawing(Steps steps) {
        boolean oneKind = steps.list().stream().map(ChartPages::kind).distinct().count() <= 1;
        boolean plain = oneKind && !steps.shapes() && steps.takes() > 0;
        return !plain && !steps.list().isEmpty() && steps.makes() <= MOST_SIGNS;
    }

    private static Object kind(Step step) {
        return List.of(step.action(), step.stitch(), step.loop(), step.takes(), step.makes());
    }

    private Element figure(WorkItem item) {
        Round round = item.round().orElseThrow();
        Steps steps = round.steps().orElseThrow();
        double size = steps.makes() > CROWDED ? side * 1.5 : side;
        return Element.styled(
                "div",
                "chart",
                ChartPicture.of(steps, work.terms(), size, work.chartOf(item.part(), round.number(), leftHanded)),
                Element.styled(
                        "p",
                        "caption",
                        Element.of("b", WORDS.say("chart-of", item.part(), round.number())),
                        " " + LineText.change(round)));
    }

    private Element key(List<WorkItem> drawn) {
        Map<String, Step> signs = new LinkedHashMap<>();
        for (WorkItem item : drawn) {
            ChartWords.signs(steps(item).orElseThrow(), work.terms()).forEach(signs::putIfAbsent);
        }
        Element key = Element.styled("p", "key");
        signs.forEach((name, step) -> key.add(
                Element.styled("span", "sign", ChartPicture.sign(step, WORDS.say("sign-of", name)), " " + name)));
        return key;
    }
}
