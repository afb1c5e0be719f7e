package roundwright.sheet.content;

import java.util.ArrayList;
import java.util.List;
import roundwright.course.Lesson;
import roundwright.sheet.markup.Element;
import roundwright.sheet.style.SheetStyle;
import roundwright.technique.Technique;
import roundwright.wording.Wording;

/** What a student takes home from a lesson. */
public final class StudentSheet {
    private static final Wording WORDS = Wording.of("sheet");

    private StudentSheet() {}

    public static Element of(CourseWork work, Lesson lesson, SheetStyle style) {
        Document document = new Document(
                style,
                LessonWords.over(work, lesson),
                LessonWords.title(lesson),
                WORDS.say("student-file", work.course().name(), lesson.number()));
        TechniqueSteps steps = new TechniqueSteps(work.terms(), style.leftHanded());
        List<WorkItem> items = work.inClass(lesson);
        document.add(Element.styled("p", "belongs", WORDS.say("belongs-to")))
                .section(WORDS.say("new-today"), steps.all(work.fresh(lesson)))
                .section(WORDS.say("groundwork-today"), steps.all(work.groundwork(lesson)))
                .section(WORDS.say("rounds-today"), rounds(items, style))
                .section(WORDS.say("at-home"), homework(work, lesson, style))
                .section(WORDS.say("charts"), charts(work, lesson, style))
                .section(
                        WORDS.say("short-words"),
                        Abbreviations.of(all(work, lesson), work.course().techniques(), work.terms()))
                .section(WORDS.say("take-care"), Boxes.list(Cautions.of(work, lesson)));
        return document.html();
    }

    static List<WorkItem> all(CourseWork work, Lesson lesson) {
        List<WorkItem> all = new ArrayList<>(work.inClass(lesson));
        all.addAll(work.atHome(lesson));
        return all;
    }

    private static List<Element> rounds(List<WorkItem> items, SheetStyle style) {
        if (items.isEmpty()) {
            return List.of();
        }
        List<Element> rounds = new ArrayList<>();
        rounds.add(Element.styled("p", "lead", WORDS.say("count-every-round")));
        rounds.addAll(style.inBlocks() ? RoundBlocks.of(items) : RoundTable.of(items));
        return rounds;
    }

    private static List<Object> homework(CourseWork work, Lesson lesson, SheetStyle style) {
        List<Object> homework = new ArrayList<>();
        lesson.words("homework").forEach(words -> homework.add(Element.of("p", words)));
        List<WorkItem> items = work.atHome(lesson);
        homework.addAll(style.inBlocks() ? RoundBlocks.of(items) : RoundTable.of(items));
        return homework;
    }

    private static List<Element> charts(CourseWork work, Lesson lesson, SheetStyle style) {
        double side = style.large() ? 290 : 150;
        return new ChartPages(work, style.leftHanded(), side).of(all(work, lesson));
    }

    /** Techniques by name, for a sentence. */
    static List<String> names(CourseWork work, List<Technique> techniques) {
        return techniques.stream()
                .map(technique -> technique.name(work.terms()))
                .toList();
    }
}
