package roundwright.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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
import roundwright.wording.Wording;

/** What is saved of files with broken pages, and what the person is told of the rest. */
class RescueTest {
    private static final int PAGE = 4096;
    private static final int STUDENTS = 60;
    private static final int ROUNDS = 30;
    private static final GroupId GROUP = new GroupId(1);

    @TempDir
    Path folder;

    private byte[] good;
    private Set<String> everything;

    @BeforeEach
    void makeAFileOfManyPages() throws StoreException, IOException {
        Path file = folder.resolve("good.db");
        try (Store store = Store.create(file, folder)) {
            store.transaction(() -> fill(store));
            everything = rows(store);
        }
        good = Files.readAllBytes(file);
        assertTrue(good.length > 40 * PAGE, good.length + " bytes");
    }

    private static void fill(Store store) throws StoreException {
        CourseId course = new CourseId(1);
        store.courses().insert(new KeptCourse(course, "Acorn", "# Acorn\n" + "- Rnd 1: 6 dc (6)\n".repeat(900)));
        store.groups().insert(new Group(GROUP, course, "Tuesdays", Optional.of(LocalDate.of(2026, 2, 3)), "Mill"));
        SessionId session = new SessionId(1);
        store.sessions()
                .insert(new Session(session, GROUP, LocalDate.of(2026, 2, 3), OptionalInt.of(1), "Zoë", "🧶 count"));
        for (int id = 1; id <= STUDENTS; id++) {
            StudentId student = new StudentId(id);
            store.students().insert(new Student(student, "Student Nº " + id, id % 7 == 0, false, "n".repeat(id)));
            store.enrolments().insert(new Enrolment(GROUP, student, id));
            store.register().insert(new RegisterMark(GROUP, session, student, Attendance.values()[id % 4]));
            for (int round = 1; round <= ROUNDS; round++) {
                insertCount(store, student, (id - 1L) * ROUNDS + round, round);
            }
            store.notes().insert(new Note(GROUP, student, "Acorn", 3, "lost the marker"));
        }
        store.settings().insert(new Setting("page", "counts"));
    }

    private static void insertCount(Store store, StudentId student, long id, int round) throws StoreException {
        Map<String, String> checks = round == 5 ? Map.of("recount", "same") : Map.of();
        store.reports()
                .insert(new FiledReport(
                        GROUP,
                        new CountReport(
                                id,
                                student,
                                "Acorn",
                                round,
                                CountReport.Kind.COUNTED,
                                OptionalInt.of(6 * round),
                                Instant.parse("2026-02-03T19:00:00Z"),
                                "",
                                checks,
                                Optional.empty())));
    }

    private static Set<String> rows(Store store) throws StoreException {
        Set<String> rows = new HashSet<>();
        for (Shelf<?> shelf : List.of(
                store.courses(),
                store.groups(),
                store.students(),
                store.enrolments(),
                store.sessions(),
                store.register(),
                store.reports(),
                store.notes(),
                store.settings())) {
            shelf.all().forEach(value -> rows.add(value.toString()));
        }
        return rows;
    }

