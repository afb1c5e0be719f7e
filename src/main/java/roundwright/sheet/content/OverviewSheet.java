package roundwright.sheet.content;

import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import roundwright.course.Lesson;
import roundwright.course.preparation.PrepLine;
import roundwright.sheet.chart.PiecePicture;
import roundwright.sheet.markup.Element;
import roundwright.sheet.style.SheetStyle;
import roundwright.wording.Wording;

/** The whole course on a page or two, for the wall or the organiser. */
public final class OverviewSheet {
    private static final Wording WORDS = Wording.of("sheet");
    private static final DateTimeFormatter DATE =
            DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(Locale.UK);

    private OverviewSheet() {}

    public static Element of(CourseWork work, SheetStyle style, Optional<GroupReports> group) {
        String name = work.course().name();
        String over =
                group.map(GroupReports::name).filter(text -> !text.isBlank()).orElse(WORDS.say("over-overview"));
        Document document = new Document(style, over, name, WORDS.say("overview-file", name));
        for (String paragraph : work.course().introduction().split("\\R\\s*\\R")) {
            if (!paragraph.isBlank()) {
                document.add(Element.styled("p", "introduction", paragraph.strip()));
            }
        }
        document.add(Element.styled(
                "p",
                "piece",
                PiecePicture.of(work.course().pattern(), 470, 74, WORDS.say("piece-picture", rounds(work)))));
        if (work.proposed()) {
            document.add(Element.styled("p", "remark", WORDS.say("proposed")));
        }
        document.section(WORDS.say("lessons"), table(work, group))
                .section(WORDS.say("materials"), Boxes.list(materials(work)))
                .section(WORDS.say("take-care"), Boxes.list(cautions(work)));
        return document.html();
    }

    private static int rounds(CourseWork work) {
        return work.course().pattern().parts().stream()
                .mapToInt(part -> part.rounds().size())
                .sum();
    }

    private static Element table(CourseWork work, Optional<GroupReports> group) {
        Element body = Element.of("tbody");
        for (Lesson lesson : work.lessons()) {
            Element named = Boxes.cell("do", Element.of("p", Element.of("b", LessonWords.title(lesson))));
            String minutes = WORDS.say("minutes", work.minutes(lesson));
            Optional<String> date =
                    group.flatMap(one -> one.session(lesson)).map(session -> DATE.format(session.date()) + " · ");
            named.add(Element.styled("p", "more", date.orElse("") + minutes));
            body.add(Element.of(
                    "tr",
                    Boxes.rowHead(lesson.number()).with("class", "number"),
                    named,
                    Boxes.cell("worked", LessonWords.rounds(lesson)),
                    Boxes.cell("taught", Wording.list(StudentSheet.names(work, work.fresh(lesson))))));
        }
        return Element.styled(
                "table",
                "lessons",
                Boxes.headRow(
                        WORDS.say("column-lesson"),
                        WORDS.say("column-title"),
                        WORDS.say("column-rounds"),
                        WORDS.say("column-new")),
                body);
    }

    private static List<String> materials(CourseWork work) {
        List<String> materials = new ArrayList<>();
        work.course().settings().words().stream()
                .filter(entry -> entry.key().equals("bring") || entry.key().equals("notions"))
                .forEach(entry -> materials.addAll(List.of(entry.value().split(";\\s*"))));
        work.prepared().stream()
                .filter(line -> line.kind() == PrepLine.Kind.MATERIAL)
                .map(PrepLine::text)
                .filter(text -> !Alike.any(materials, text))
                .forEach(materials::add);
        return materials.stream().map(TechniqueSteps::capital).toList();
    }

    private static List<String> cautions(CourseWork work) {
        List<String> cautions = new ArrayList<>(Cautions.ofCourse(work));
        work.prepared().stream()
                .filter(line -> line.kind() == PrepLine.Kind.CAUTION)
                .map(PrepLine::text)
                .filter(text -> !Alike.any(cautions, text))
                .forEach(cautions::add);
        cautions.add(WORDS.say("caution-local"));
        return cautions;
    }
}
