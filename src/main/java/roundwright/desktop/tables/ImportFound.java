package roundwright.desktop.tables;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.CountReport;
import roundwright.group.Standing;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.group.counts.ColumnMatch;
import roundwright.group.counts.CountRow;
import roundwright.group.counts.CountsHistory;
import roundwright.group.counts.CountsReader;
import roundwright.group.counts.Roll;
import roundwright.group.counts.Table;
import roundwright.mistakes.story.Check;
import roundwright.wording.Wording;
import roundwright.workbook.CountEdit;
import roundwright.workbook.Edit;
import roundwright.workbook.GroupView;
import roundwright.workbook.NewCount;
import roundwright.workbook.Several;
import roundwright.workbook.StudentEdit;
import roundwright.workbook.Workbook;

/**
 * What a table holds for a group, as far as it has been decided.
 *
 * @param match what its columns are taken for
 * @param result everything that was read
 * @param fresh what would be filed, in its order
 * @param already how many counts are in the group's history as they are
 * @param corrections how many of the fresh ones stand in the place of another count
 * @param newcomers students who would be added
 */
record ImportFound(
        Table table,
        ColumnMatch match,
        CountsReader.Result result,
        List<CountRow> fresh,
        int already,
        int corrections,
        List<String> newcomers) {
    private static final Wording WORDS = Wording.of("desktop");

    ImportFound {
        fresh = List.copyOf(fresh);
        newcomers = List.copyOf(newcomers);
    }

    /** Reads a table as was wished; nothing on the screen is touched. */
    static ImportFound read(Table table, ImportWish wish, OpenCourse course, GroupView group, ZoneId zone) {
        List<String> names = group.students().stream().map(Student::name).toList();
        Roll roll = new Roll(course.expectations(), names)
                .with(wish.decisions(course.kept().name()))
                .withChecks(Check.allAnswers());
        ColumnMatch match = wish.match().orElseGet(() -> ColumnMatch.guess(table, roll));
        CountsReader.Result result = CountsReader.read(table, match, roll);
        Map<String, StudentId> students = students(group);
        List<CountRow> unheld = new HeldCounts(group, zone).without(result.rows(), students);
        List<CountRow> fresh = CountsHistory.correcting(unheld).rows();
        List<String> newcomers = fresh.stream()
                .map(CountRow::student)
                .distinct()
                .filter(name -> !students.containsKey(name))
                .toList();
        int already = result.rows().size() - unheld.size();
        return new ImportFound(
                table, match, result, fresh, already, corrections(fresh, students, course, group), newcomers);
    }

    private static Map<String, StudentId> students(GroupView group) {
        Map<String, StudentId> students = new HashMap<>();
        group.students().forEach(student -> students.putIfAbsent(student.name(), student.id()));
        return students;
    }

    private static int corrections(
            List<CountRow> fresh, Map<String, StudentId> students, OpenCourse course, GroupView group) {
        Map<StudentId, Standing> standings = new HashMap<>();
        return (int) fresh.stream()
                .filter(row -> row.kind() == CountReport.Kind.COUNTED && students.containsKey(row.student()))
                .filter(row -> standings
                        .computeIfAbsent(
                                students.get(row.student()),
                                id -> Standing.derivedFrom(course.expectations(), group.reports(id)))
                        .round(row.place().part(), row.place().round())
                        .filter(held -> held.state().done() && !held.count().equals(row.count()))
                        .isPresent())
                .count();
    }

    /** How many counts cannot be used, or have not been decided on. */
    int leftOut() {
        return (int)
                result.troubles().stream().filter(trouble -> trouble.leftOut()).count();
    }

    /** The edit that files it, in one step; only where something is fresh. */
    Edit edit(Workbook workbook, GroupView group, String file, ZoneId zone) {
        List<Edit> edits = new ArrayList<>();
        Map<String, StudentId> students = students(group);
        List<Student> added = new ArrayList<>();
        for (String name : newcomers) {
            Student student = new Student(workbook.newStudent(), name, false, false, "");
            added.add(student);
            students.put(name, student.id());
        }
        if (!added.isEmpty()) {
            edits.add(new StudentEdit.AddStudents(group.id(), added));
        }
        edits.add(new CountEdit.ReportCounts(
                group.id(),
                fresh.stream()
                        .map(row -> count(row, students.get(row.student()), zone))
                        .toList()));
        return new Several(WORDS.say("edit-import", fresh.size(), file), edits);
    }

    private static NewCount count(CountRow row, StudentId student, ZoneId zone) {
        return new NewCount(
                student,
                row.place().part(),
                row.place().round(),
                row.kind(),
                row.count(),
                row.said().map(said -> said.atZone(zone).toInstant()),
                row.note(),
                row.checks());
    }
}
