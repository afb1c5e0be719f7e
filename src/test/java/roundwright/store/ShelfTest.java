package roundwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
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

/** Every method of every shelf, on a real file that is closed and opened between writing and reading. */
class ShelfTest {
    private static final CourseId COURSE = new CourseId(1);
    private static final GroupId GROUP = new GroupId(2);
    private static final StudentId INES = new StudentId(3);
    private static final StudentId BRAM = new StudentId(4);
    private static final SessionId SESSION = new SessionId(5);
    private static final LocalDate DAY = LocalDate.of(2026, 2, 3);
    private static final Instant NOON = Instant.parse("2026-02-03T12:00:00.250Z");

    @TempDir
    Path folder;

    private record Case<V>(String name, Function<Store, Shelf<V>> shelf, V value, V changed) {
        void insert(Store store) throws StoreException {
            store.transaction(() -> shelf.apply(store).insert(value));
        }

        void replace(Store store) throws StoreException {
            store.transaction(() -> shelf.apply(store).replace(value, changed));
        }

        void delete(Store store) throws StoreException {
            store.transaction(() -> shelf.apply(store).delete(changed));
        }

        boolean holds(Store store, V wanted) throws StoreException {
            return shelf.apply(store).all().contains(wanted);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Case<?>> cases() {
        return Stream.of(
                new Case<>(
                        "course",
                        Store::courses,
                        new KeptCourse(new CourseId(9), "Acorn", "# Acorn\r\n\uFEFFé 🧶"),
                        new KeptCourse(new CourseId(9), "Acorn 2", "")),
                new Case<>(
                        "group",
                        Store::groups,
                        new Group(new GroupId(9), COURSE, "Tuesdays", Optional.of(DAY), "Mill Lane"),
                        new Group(new GroupId(9), COURSE, "Evenings", Optional.empty(), "")),
                new Case<>(
                        "student",
                        Store::students,
                        new Student(new StudentId(9), "Zoë O'Brien", true, false, "sits by the window"),
                        new Student(new StudentId(9), "Zoë", false, true, "")),
                new Case<>(
                        "enrolment", Store::enrolments, new Enrolment(GROUP, BRAM, 2), new Enrolment(GROUP, BRAM, 7)),
                new Case<>(
                        "session",
                        Store::sessions,
                        new Session(new SessionId(9), GROUP, DAY, OptionalInt.of(2), "Tower 4", "more yarn"),
                        new Session(new SessionId(9), GROUP, DAY.plusDays(1), OptionalInt.empty(), "", "")),
                new Case<>(
                        "mark",
                        Store::register,
                        new RegisterMark(GROUP, SESSION, INES, Attendance.ABSENT),
                        new RegisterMark(GROUP, SESSION, INES, Attendance.CAUGHT_UP)),
                new Case<>(
                        "report",
                        Store::reports,
                        new FiledReport(GROUP, report(Map.of("recount", "same"))),
                        new FiledReport(
                                GROUP,
                                report(Map.of("recount", "different", "look-for-a-gap", "yes"))
                                        .withdrawn(Optional.of(NOON.plusMillis(1))))),
                new Case<>(
                        "unfinished report",
                        Store::reports,
                        new FiledReport(GROUP, unfinished()),
                        new FiledReport(GROUP, unfinished().checked(Map.of("recount", "same")))),
                new Case<>(
                        "note",
                        Store::notes,
                        new Note(GROUP, INES, "Tower", 3, "holds the yarn tightly"),
                        new Note(GROUP, INES, "Tower", 3, "better")),
                new Case<>("setting", Store::settings, new Setting("page", "counts"), new Setting("page", "next")));
    }

    private static CountReport report(Map<String, String> checks) {
        return new CountReport(
                9, INES, "Tower", 3, CountReport.Kind.COUNTED, OptionalInt.of(18), NOON, "", checks, Optional.empty());
    }

    private static CountReport unfinished() {
        return new CountReport(9, INES, "Tower", 3, CountReport.Kind.UNFINISHED, OptionalInt.empty(), NOON, "half");
    }

    @ParameterizedTest
    @MethodSource("cases")
    <V> void whatIsWrittenIsReadBack(Case<V> given) throws StoreException {
        try (Store store = withPeople()) {
            given.insert(store);
        }
        try (Store store = open()) {
            assertEquals(true, given.holds(store, given.value()));
            given.replace(store);
        }
        try (Store store = open()) {
            assertEquals(false, given.holds(store, given.value()));
            assertEquals(true, given.holds(store, given.changed()));
            given.delete(store);
        }
        try (Store store = open()) {
            assertEquals(false, given.holds(store, given.changed()));
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    <V> void whatIsNotThereCannotBeChangedOrDeleted(Case<V> given) throws StoreException {
        try (Store store = withPeople()) {
            assertThrows(StoreException.Failed.class, () -> given.replace(store));
            assertThrows(StoreException.Failed.class, () -> given.delete(store));
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    <V> void nothingCanBeWrittenTwice(Case<V> given) throws StoreException {
        try (Store store = withPeople()) {
            given.insert(store);
            assertThrows(StoreException.Constraint.class, () -> given.insert(store));
            assertEquals(true, given.holds(store, given.value()));
        }
    }

    @Test
    void aTransactionThatFailsLeavesNothing() throws StoreException {
        try (Store store = withPeople()) {
            assertThrows(
                    StoreException.Constraint.class,
                    () -> store.transaction(() -> {
                        store.settings().insert(new Setting("page", "counts"));
                        store.enrolments().insert(new Enrolment(GROUP, new StudentId(99), 1));
                    }));
            assertEquals(List.of(), store.settings().all());
        }
    }

    @Test
    void whatOthersPointAtCannotGo() throws StoreException {
        try (Store store = withPeople()) {
            KeptCourse course = store.courses().all().get(0);
            assertThrows(
                    StoreException.Constraint.class,
                    () -> store.transaction(() -> store.courses().delete(course)));
        }
    }

    private Store withPeople() throws StoreException {
        Store store = Store.create(folder.resolve("trial.db"), folder);
        store.transaction(() -> {
            store.courses().insert(new KeptCourse(COURSE, "Acorn", "# Acorn"));
            store.groups().insert(new Group(GROUP, COURSE, "Tuesdays", Optional.empty(), ""));
            store.students().insert(new Student(INES, "Ines", false, false, ""));
            store.students().insert(new Student(BRAM, "Bram", false, false, ""));
            store.enrolments().insert(new Enrolment(GROUP, INES, 1));
            store.sessions().insert(new Session(SESSION, GROUP, DAY, OptionalInt.empty(), "", ""));
        });
        return store;
    }

    private Store open() throws StoreException {
        return Store.open(folder.resolve("trial.db"), folder);
    }
}
