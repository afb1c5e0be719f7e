package roundwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.EventQueue;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.group.CountReport;
import roundwright.group.CourseId;
import roundwright.group.Group;
import roundwright.group.Student;
import roundwright.store.StoreException;
import roundwright.workbook.CourseEdit;
import roundwright.workbook.GroupEdit;
import roundwright.workbook.StudentEdit;
import roundwright.workbook.Workbook;

/** A class of twelve at the real window: counts by key strokes, a block from the clipboard, a file with counts, and back. */
class CountsWindowTest {
    private static final int CLASS = 12;
    private static final String PEBBLE = """
            # Pebble

            ## Part: Pebble

            - Rnd 1: 6 dc in magic ring (6)
            - Rnd 2: inc x 6 (12)
            - Rnd 3: (dc, inc) x 6 (18)
            - Rnds 4-6: dc in each st around (18)
            """;

    @TempDir
    private Path home;

    private WindowDriver hands;

    @BeforeEach
    void openTheWindow() throws Exception {
        Path data = Files.createDirectories(home.resolve("data"));
        try (Workbook workbook =
                Workbook.create(data.resolve("courses.db"), home.resolve("backups"), Clock.systemUTC())) {
            CourseId course = workbook.newCourse();
            workbook.apply(new CourseEdit.AddCourse(course, "Pebble", PEBBLE));
            Group group = new Group(workbook.newGroup(), course, "Tuesdays", Optional.empty(), "");
            workbook.apply(new GroupEdit.AddGroup(group));
            List<Student> students = IntStream.rangeClosed(1, CLASS)
                    .mapToObj(number -> new Student(workbook.newStudent(), "Seat " + number, false, false, ""))
                    .toList();
            workbook.apply(new StudentEdit.AddStudents(group.id(), students));
        }
        hands = new WindowDriver(home);
        WindowDriver.await(
                "the course", () -> Optional.of(hands.frame().getTitle()).filter(title -> title.startsWith("Pebble")));
    }

    @AfterEach
    void closeTheWindow() {
        if (hands != null) {
            hands.close();
        }
    }

    @Test
    void countsComeInByKeysByAPastedBlockAndByAFile() throws Exception {
        hands.press(KeyEvent.VK_2, true);
        WindowDriver.await("the grid", () -> table("Counts of the students"));
        typeARound();
        pasteABlock();
        openAFile();
        WindowDriver.await("the block again", () -> hands.button("Undo: 4 counts"));
        hands.press(KeyEvent.VK_Z, true);
        WindowDriver.await("the round again", () -> hands.button("Undo: count of round 1 (Seat 12)"));
        EventQueue.invokeAndWait(hands.frame()::dispose);
        checkTheFile();
        assertEquals(List.of(), hands.misuses());
    }

    private Optional<JTable> table(String name) {
        return hands.all()
                .filter(JTable.class::isInstance)
                .map(JTable.class::cast)
                .filter(table -> table.hasFocus()
                        && String.valueOf(table.getAccessibleContext().getAccessibleName())
                                .startsWith(name))
                .findFirst();
    }

    /** Ten right ones with a stroke each, two wrong ones with two; then it goes on in the next round by itself. */
    private void typeARound() throws Exception {
        long start = System.nanoTime();
        for (int seat = 1; seat <= CLASS; seat++) {
            if (seat % 6 == 0) {
                hands.press(KeyEvent.VK_7, false);
                hands.press(KeyEvent.VK_ENTER, false);
            } else {
                hands.press(KeyEvent.VK_EQUALS, false);
            }
        }
        WindowDriver.await(
                "round 2",
                () -> Optional.of(hands.strip().chosenInWords()).filter(words -> words.startsWith("Pebble, round 2")));
        assertTrue(System.nanoTime() - start < 60_000_000_000L);
        WindowDriver.await("the last of the round", () -> hands.button("Undo: count of round 1 (Seat 12)"));
    }

    private void pasteABlock() throws Exception {
        hands.paste("12\t18\n13\t18\n");
        WindowDriver.await("the block", () -> hands.button("Undo: 4 counts"));
    }

    private void openAFile() throws Exception {
        Path file = home.resolve("tuesday.csv");
        Files.writeString(file, "Name;Rnd;Sts\nSeat 3;2;12\nSeat 4;2;11\nSeat 99;2;12\n");
        hands.pressWith(KeyEvent.VK_O, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        Predicate<java.awt.Window> chooser = window -> window instanceof javax.swing.JDialog && window.isShowing();
        WindowDriver.await(
                "the chooser",
                () -> java.util.stream.Stream.of(java.awt.Window.getWindows())
                        .filter(chooser)
                        .findFirst());
        hands.paste(file.toString());
        hands.press(KeyEvent.VK_ENTER, false);
        WindowDriver.await("the preview", () -> table("First rows of the table"));
        WindowDriver.await("the counts found", () -> hands.button("File 2 counts"));
        hands.press(KeyEvent.VK_ENTER, false);
        WindowDriver.await("undo with its name", () -> hands.button("Undo: 2 counts from tuesday.csv"));
        hands.press(KeyEvent.VK_Z, true);
    }

    private void checkTheFile() {
        Workbook workbook = WindowDriver.await("the closed file", this::opened);
        List<String> counts = new ArrayList<>();
        workbook.view().groups().get(0).reports().stream()
                .filter(CountReport::stands)
                .forEach(report ->
                        counts.add(report.round() + ":" + report.count().getAsInt()));
        assertEquals(CLASS, counts.size(), counts.toString());
        assertEquals(2, counts.stream().filter("1:7"::equals).count());
        try {
            workbook.close();
        } catch (StoreException failure) {
            throw new IllegalStateException(failure);
        }
    }

    private Optional<Workbook> opened() {
        try {
            return Optional.of(Workbook.open(
                    home.resolve("data").resolve("courses.db"), home.resolve("backups"), Clock.systemUTC()));
        } catch (StoreException stillOpen) {
            return Optional.empty();
        }
    }
}
