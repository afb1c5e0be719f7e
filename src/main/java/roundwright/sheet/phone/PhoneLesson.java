package roundwright.sheet.phone;

import java.util.List;
import java.util.Optional;
import roundwright.course.Lesson;
import roundwright.pattern.Round;
import roundwright.pattern.Steps;
import roundwright.sheet.chart.ChartPicture;
import roundwright.sheet.content.CourseWork;
import roundwright.sheet.content.RoundWords;
import roundwright.sheet.content.TechniqueSteps;
import roundwright.sheet.content.WorkItem;
import roundwright.sheet.markup.Element;
import roundwright.technique.Technique;
import roundwright.wording.Wording;

/** One lesson on the page. */
record PhoneLesson(CourseWork work, boolean leftHanded) {
    private static final Wording WORDS = Wording.of("sheet");
    private static final double CHART = 260;

    Element of(Lesson lesson, boolean open) {
        String title = lesson.name().isBlank()
                ? WORDS.say("lesson", lesson.number())
                : WORDS.say("lesson-named", lesson.number(), lesson.name());
        Element inside = Element.of("details", Element.of("summary", Element.of("h2", title)));
        inside.with("class", "lesson");
        if (open) {
            inside.with("open", "open");
        }
        techniques(inside, work.fresh(lesson));
        rounds(inside, work.inClass(lesson));
        List<WorkItem> home = work.atHome(lesson);
        List<String> homework = lesson.words("homework");
        if (!home.isEmpty() || !homework.isEmpty()) {
            inside.add(Element.of("h3", WORDS.say("at-home")));
            homework.forEach(words -> inside.add(Element.of("p", words)));
            rounds(inside, home);
        }
        Element cautions = Element.of("ul");
        RoundWords.cautions(work, lesson).forEach(caution -> cautions.add(Element.of("li", caution)));
        return inside.add(Element.of("h3", WORDS.say("take-care")), cautions);
    }

    private void techniques(Element inside, List<Technique> fresh) {
        if (!fresh.isEmpty()) {
            inside.add(Element.of("h3", WORDS.say("new-today")));
            fresh.forEach(technique -> inside.add(Element.styled(
                    "details",
                    "how",
                    Element.of("summary", TechniqueSteps.capital(technique.name(work.terms()))),
                    new TechniqueSteps(work.terms(), leftHanded).body(technique))));
        }
    }

    private void rounds(Element inside, List<WorkItem> items) {
        String part = "";
        for (WorkItem item : items) {
            if (!item.part().equals(part)) {
                part = item.part();
                inside.add(Element.of("h3", part));
            }
            inside.add(item.round()
                    .map(round -> round(item, round))
                    .orElseGet(() -> Element.styled("p", "between", RoundWords.written(item))));
        }
    }

    private Element round(WorkItem item, Round round) {
        Element card = Element.styled("section", "round", Element.of("h4", RoundWords.name(round)));
        card.add(Element.styled("p", "written", RoundWords.written(item)));
        RoundWords.instructions(item).forEach(words -> card.add(Element.of("p", words)));
        card.add(Element.styled("p", "change", RoundWords.change(round)));
        chart(item)
                .ifPresent(steps -> card.add(Element.styled(
                        "details",
                        "drawn",
                        Element.of("summary", WORDS.say("phone-chart")),
                        Element.of("p", WORDS.say(leftHanded ? "chart-reading-left" : "chart-reading")),
                        ChartPicture.of(
                                steps, work.terms(), CHART, work.chartOf(item.part(), round.number(), leftHanded)))));
        return card.add(count(item, round));
    }

    private static Optional<Steps> chart(WorkItem item) {
        return item.again().isPresent() ? Optional.empty() : RoundWords.chart(item);
    }

    private static Element count(WorkItem item, Round round) {
        Element input = Element.of("input")
                .with("type", "number")
                .with("inputmode", "numeric")
                .with("min", "0")
                .with("max", "9999")
                .with("data-part", item.part())
                .with("data-round", String.valueOf(round.number()))
                .with("aria-label", WORDS.say("phone-count-of", item.part(), round.number()));
        round.count().ifPresent(count -> input.with("data-reach", String.valueOf(count)));
        return Element.styled(
                "p",
                "typed",
                Element.of("label", WORDS.say("count-box") + " ", input),
                " ",
                Element.of("span").with("class", "verdict").with("role", "status"));
    }
}
