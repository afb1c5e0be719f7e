package roundwright.sheet.content;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundwright.course.Lesson;
import roundwright.group.RoundStanding;
import roundwright.group.RoundStanding.State;
import roundwright.group.Standing;
import roundwright.group.Student;
import roundwright.pattern.Round;
import roundwright.sheet.markup.Element;
import roundwright.sheet.style.SheetStyle;
import roundwright.wording.Wording;

/** The group's counts, students by rounds, a table for each stretch of a lesson. For the teacher alone. */
public final class CountsSheet {
    private static final Wording WORDS = Wording.of("sheet");
    private static final int MOST_COLUMNS = 15;

    private CountsSheet() {}

    public static Element of(CourseWork work, SheetStyle style, GroupReports group) {
        String name = work.course().name();
        String over = group.name().isBlank() ? name : group.name();
        Document document = new Document(style, over, WORDS.say("counts"), WORDS.say("counts-file", name)).landscape();
        document.add(Element.of("p", WORDS.say("counts-key")));
        Map<Student, Standing> standings = new LinkedHashMap<>();
        group.students().forEach(student -> standings.put(student, group.standing(work.course(), student)));
        for (Lesson lesson : work.lessons()) {
            document.section(
                    WORDS.say("lesson-named", lesson.number(), LessonWords.title(lesson)),
                    tables(work, lesson, standings));
        }
        return document.add(Element.styled("p", "remark", WORDS.say("private"))).html();
    }

    private static List<Element> tables(CourseWork work, Lesson lesson, Map<Student, Standing> standings) {
        List<Element> tables = new ArrayList<>();
        for (List<WorkItem> part : RoundTable.byPart(StudentSheet.all(work, lesson))) {
            List<Round> rounds =
                    part.stream().flatMap(item -> item.round().stream()).toList();
            for (int from = 0; from < rounds.size(); from += MOST_COLUMNS) {
                List<Round> some = rounds.subList(from, Math.min(rounds.size(), from + MOST_COLUMNS));
                tables.add(table(part.get(0).part(), some, standings));
            }
        }
        return tables;
    }

    private static Element table(String part, List<Round> rounds, Map<Student, Standing> standings) {
        Element head = Element.of("tr", Element.of("th", part).with("scope", "col"));
        rounds.forEach(round -> head.add(Element.of(
                        "th",
                        Element.of("b", String.valueOf(round.number())),
                        Element.of("p", WORDS.say("count-to-reach", LineText.number(round.count()))))
                .with("scope", "col")));
        Element body = Element.of("tbody");
        standings.forEach((student, standing) -> {
            Element row = Element.of("tr", Boxes.rowHead(student.name()));
            rounds.forEach(round -> row.add(cell(standing.round(part, round.number()))));
            body.add(row);
        });
        return Element.styled("table", "counts grid", Element.of("thead", head), body);
    }

    private static Element cell(Optional<RoundStanding> standing) {
        String style = standing.map(RoundStanding::state)
                .map(state -> state == State.OVER ? "mark over" : state == State.UNDER ? "mark under" : "mark")
                .orElse("mark");
        return Boxes.cell(style, standing.map(CountsSheet::words).orElse(" "));
    }

    /** "43 ▲1": shape and number, for colour alone says nothing on a black and white page. */
    static String words(RoundStanding standing) {
        int off = standing.difference();
        String count =
                standing.count().isPresent() ? String.valueOf(standing.count().getAsInt()) : " ";
        return switch (standing.state()) {
            case OVER -> WORDS.say("mark-over", count, off);
            case UNDER -> WORDS.say("mark-under", count, -off);
            case UNFINISHED -> WORDS.say("mark-unfinished", count).strip();
            case PULLED_BACK -> WORDS.say("mark-pulled-back");
            case RIGHT, COUNTED, NOT_REPORTED, NOT_YET -> count;
        };
    }
}
