package roundwright.sheet.content;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import roundwright.course.Lesson;
import roundwright.group.Attendance;
import roundwright.group.Session;
import roundwright.group.Student;
import roundwright.sheet.markup.Element;
import roundwright.sheet.style.SheetStyle;
import roundwright.wording.Dates;
import roundwright.wording.Wording;

/** The register: students by lessons, with the marks that there are and boxes for the rest. */
public final class RegisterSheet {
    private static final Wording WORDS = Wording.of("sheet");
    private static final DateTimeFormatter DAY = Dates.as("d MMM");
    private static final int EMPTY_ROWS = 14;
    private static final int MOST_UPRIGHT = 9;

    private RegisterSheet() {}

    public static Element of(CourseWork work, SheetStyle style, Optional<GroupReports> group) {
        String name = work.course().name();
        String over =
                group.map(GroupReports::name).filter(text -> !text.isBlank()).orElse(name);
        Document document = new Document(style, over, WORDS.say("register"), WORDS.say("register-file", name));
        if (work.lessons().size() > MOST_UPRIGHT) {
            document.landscape();
        }
        document.add(Element.of("p", WORDS.say("register-key")), table(work, group));
        return document.add(Element.styled("p", "remark", WORDS.say("private"))).html();
    }

    private static Element table(CourseWork work, Optional<GroupReports> group) {
        Element row =
                Element.of("tr", Element.of("th", WORDS.say("column-student")).with("scope", "col"));
        for (Lesson lesson : work.lessons()) {
            Optional<Session> session = group.flatMap(one -> one.session(lesson));
            row.add(Element.of("th", Element.of("b", String.valueOf(lesson.number())))
                    .with("scope", "col")
                    .add(session.map(one -> Element.of("p", DAY.format(one.date())))));
        }
        Element body = Element.of("tbody");
        List<Student> students = group.map(GroupReports::students).orElse(List.of());
        students.forEach(student -> body.add(row(work, group.orElseThrow(), student)));
        if (students.isEmpty()) {
            IntStream.range(0, EMPTY_ROWS).forEach(i -> body.add(emptyRow(work)));
        }
        return Element.styled("table", "register grid", Element.of("thead", row), body);
    }

    private static Element row(CourseWork work, GroupReports group, Student student) {
        Element row = Element.of("tr", Boxes.rowHead(student.name()));
        for (Lesson lesson : work.lessons()) {
            Optional<Attendance> mark = group.session(lesson).flatMap(session -> group.attendance(session, student));
            row.add(Boxes.cell("mark", mark.map(RegisterSheet::word).orElse(" ")));
        }
        return row;
    }

    private static String word(Attendance attendance) {
        return WORDS.say("attendance." + attendance.name().toLowerCase(Locale.ROOT));
    }

    private static Element emptyRow(CourseWork work) {
        Element row = Element.of("tr", Boxes.rowHead(" "));
        work.lessons().forEach(lesson -> row.add(Boxes.cell("mark", " ")));
        return row;
    }
}
