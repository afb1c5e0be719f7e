package roundwright.workbook;

import java.util.List;
import java.util.stream.Stream;
import roundwright.group.CourseId;
import roundwright.group.GroupId;
import roundwright.group.SessionId;
import roundwright.group.StudentId;
import roundwright.store.FiledReport;

/** What has changed in the workbook; the view holds the news. Each thing is told once for an edit, however much of it changed. */
public sealed interface Change {
    /** A course came, went, or has another name or text. */
    record OfCourse(CourseId course) implements Change {}

    /** A group came, went, has another name, or other students in it. */
    record OfGroup(GroupId group) implements Change {}

    /** A student came, went or is called otherwise. */
    record OfStudent(StudentId student) implements Change {}

    /** A session came or went, or has another log or register. */
    record OfSession(GroupId group, SessionId session) implements Change {}

    /** Reports, checks or the note of one student's round. A report that the work was pulled back touches the rounds above, too. */
    record OfCount(GroupId group, StudentId student, String part, int round) implements Change {
        static OfCount of(FiledReport filed) {
            return new OfCount(
                    filed.group(),
                    filed.report().student(),
                    filed.report().part(),
                    filed.report().round());
        }
    }

    /** Everything that is in either state of the file: told when one takes the place of the other. */
    static List<Change> between(WorkbookView before, WorkbookView after) {
        return Stream.of(before, after)
                .flatMap(view -> Stream.of(
                                view.courses().stream().<Change>map(course -> new OfCourse(course.id())),
                                view.groups().stream().<Change>map(group -> new OfGroup(group.id())),
                                view.studentsCopy().values().stream()
                                        .<Change>map(student -> new OfStudent(student.id())))
                        .flatMap(changes -> changes))
                .distinct()
                .toList();
    }

    /** A setting has another value. */
    record OfSetting(String name) implements Change {}
}
