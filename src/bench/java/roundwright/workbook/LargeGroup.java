package roundwright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import roundwright.group.CourseId;
import roundwright.group.Group;
import roundwright.group.Student;

/** A course of 120 rounds in twelve lessons with a group of 500 students, for measuring. */
public final class LargeGroup {
    public static final int STUDENTS = 500;
    public static final int ROUNDS = 120;

    private static final int ROUNDS_A_LESSON = 10;
    private static final int STITCHES = 30;

    private LargeGroup() {}

    /** Puts the course and the group into an empty file, with counts of so many rounds of everyone, some of them off. */
    public static void fill(Workbook workbook, int reported) throws Exception {
        CourseId course = workbook.newCourse();
        workbook.apply(new CourseEdit.AddCourse(course, "Tall", course()));
        Group group = new Group(workbook.newGroup(), course, "Hall", Optional.empty(), "");
        workbook.apply(new GroupEdit.AddGroup(group));
        List<Student> students = IntStream.range(0, STUDENTS)
                .mapToObj(seat -> new Student(workbook.newStudent(), "Seat " + seat, false, false, ""))
                .toList();
        workbook.apply(new StudentEdit.AddStudents(group.id(), students));
        List<NewCount> counts = new ArrayList<>();
        for (int round = 1; round <= reported; round++) {
            for (Student student : students) {
                int off = (round + (int) student.id().value()) % 9 == 0 ? 1 : 0;
                counts.add(NewCount.of(student.id(), "Body", round, STITCHES + off));
            }
        }
        workbook.apply(new CountEdit.ReportCounts(group.id(), counts));
    }

    private static String course() {
        StringBuilder text = new StringBuilder("# Tall\n\n- terms: UK\n\n## Part: Body\n\n");
        for (int round = 1; round <= ROUNDS; round++) {
            String line = round == 1 ? STITCHES + " dc in magic ring." : "dc in each st around.";
            text.append("- Rnd %d: %s (%d)%n".formatted(round, line, STITCHES));
        }
        for (int lesson = 1; lesson <= ROUNDS / ROUNDS_A_LESSON; lesson++) {
            int last = lesson * ROUNDS_A_LESSON;
            text.append("%n## Lesson %d: Part %d%n%n- rounds: Body %d-%d%n"
                    .formatted(lesson, lesson, last - ROUNDS_A_LESSON + 1, last));
        }
        return text.toString();
    }
}
