package roundwright.sheet.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundwright.course.Lesson;
import roundwright.course.preparation.PrepLine;
import roundwright.mistakes.help.GroupPicture;
import roundwright.sheet.markup.Element;
import roundwright.sheet.style.SheetStyle;
import roundwright.wording.Wording;

/** What the teacher has beside them in a lesson. */
public final class TeacherSheet {
    private static final Wording WORDS = Wording.of("sheet");
    private static final int NOTE_LINES = 7;

    private TeacherSheet() {}

    /**
     * @param group the group's picture and how many they are, where sheets are made for a group
     */
    public static Element of(
            CourseWork work, Lesson lesson, SheetStyle style, Optional<GroupPicture> group, int students) {
        Document document = new Document(
                style,
                LessonWords.over(work, lesson) + WORDS.say("over-teacher"),
                LessonWords.title(lesson),
                WORDS.say("teacher-file", work.course().name(), lesson.number()));
        List<PrepLine> prepared = work.prepared(lesson).orElse(List.of());
        document.kind("teacher")
                .section(WORDS.say("order"), SessionOrder.of(work, lesson))
                .section(WORDS.say("bring"), Boxes.list(bring(lesson, prepared)))
                .section(WORDS.say("new-for-them"), techniques(work, lesson))
                .section(WORDS.say("rounds-today"), new TeacherRounds(work).of(work.inClass(lesson)))
                .section(WORDS.say("outlook"), outlook(work, lesson, group, students))
                .section(WORDS.say("seats"), Boxes.list(LessonOutlook.seats(group)))
                .section(WORDS.say("at-home"), homework(work, lesson))
                .section(WORDS.say("mind"), Boxes.list(mind(work, lesson, prepared)))
                .section(WORDS.say("notes"), Boxes.list(lesson.words("note")), Boxes.lines(NOTE_LINES));
        return document.html();
    }

    private static List<String> bring(Lesson lesson, List<PrepLine> prepared) {
        List<String> bring = new ArrayList<>();
        lesson.words("bring").forEach(words -> bring.addAll(List.of(words.split(";\\s*"))));
        prepared.stream()
                .filter(line -> line.kind() == PrepLine.Kind.MATERIAL || line.kind() == PrepLine.Kind.SAMPLE)
                .map(PrepLine::text)
                .filter(text -> !Alike.any(bring, text))
                .forEach(bring::add);
        return bring.stream().map(TechniqueSteps::capital).toList();
    }

    private static List<Object> techniques(CourseWork work, Lesson lesson) {
        TechniqueSteps steps = new TechniqueSteps(work.terms(), false);
        List<Object> all = new ArrayList<>(steps.all(work.fresh(lesson)));
        List<String> passing = steps.names(work.groundwork(lesson));
        if (!passing.isEmpty()) {
            all.add(Element.of("p", Element.of("b", WORDS.say("in-passing")), " " + Wording.list(passing) + "."));
        }
        return all;
    }

    private static List<Object> outlook(CourseWork work, Lesson lesson, Optional<GroupPicture> group, int students) {
        List<String> hard = LessonOutlook.hardRounds(work, lesson, group, students);
        if (hard.isEmpty()) {
            return List.of();
        }
        boolean learned = group.map(GroupPicture::hasCounts).orElse(false);
        String from = learned ? WORDS.say("outlook-learned") : WORDS.say("outlook-usual", LessonOutlook.size(students));
        return List.of(Element.styled("p", "lead", from), Boxes.list(hard));
    }

    private static List<Object> homework(CourseWork work, Lesson lesson) {
        List<Object> homework = new ArrayList<>();
        lesson.words("homework").forEach(words -> homework.add(Element.of("p", words)));
        homework.addAll(new TeacherRounds(work).of(work.atHome(lesson)));
        return homework;
    }

    private static List<String> mind(CourseWork work, Lesson lesson, List<PrepLine> prepared) {
        List<String> mind = new ArrayList<>();
        prepared.stream()
                .filter(line -> line.kind() == PrepLine.Kind.ORDER)
                .map(PrepLine::text)
                .forEach(mind::add);
        mind.addAll(Cautions.of(work, lesson));
        return mind;
    }
}
