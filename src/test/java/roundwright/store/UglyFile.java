package roundwright.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import roundwright.group.Attendance;
import roundwright.group.CountReport;
import roundwright.group.CourseId;
import roundwright.group.Enrolment;
import roundwright.group.Group;
import roundwright.group.GroupId;
import roundwright.group.Note;
import roundwright.group.RegisterMark;
import roundwright.group.Session;
import roundwright.group.SessionId;
import roundwright.group.Student;
import roundwright.group.StudentId;

/** A year of a busy teacher who pastes anything anywhere, undoes, takes people in and out, and has two groups at once. */
final class UglyFile {
    private static final List<String> NAMES = List.of(
            "Ines",
            "ines",
            "O'Brien, \"Kit\"",
            "Zoë  van der Laan",
            "עדי",
            "李小龙",
            "=SUM(A1)",
            "Bram\tde Vries",
            "x",
            "Ana María de los Ángeles Fernández-Gutiérrez y Montenegro",
            "🧶",
            "Robert'); DROP TABLE student;--",
            "e\u0301clair",
            "12");

    private final Store store;
    private final Random chance = new Random(20260203);
    private long report;

    private UglyFile(Store store) {
        this.store = store;
    }

    static void fill(Store store) throws StoreException {
        store.transaction(new UglyFile(store)::fill);
    }

    private void fill() throws StoreException {
        String long_ = "- Rnd 7: (dc, inc) x 6 (18)\r\n".repeat(400);
        store.courses().insert(new KeptCourse(new CourseId(1), "Acorn", "# Acorn\r\n\r\n## Part: Acorn\r\n" + long_));
        store.courses().insert(new KeptCourse(new CourseId(3), "", ""));
        store.courses().insert(new KeptCourse(new CourseId(9), "# not * a : name", "\uFEFFno heading at all\n"));
        for (int id = 1; id <= NAMES.size(); id++) {
            String note = id % 4 == 0 ? "two\nlines\r\nof note " + "n".repeat(id * 40) : "";
            store.students().insert(new Student(new StudentId(id * 2L), NAMES.get(id - 1), id % 5 == 0, id == 3, note));
        }
        group(1, 1, "Tuesdays", Optional.of(LocalDate.of(2026, 2, 3)), 0, NAMES.size());
        group(2, 9, "Tuesdays", Optional.empty(), 5, 9);
        store.groups().insert(new Group(new GroupId(7), new CourseId(3), "empty", Optional.empty(), ""));
        store.settings().insert(new Setting("last-group", "99"));
        store.settings().insert(new Setting("page", ""));
        store.settings().insert(new Setting("run 1", "2026-02-03 Tue 18:30\nweird"));
    }

    private void group(long id, long course, String name, Optional<LocalDate> start, int from, int to)
            throws StoreException {
        GroupId group = new GroupId(id);
        store.groups().insert(new Group(group, new CourseId(course), name, start, "Mill Lane 3, \"upstairs\""));
        for (int index = from; index < to; index++) {
            store.enrolments().insert(new Enrolment(group, new StudentId(2L * (index + 1)), 1 + index * 3));
        }
        for (int week = 0; week < 9; week++) {
            SessionId session = new SessionId(id * 100 + week);
            OptionalInt lesson = week % 4 == 3 ? OptionalInt.empty() : OptionalInt.of(week + 1);
            LocalDate date = LocalDate.of(2026, 2, 3).plusWeeks(week % 7);
            store.sessions().insert(new Session(session, group, date, lesson, "as far as\nround " + week, ""));
            for (int index = from; index < to; index += 1 + week % 2) {
                Attendance mark = Attendance.values()[chance.nextInt(Attendance.values().length)];
                store.register().insert(new RegisterMark(group, session, new StudentId(2L * (index + 1)), mark));
            }
        }
        for (int index = from; index < to; index++) {
            counts(group, new StudentId(2L * (index + 1)));
        }
    }

    private void counts(GroupId group, StudentId student) throws StoreException {
        List<String> parts =
                new ArrayList<>(List.of("Acorn", "Cap (top)", "", "a part that the pattern no longer has"));
        for (int number = chance.nextInt(60); number > 0; number--) {
            String part = parts.get(Math.min(3, chance.nextInt(12) / 3));
            CountReport.Kind kind = CountReport.Kind.values()[Math.max(0, chance.nextInt(9) - 6)];
            boolean counted = kind == CountReport.Kind.COUNTED || chance.nextBoolean();
            Map<String, String> checks = new TreeMap<>();
            if (number % 6 == 0) {
                checks.put("look-for-a-gap", "yes");
                checks.put("no such check", "");
            }
            Instant at = Instant.parse("2026-02-03T19:12:05.123Z").plusSeconds(chance.nextInt(9_000_000) - 100);
            store.reports()
                    .insert(new FiledReport(
                            group,
                            new CountReport(
                                    report += 1 + number % 3,
                                    student,
                                    part,
                                    chance.nextInt(70),
                                    kind,
                                    counted ? OptionalInt.of(chance.nextInt(90)) : OptionalInt.empty(),
                                    at,
                                    number % 7 == 0 ? "from a message: “18?? or 19”" : "",
                                    checks,
                                    number % 9 == 0 ? Optional.of(at.plusSeconds(3)) : Optional.empty())));
        }
        store.notes().insert(new Note(group, student, "Acorn", 3, "dropped a stitch\n\nsee photo"));
        store.notes().insert(new Note(group, student, "", 0, " . "));
    }
}
