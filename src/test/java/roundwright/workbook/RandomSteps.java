package roundwright.workbook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import roundwright.group.Attendance;
import roundwright.group.CourseId;
import roundwright.group.Group;
import roundwright.group.GroupId;
import roundwright.group.Session;
import roundwright.group.SessionId;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.store.Backup;
import roundwright.store.KeptCourse;
import roundwright.store.StoreException;

/** Steps that a busy and absent-minded teacher might take, one after another, the same for the same seed. */
final class RandomSteps {
    private final Workbook workbook;
    private final Random chance;
    private final boolean undoToo;
    private final boolean backupsToo;

    RandomSteps(Workbook workbook, long seed, boolean undoToo) {
        this(workbook, seed, undoToo, false);
    }

    RandomSteps(Workbook workbook, long seed, boolean undoToo, boolean backupsToo) {
        this.workbook = workbook;
        this.chance = new Random(seed);
        this.undoToo = undoToo;
        this.backupsToo = backupsToo;
    }

    void take() throws StoreException {
        int drawn = chance.nextInt(100);
        if (backupsToo && drawn > 70) {
            keep(drawn);
        } else if (undoToo && drawn < 10) {
            workbook.undo();
        } else if (undoToo && drawn < 14) {
            workbook.redo();
        } else {
            workbook.apply(edit());
        }
    }

    /** Makes a backup, goes back to one, or erases a student. */
    private void keep(int drawn) throws StoreException {
        List<Backup> backups = workbook.backups();
        List<GroupView> groups = workbook.view().groups();
        if (drawn > 95 && !groups.isEmpty() && !any(groups).students().isEmpty()) {
            GroupView group = groups.stream()
                    .filter(each -> !each.students().isEmpty())
                    .findFirst()
                    .orElseThrow();
            workbook.erase(any(group.students()).id(), false);
        } else if (drawn > 82 && !backups.isEmpty()) {
            workbook.restore(any(backups).file());
        } else {
            workbook.backUp();
        }
    }

    private Edit edit() {
        WorkbookView view = workbook.view();
        if (view.courses().isEmpty() || chance.nextInt(60) == 0) {
            return new CourseEdit.AddCourse(workbook.newCourse(), word(), "# " + word() + "\n".repeat(size(4000)));
        }
        if (view.groups().isEmpty() || chance.nextInt(50) == 0) {
            return new GroupEdit.AddGroup(group(workbook.newGroup(), course()));
        }
        GroupView group = any(view.groups());
        if (group.students().isEmpty() || chance.nextInt(25) == 0) {
            return new StudentEdit.AddStudents(
                    group.id(),
                    IntStream.range(0, size(30))
                            .mapToObj(index -> student(workbook.newStudent()))
                            .toList());
        }
        return inside(group);
    }

    private Edit inside(GroupView group) {
        int drawn = chance.nextInt(40);
        if (group.sessions().isEmpty() || drawn == 0) {
            return new SessionEdit.AddSession(session(workbook.newSession(), group.id()));
        }
        SessionId session = any(group.sessions()).id();
        StudentId student = any(group.students()).id();
        return switch (drawn) {
            case 1 -> new SessionEdit.RemoveSession(group.id(), session);
            case 2 -> new StudentEdit.RemoveStudent(group.id(), student);
            case 3 -> rare(new GroupEdit.RemoveGroup(group.id()));
            case 4 -> rare(new CourseEdit.RemoveCourse(course()));
            case 5 -> new CourseEdit.ReplaceCourseText(course(), word(), "# " + word());
            case 6 -> new GroupEdit.ChangeGroup(group(group.id(), group.group().course()));
            case 7 -> new StudentEdit.ChangeStudent(student(student));
            case 8, 9 -> new SessionEdit.WriteLog(group.id(), session, word(), word());
            case 10, 11, 12, 13 -> new SessionEdit.MarkAttendance(group.id(), session, student, attendance());
            case 14, 15 ->
                new CountEdit.SetNote(group.id(), student, "Tower", size(20), chance.nextBoolean() ? "" : word());
            case 16 -> new SettingEdit.SetSetting("page", Optional.of(word()));
            case 17 -> joining(group);
            case 18, 19, 20, 21 -> answer(group);
            case 22 -> new CountEdit.ReportCounts(group.id(), counts(group, size(800)));
            default -> new CountEdit.ReportCounts(group.id(), counts(group, 1));
        };
    }

    private Edit rare(Edit edit) {
        return chance.nextInt(4) == 0 ? edit : new SettingEdit.SetSetting("rare", Optional.empty());
    }

    /** A student of another group joins this one too. */
    private Edit joining(GroupView group) {
        GroupView other = any(workbook.view().groups());
        List<Student> newcomers = other.students().stream()
                .filter(student -> group.student(student.id()).isEmpty())
                .limit(1)
                .toList();
        return newcomers.isEmpty()
                ? new SettingEdit.SetSetting("rare", Optional.empty())
                : new StudentEdit.AddStudents(group.id(), newcomers);
    }

    private Edit answer(GroupView group) {
        if (group.reports().isEmpty()) {
            return new CountEdit.ReportCounts(group.id(), counts(group, 1));
        }
        Optional<String> answer = chance.nextInt(4) == 0 ? Optional.empty() : Optional.of(word());
        return new CountEdit.AnswerCheck(group.id(), any(group.reports()).sequence(), "recount", answer);
    }

    private List<NewCount> counts(GroupView group, int howMany) {
        List<NewCount> counts = new ArrayList<>();
        for (int index = 0; index < howMany; index++) {
            StudentId student = any(group.students()).id();
            int round = 1 + chance.nextInt(40);
            counts.add(
                    switch (chance.nextInt(8)) {
                        case 0 -> NewCount.unfinished(student, "Tower", round, OptionalInt.empty());
                        case 1 -> NewCount.pulledBackTo(student, "Tower", round);
                        default -> NewCount.of(student, "Tower", round, chance.nextInt(60));
                    });
        }
        return counts;
    }

    private Group group(GroupId id, CourseId course) {
        return new Group(
                id, course, word(), Optional.of(LocalDate.of(2026, 1, 1).plusDays(size(300))), word());
    }

    private Session session(SessionId id, GroupId group) {
        return new Session(id, group, LocalDate.of(2026, 1, 1).plusDays(size(300)), OptionalInt.empty(), word(), "");
    }

    private Student student(StudentId id) {
        return new Student(id, word(), chance.nextBoolean(), chance.nextBoolean(), word());
    }

    private Attendance attendance() {
        return any(List.of(Attendance.values()));
    }

    private CourseId course() {
        List<KeptCourse> courses = workbook.view().courses();
        return any(courses).id();
    }

    private int size(int most) {
        return 1 + chance.nextInt(most);
    }

    private String word() {
        return any(List.of("Tuesday", "Zoë", "O'Brien", "naïve; DROP", "針", "a \"quoted\" word", "🧶"))
                + chance.nextInt(1000);
    }

    private <V> V any(List<V> values) {
        return values.get(chance.nextInt(values.size()));
    }
}
