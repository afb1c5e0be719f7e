package roundwright.sheet.content;

import java.util.List;
import roundwright.course.Lesson;
import roundwright.course.RoundRange;
import roundwright.course.planning.ItemWords;
import roundwright.sheet.markup.Element;
import roundwright.wording.Wording;

/** How a sheet names a lesson. */
final class LessonWords {
    private static final Wording WORDS = Wording.of("sheet");

    private LessonWords() {}

    static String over(CourseWork work, Lesson lesson) {
        return WORDS.say(
                "over-lesson",
                work.course().name(),
                lesson.number(),
                work.lessons().size());
    }

    static String title(Lesson lesson) {
        return lesson.name().isBlank() ? WORDS.say("lesson", lesson.number()) : lesson.name();
    }

    /** "Tower 4-6, Lantern 1", with a dash between numbers. */
    static Element rounds(Lesson lesson) {
        Element rounds = Element.of("p");
        for (RoundRange range : lesson.rounds()) {
            rounds.add(rounds.isEmpty() ? "" : ", ")
                    .add(Element.styled("span", "range", dashed(ItemWords.written(List.of(range)))));
        }
        return rounds;
    }

    /** Stretches of numbers with the dash of the printer. */
    static String dashed(String rounds) {
        return rounds.replaceAll("(\\d)-(\\d)", "$1–$2");
    }
}