    private Path write(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("damaged.db"), bytes);
    }

    private Set<String> saved(Rescued rescued) throws StoreException {
        try (Store store = Store.open(rescued.into(), folder)) {
            return rows(store);
        }
    }

    private Rescued rescue(byte[] bytes) throws IOException, StoreException {
        Path damaged = write(bytes);
        Path into = folder.resolve("saved.db");
        Files.deleteIfExists(into);
        Rescued rescued = Rescue.of(damaged, into);
        assertArrayEquals(bytes, Files.readAllBytes(damaged), "the damaged file is only read");
        return rescued;
    }

    @Test
    void aWholeFileIsSavedWhole() throws IOException, StoreException {
        Rescued rescued = rescue(good);
        assertEquals(everything, saved(rescued));
        assertTrue(rescued.everything(), rescued.toString());
        assertEquals(STUDENTS * ROUNDS, rescued.saved().get("report"));
    }

    /** Any one page gone, the pages above it and the file's own list of tables among them, costs no more than its own rows. */
    @Test
    void eachPageTakesOnlyItsOwnRowsWithIt() throws IOException, StoreException {
        int pages = good.length / PAGE;
        int most = 0;
        for (int page = 1; page <= pages; page++) {
            byte[] bytes = good.clone();
            Arrays.fill(bytes, (page - 1) * PAGE, page * PAGE, (byte) (page % 2 == 0 ? 0 : 0xa5));
            Rescued rescued = rescue(bytes);
            Set<String> saved = saved(rescued);
            Set<String> lost = new HashSet<>(everything);
            lost.removeAll(saved);
            most = Math.max(most, lost.size());
            assertTrue(lost.size() <= 130, "page " + page + " lost " + lost.size());
            assertTrue(lost.isEmpty() || !rescued.everything(), "page " + page + " is told of");
            Set<String> made = new HashSet<>(saved);
            made.removeAll(everything);
            assertTrue(made.stream().allMatch(row -> lostOrStandIn(row, rescued)), "page " + page + ": " + made);
        }
        assertTrue(most > 10, "some page held rows");
    }

    /** A row that was not there before stands in for one that is lost, or has lost something that stood in another table. */
    private static boolean lostOrStandIn(String row, Rescued rescued) {
        return rescued.standIns().stream().anyMatch(row::contains)
                || row.startsWith("Enrolment")
                || row.contains("checks={}")
                || row.startsWith("FiledReport")
                || row.startsWith("KeptCourse") && row.contains("\uFFFD");
    }

    @Test
    void aFileThatIsCutOffIsSavedAsFarAsItGoes() throws IOException, StoreException {
        Rescued rescued = rescue(Arrays.copyOf(good, good.length / 2));
        assertTrue(rescued.unreadablePages() > 10, rescued.toString());
        assertTrue(rescued.saved().get("report") > 100, rescued.toString());
        assertTrue(rescued.sentences().stream().anyMatch(line -> line.contains("how much it was cannot be said")));
    }

    @Test
    void aLostStudentIsStoodInForAndKeepsTheirCounts() throws IOException, StoreException {
        byte[] bytes = good.clone();
        String text = new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1);
        int at = text.indexOf("Student N\u00c2\u00ba 17");
        // the record's head says: no bytes follow that could be a row
        Arrays.fill(bytes, at - 8, at, (byte) 0xff);
        Rescued rescued = rescue(bytes);
        assertEquals(List.of("Student 17 (name lost)"), rescued.standIns());
        assertEquals(STUDENTS, rescued.saved().get("student"));
        assertEquals(STUDENTS * ROUNDS, rescued.saved().get("report"));
        assertTrue(String.join(" ", rescued.sentences()).contains("Student 17 (name lost)"));
    }

    @Test
    void anyBytesAtAllAreAnsweredWithAFileOrASentence() throws IOException {
        long seed = Long.getLong("seed", 23);
        Random chance = new Random(seed);
        int kept = 0;
        for (int run = 0; run < Integer.getInteger("flips", 60); run++) {
            byte[] bytes = good.clone();
            IntStream.range(0, 1 + chance.nextInt(200))
                    .forEach(flip -> bytes[chance.nextInt(chance.nextInt(4) == 0 ? PAGE : bytes.length)] =
                            (byte) chance.nextInt(256));
            try {
                kept += saved(rescue(bytes)).size() > everything.size() / 2 ? 1 : 0;
            } catch (StoreException refused) {
                throw new AssertionError("seed " + seed + ", run " + run, refused);
            } catch (RuntimeException unforeseen) {
                throw new AssertionError("seed " + seed + ", run " + run, unforeseen);
            }
        }
        assertTrue(kept > 50, kept + " kept more than half");
    }

    @Test
    void everyTableHasItsWords() throws StoreException {
        try (Database database = Opening.open(folder.resolve("good.db"), Migrations.KNOWN)) {
            List<String> without = new ArrayList<>(Copy.tables(database));
            without.removeIf(table -> Wording.of("store").has("table." + table));
            assertEquals(List.of(), without);
            assertEquals(new TreeMap<>(Copy.rows(database)).keySet(), new HashSet<>(Copy.tables(database)));
        }
    }
}
