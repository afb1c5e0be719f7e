package roundwright.sheet.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundwright.group.RoundStanding;
import roundwright.group.Standing;
import roundwright.group.Student;
import roundwright.pattern.Round;
import roundwright.sheet.chart.ChartPicture;
import roundwright.sheet.markup.Element;
import roundwright.sheet.style.SheetStyle;
import roundwright.technique.FirstUses.Place;
import roundwright.technique.FirstUses.Use;
import roundwright.technique.Technique;
import roundwright.wording.Wording;

/** One student's own page: what they can do, what comes next, and their counts. Nobody else's name is on it. */
public final class ProgressSheet {
    private static final Wording WORDS = Wording.of("sheet");

    private final CourseWork work;
    private final Student student;
    private final Standing standing;
    private final SheetStyle style;

    private ProgressSheet(CourseWork work, Student student, Standing standing, SheetStyle style) {
        this.work = work;
        this.student = student;
        this.standing = standing;
        this.style = style;
    }

    public static Element of(CourseWork work, GroupReports group, Student student, SheetStyle style) {
        return new ProgressSheet(work, student, group.standing(work.course(), student), style).html();
    }

    private Element html() {
        Document document = new Document(
                style,
                work.course().name(),
                student.name(),
                WORDS.say("progress-file", work.course().name()));
        document.add(Element.styled("p", "introduction", where()));
        document.section(WORDS.say("you-can"), canDo())
                .section(WORDS.say("comes-next"), next())
                .section(WORDS.say("your-counts"), counts());
        return document.html();
    }

    private String where() {
        if (standing.next().isEmpty()) {
            return WORDS.say("all-done");
        }
        return standing.position()
                .map(round -> WORDS.say(
                        "you-are-at", round.place().part(), round.place().round(), done(), total()))
                .orElse(WORDS.say("before-the-start"));
    }

    private long done() {
        return standing.rounds().stream().filter(round -> round.state().done()).count();
    }

    private int total() {
        return standing.rounds().size();
    }

    private Optional<Place> place(RoundStanding round) {
        return work.uses().places().stream()
                .filter(place -> place.part().equals(round.place().part())
                        && place.round().equals(Optional.of(round.place().round())))
                .findFirst();
    }

    private int reached() {
        return standing.position().flatMap(this::place).map(Place::order).orElse(-1);
    }

    private Object canDo() {
        int reached = reached();
        Element list = Element.styled("p", "able");
        work.uses().all().stream()
                .filter(use -> use.place().order() <= reached)
                .map(Use::technique)
                .map(technique -> technique.name(work.terms()))
                .forEach(name -> list.add(Element.of("span", WORDS.say("able", TechniqueSteps.capital(name))), " "));
        return list.isEmpty() ? List.of() : list;
    }

    private List<Element> next() {
        Optional<Round> round = standing.next()
                .flatMap(this::place)
                .flatMap(place -> Optional.of(place.item())
                        .filter(Round.class::isInstance)
                        .map(Round.class::cast));
        if (round.isEmpty()) {
            return List.of();
        }
        RoundStanding next = standing.next().orElseThrow();
        List<Element> all = new ArrayList<>();
        all.add(Element.of(
                "h3",
                WORDS.say("chart-of", next.place().part(), next.place().round()) + " · "
                        + LineText.change(round.get())));
        all.add(Element.styled("p", "written", LineText.written(round.get().line())));
        LineText.words(round.get().line(), round.get()).forEach(words -> all.add(Element.of("p", words)));
        round.get()
                .steps()
                .filter(ChartPages::worthDrawing)
                .ifPresent(steps -> all.add(Element.styled(
                        "p",
                        "piece one-chart",
                        ChartPicture.of(
                                steps,
                                work.terms(),
                                style.large() ? 290 : 190,
                                work.chartOf(next.place().part(), next.place().round(), style.leftHanded())))));
        all.addAll(comingTechnique());
        return all;
    }

    /** The first technique that the student has not met. */
    private List<Element> comingTechnique() {
        int reached = reached();
        Optional<Technique> coming = work.uses().all().stream()
                .filter(use -> use.place().order() > reached && !use.technique().groundwork())
                .map(Use::technique)
                .findFirst();
        TechniqueSteps steps = new TechniqueSteps(work.terms(), style.leftHanded());
        return coming.map(technique ->
                        List.of(Element.of("p", Element.of("b", WORDS.say("next-technique"))), steps.one(technique)))
                .orElse(List.of());
    }

    private Object counts() {
        List<RoundStanding> counted = standing.rounds().stream()
                .filter(round -> round.count().isPresent())
                .toList();
        if (counted.isEmpty()) {
            return List.of();
        }
        Element body = Element.of("tbody");
        counted.forEach(round -> body.add(row(round)));
        return Element.styled(
                "table",
                "own",
                Boxes.headRow(
                        WORDS.say("column-round"),
                        WORDS.say("column-counted"),
                        WORDS.say("column-reach"),
                        WORDS.say("column-said")),
                body);
    }

    private Element row(RoundStanding round) {
        return Element.of(
                "tr",
                Boxes.rowHead(WORDS.say(
                        "chart-of", round.place().part(), round.place().round())),
                Boxes.cell("counted", String.valueOf(round.count().getAsInt())),
                Boxes.cell("reach", LineText.number(round.expected())),
                Boxes.cell("said", said(round)));
    }

    private static String said(RoundStanding round) {
        int off = round.difference();
        return switch (round.state()) {
            case RIGHT -> WORDS.say("said-right");
            case OVER -> WORDS.say("said-over", off);
            case UNDER -> WORDS.say("said-under", -off);
            case UNFINISHED -> WORDS.say("said-unfinished");
            default -> WORDS.say("said-counted");
        };
    }
}
