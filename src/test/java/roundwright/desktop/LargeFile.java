package roundwright.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import roundwright.desktop.desk.Desk;
import roundwright.group.Group;
import roundwright.group.Student;
import roundwright.workbook.CountEdit;
import roundwright.workbook.GroupEdit;
import roundwright.workbook.NewCount;
import roundwright.workbook.StudentEdit;

/** A course of 120 rounds with a group of 500 students, half-way through. */
final class LargeFile {
    static final int ROUNDS = 120;

    private static final int STUDENTS = 500;
    private static final int REPORTED = 60;

    private LargeFile() {}

    private static String pattern() {
        StringBuilder text =
                new StringBuilder("# Tall\n\n- terms: UK\n\n## Part: Body\n\n- Rnd 1: 30 dc in magic ring. (30)\n");
        IntStream.rangeClosed(2, ROUNDS)
                .forEach(round -> text.append("- Rnd ").append(round).append(": dc in each st around. (30)\n"));
        for (int lesson = 1; lesson <= ROUNDS / 10; lesson++) {
            text.append("\n## Lesson ")
                    .append(lesson)
                    .append(": Part ")
                    .append(lesson)
                    .append("\n\n- rounds: Body ");
            text.append(lesson * 10 - 9).append('-').append(lesson * 10).append('\n');
        }
        return text.toString();
    }

    static void fill(DeskOnFile file) {
        Desk desk = file.course("tall", pattern()).desk();
        Group group = new Group(
                desk.workbook().newGroup(), desk.choice().course().orElseThrow(), "Hall", Optional.empty(), "");
        desk.apply(new GroupEdit.AddGroup(group), () -> desk.chooseGroup(group.id()));
        List<Student> students = IntStream.range(0, STUDENTS)
                .mapToObj(index ->
                        new Student(desk.workbook().newStudent(), "Student of seat " + index, false, false, ""))
                .toList();
        desk.apply(new StudentEdit.AddStudents(group.id(), students));
        List<NewCount> counts = new ArrayList<>();
        for (int round = 1; round <= REPORTED; round++) {
            for (Student student : students) {
                counts.add(NewCount.of(
                        student.id(), "Body", round, 30 + (student.id().value() % 9 == 0 ? 1 : 0)));
            }
        }
        desk.apply(new CountEdit.ReportCounts(group.id(), counts));
    }
}
