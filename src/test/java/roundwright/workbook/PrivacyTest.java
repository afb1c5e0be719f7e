package roundwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.group.Attendance;
import roundwright.group.GroupId;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.store.StoreException;

/** What is held about one student can be taken out, shown, and kept out of copies: seen in the bytes of every file there is. */
class PrivacyTest {
    private static final String NAME = "Xanthippe Quorlow";
    private static final List<String> SECRETS =
            List.of("Xanthippe", "Quorlow", "frets about magic rings", "dropped one here", "asked twice");

    @TempDir
    Path folder;

    /** A student who is everywhere: in two groups, the register, counts, checks and notes, some of it taken back or done again. */
    private StudentId everywhere(Sketch sketch) throws StoreException {
        Workbook workbook = sketch.workbook;
        StudentId id = workbook.newStudent();
        Student student = new Student(id, NAME, true, false, "frets about magic rings");
        workbook.apply(new StudentEdit.AddStudents(sketch.group, student));
        GroupId other = workbook.newGroup();
        workbook.apply(new GroupEdit.AddGroup(
                new roundwright.group.Group(other, sketch.course, "Fridays", Optional.empty(), "Quay")));
        workbook.apply(new StudentEdit.AddStudents(other, student));
        for (int round = 1; round <= 60; round++) {
            workbook.apply(new CountEdit.ReportCounts(sketch.group, NewCount.of(id, "Acorn", round, 6 + round)));
            workbook.apply(new CountEdit.SetNote(sketch.group, id, "Acorn", round, "dropped one here " + round));
        }
        workbook.undo();
        workbook.apply(new CountEdit.SetNote(other, id, "Acorn", 3, "asked twice"));
        workbook.apply(new CountEdit.AnswerCheck(
                sketch.group, sketch.view().reports(id).get(0).sequence(), "recount", Optional.of("same")));
        workbook.apply(new SessionEdit.MarkAttendance(sketch.group, sketch.session, id, Attendance.LATE));
        return id;
    }

    @Test
    void nothingOfAnErasedStudentIsLeftInAnyFile() throws StoreException, IOException {
        try (Sketch sketch = new Sketch(folder, "Ines", "Bram")) {
            StudentId id = everywhere(sketch);
            sketch.workbook.backUp();
            sketch.count(0, 1, 6);
            sketch.workbook.backUp();
            for (String secret : SECRETS) {
                assertFalse(holding(secret).isEmpty(), secret + " can be found before");
            }
            Path aside = Files.writeString(folder.resolve("trial.damaged-2026-01-01T000000.db"), "broken");
            Erased erased = sketch.workbook.erase(id, true);
            assertEquals(List.of(aside), erased.setAside());
            assertEquals(60, erased.reports());
            assertEquals(2, erased.backups());
            assertEquals(List.of(), erased.backupsLeft());
            for (String secret : SECRETS) {
                assertEquals(List.of(), holding(secret), secret + " while the file is open");
            }
            assertTrue(sketch.workbook.undoName().isEmpty(), "undo would bring them back");
            assertEquals(List.of("Ines", "Bram"), names(sketch.workbook.view()));
            Workbook again = sketch.reopened();
            assertEquals(List.of("Ines", "Bram"), names(again.view()));
            assertEquals(1, again.view().groups().get(0).reports().size());
            again.compareWith(again.backups().get(0).file());
            again.close();
        }
        for (String secret : SECRETS) {
            assertEquals(List.of(), holding(secret), secret + " when it is closed");
        }
    }

    @Test
    void backupsKeepAnErasedStudentUnlessAsked() throws StoreException, IOException {
        try (Sketch sketch = new Sketch(folder, "Ines")) {
            StudentId id = everywhere(sketch);
            Path backup = sketch.workbook.backUp().file();
            sketch.workbook.erase(id, false);
            assertEquals(List.of(backup), holding("Xanthippe"));
            sketch.workbook.restore(backup);
            assertEquals(List.of("Ines", NAME), names(sketch.workbook.view()));
        }
    }

    @Test
    void wordsAboutOthersThatNameTheStudentArePointedOut() throws StoreException {
        try (Sketch sketch = new Sketch(folder, "Ines")) {
            StudentId id = everywhere(sketch);
            sketch.workbook.apply(new SessionEdit.WriteLog(
                    sketch.group, sketch.session, "Rounds 1-4; sat beside XANTHIPPE QUORLOW's aunt", ""));
            sketch.workbook.apply(new CountEdit.SetNote(
                    sketch.group, sketch.students.get(0), "Acorn", 2, "lent a marker to Xanthippe Quorlow"));
            Erased erased = sketch.workbook.erase(id, true);
            assertEquals(
                    List.of("the log of 2026-02-03 (Tuesdays)", "a note on round 2 of Acorn (Ines)"),
                    erased.mentions());
        }
    }

    @Test
    void allThatIsHeldCanBeReadByThePersonAndByAProgram() throws StoreException {
        try (Sketch sketch = new Sketch(folder, "Ines", "Bram")) {
            StudentId id = everywhere(sketch);
            sketch.count(1, 1, 6);
            HeldAbout held = HeldAbout.of(sketch.workbook.view(), id, LocalDate.of(2026, 3, 1));
            for (String form : List.of(held.text(), held.json())) {
                for (String secret : SECRETS) {
                    assertTrue(form.contains(secret), secret + " in " + form);
                }
                assertTrue(form.contains("Tuesdays") && form.contains("Fridays") && form.contains("late"), form);
                assertFalse(form.contains("Ines") || form.contains("Bram"), "nobody else is in it: " + form);
            }
            assertTrue(held.text().contains("Acorn, round 60: 66"), held.text());
            assertTrue(held.text().contains("check recount: same"), held.text());
        }
    }

    @Test
    void aCopyWithInitialsHoldsNoNameAndNoWordsAboutAnybody() throws StoreException, IOException {
        Path copy = folder.resolve("shared/initials.db");
        Files.createDirectories(copy.getParent());
        List<String> counts;
        try (Sketch sketch = new Sketch(folder, "Ines Kowal", "Ida Krog", "Bram")) {
            everywhere(sketch);
            sketch.count(0, 1, 6);
            sketch.workbook.apply(
                    new SessionEdit.WriteLog(sketch.group, sketch.session, "Ines helped", "call Bram's mother"));
            counts = counts(sketch.workbook.view());
            sketch.workbook.copyWithInitials(copy);
        }
        String bytes = Files.readString(copy, StandardCharsets.ISO_8859_1);
        List<String> words = new ArrayList<>(SECRETS);
        words.addAll(List.of("Ines", "Kowal", "Krog", "Bram", "Mill Lane", "mother"));
        for (String word : words) {
            assertFalse(bytes.contains(word), word);
        }
        try (Workbook opened = EditingChild.open(copy)) {
            assertEquals(List.of("I. K.", "I. K. 2", "B.", "X. Q."), names(opened.view()));
            assertEquals(counts, counts(opened.view()));
        }
    }

    private static List<String> counts(WorkbookView view) {
        return view.groups().stream()
                .flatMap(group -> group.reports().stream())
                .map(report -> report.student() + " " + report.round() + " " + report.count())
                .toList();
    }

    private static List<String> names(WorkbookView view) {
        return view.studentsCopy().values().stream().map(Student::name).toList();
    }

    /** The files under the folder with these words in their bytes. */
    private List<Path> holding(String words) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            List<Path> found = new ArrayList<>();
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                if (Files.readString(path, StandardCharsets.ISO_8859_1).contains(words)) {
                    found.add(path);
                }
            }
            return found;
        }
    }
}
