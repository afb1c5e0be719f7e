package roundwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.group.Attendance;
import roundwright.group.CountReport;
import roundwright.store.StoreException;

class WorkbookTest {
    @TempDir
    Path folder;

    @Test
    void aClockThatIsSetBackChangesNeitherOrderNorNumbers() throws StoreException {
        try (Sketch sketch = new Sketch(folder, "Ines")) {
            sketch.count(0, 1, 6);
        }
        Clock earlier = Clock.fixed(Sketch.NOW.minusSeconds(86_400 * 400), ZoneOffset.UTC);
        try (Workbook workbook = Workbook.open(folder.resolve("trial.db"), folder.resolve("backups"), earlier)) {
            GroupView group = workbook.view().groups().get(0);
            workbook.apply(new CountEdit.ReportCounts(
                    group.id(), NewCount.of(group.students().get(0).id(), "Acorn", 1, 7)));
            List<CountReport> reports = workbook.view().groups().get(0).reports();
            assertEquals(
                    List.of(6, 7),
                    reports.stream().map(each -> each.count().getAsInt()).toList());
            assertTrue(reports.get(1).at().isBefore(reports.get(0).at()));
        }
    }

    @Test
    void whatWasTypedIsThereAfterReopening() throws StoreException {
        try (Sketch sketch = new Sketch(folder, "Ines", "Bram")) {
            sketch.count(0, 1, 6);
            sketch.workbook.apply(new SessionEdit.MarkAttendance(
                    sketch.group, sketch.session, sketch.students.get(1), Attendance.LATE));
            sketch.workbook.apply(new CountEdit.SetNote(sketch.group, sketch.students.get(0), "Acorn", 1, "neat"));
            sketch.workbook.remember("page", "counts");
            GroupView before = sketch.view();
            try (Workbook again = sketch.reopened()) {
                GroupView after = again.view().group(sketch.group).orElseThrow();
                assertEquals(before.reports(), after.reports());
                assertEquals(before.students(), after.students());
                assertEquals(before.sessions(), after.sessions());
                assertEquals(Optional.of(Attendance.LATE), after.attendance(sketch.session, sketch.students.get(1)));
                assertEquals(Optional.of("neat"), after.note(sketch.students.get(0), "Acorn", 1));
                assertEquals(Optional.of("counts"), again.view().setting("page"));
            }
        }
    }

    @Test
    void aCountLeavesTheReportsOfTheOthersAndOfTheViewBeforeAsTheyWere() throws StoreException {
        try (Sketch sketch = new Sketch(folder, "Ines", "Bram")) {
            sketch.count(0, 1, 6);
            sketch.count(1, 1, 7);
            GroupView before = sketch.view();
            List<CountReport> ines = before.reports(sketch.students.get(0));
            List<CountReport> bram = before.reports(sketch.students.get(1));
            sketch.count(1, 2, 12);
            GroupView after = sketch.view();
            assertSame(ines, after.reports(sketch.students.get(0)));
            assertEquals(bram, before.reports(sketch.students.get(1)));
            assertEquals(2, before.reportCount());
            assertEquals(
                    List.of(7, 12),
                    after.reports(sketch.students.get(1)).stream()
                            .map(each -> each.count().getAsInt())
                            .toList());
            assertEquals(3, after.reportCount());
        }
    }

    @Test
    void undoWithdrawsACountAndRedoBringsItBack() throws StoreException {
        try (Sketch sketch = new Sketch(folder, "Ines")) {
            sketch.count(0, 7, 42);
            CountReport report = sketch.view().reports().get(0);
            assertEquals(Optional.of("Undo: count of round 7 (Ines)"), sketch.workbook.undoName());
            sketch.workbook.undo();
            assertEquals(
                    List.of(report.withdrawn(Optional.of(Sketch.NOW))),
                    sketch.view().reports());
            assertEquals(Optional.of("Redo: count of round 7 (Ines)"), sketch.workbook.redoName());
            sketch.workbook.redo();
            assertEquals(List.of(report), sketch.view().reports());
            assertEquals(Optional.empty(), sketch.workbook.redoName());
        }
    }

    @Test
    void undoingEverythingEmptiesTheFileAndRedoFillsIt() throws StoreException {
        try (Sketch sketch = new Sketch(folder, "Ines", "Bram")) {
            sketch.count(0, 1, 6);
            sketch.count(1, 1, 5);
            GroupView full = sketch.view();
            while (sketch.workbook.undoName().isPresent()) {
                sketch.workbook.undo();
            }
            assertEquals(List.of(), sketch.workbook.view().courses());
            assertEquals(List.of(), sketch.workbook.view().groups());
            while (sketch.workbook.redoName().isPresent()) {
                sketch.workbook.redo();
            }
            assertEquals(full.reports(), sketch.view().reports());
            assertEquals(full.students(), sketch.view().students());
        }
    }

    @Test
    void listenersAreToldOnceWhatChanged() throws StoreException {
        try (Sketch sketch = new Sketch(folder, "Ines")) {
            List<Change> told = new ArrayList<>();
            sketch.workbook.listen(told::addAll);
            sketch.count(0, 3, 18);
            Change change = new Change.OfCount(sketch.group, sketch.students.get(0), "Acorn", 3);
            assertEquals(List.of(change), told);
            sketch.workbook.undo();
            assertEquals(List.of(change, change), told);
        }
    }

    @Test
    void aListenerCannotEdit() throws StoreException {
        try (Sketch sketch = new Sketch(folder, "Ines")) {
            sketch.workbook.listen(changes -> assertThrows(IllegalStateException.class, () -> sketch.count(0, 2, 12)));
            sketch.count(0, 1, 6);
            assertEquals(1, sketch.view().reports().size());
        }
    }

    @Test
    void aStudentGoesWithTheirWorkAndComesBackWithIt() throws StoreException {
        try (Sketch sketch = new Sketch(folder, "Ines", "Bram")) {
            sketch.count(0, 1, 6);
            sketch.count(1, 1, 5);
            sketch.workbook.undo();
            List<CountReport> before = sketch.view().reports();
            sketch.workbook.apply(new StudentEdit.RemoveStudent(sketch.group, sketch.students.get(0)));
            assertTrue(sketch.workbook.view().student(sketch.students.get(0)).isEmpty());
            assertEquals(1, sketch.view().reports().size());
            sketch.workbook.undo();
            assertEquals(before, sketch.view().reports());
            assertEquals("Ines", sketch.view().students().get(0).name());
        }
    }

    @Test
    void aPartThatIsRenamedKeepsItsCountsAndNotes() throws StoreException {
        try (Sketch sketch = new Sketch(folder, "Ines")) {
            String text = "# Hat\n\n## Part: Acorn\n\n- Rnd 1: 6 dc\n\n## Part: Cup\n\n- Rnd 1: 8 dc\n";
            sketch.workbook.apply(new CourseEdit.ReplaceCourseText(sketch.course, "Hat", text));
            sketch.count(0, 1, 6);
            sketch.workbook.apply(new CountEdit.SetNote(sketch.group, sketch.students.get(0), "Acorn", 1, "neat"));
            GroupView before = sketch.view();
            sketch.workbook.apply(new CourseEdit.ReplaceCourseText(sketch.course, "Hat", text.replace("Acorn", "Nut")));
            assertEquals("Nut", sketch.view().reports().get(0).part());
            assertEquals(Optional.of("neat"), sketch.view().note(sketch.students.get(0), "Nut", 1));
            sketch.workbook.undo();
            assertEquals(before.reports(), sketch.view().reports());
            assertEquals(Optional.of("neat"), sketch.view().note(sketch.students.get(0), "Acorn", 1));
        }
    }

    @Test
    void aSecondOpeningIsRefused() throws StoreException {
        try (Sketch sketch = new Sketch(folder, "Ines")) {
            StoreException refused = assertThrows(
                    StoreException.Locked.class, () -> Workbook.open(sketch.file, folder, java.time.Clock.systemUTC()));
            assertTrue(refused.getMessage().contains("open in another window"), refused.getMessage());
            sketch.count(0, 1, 6);
        }
    }

    @Test
    void aCopyIsWholeAndOpens() throws StoreException {
        try (Sketch sketch = new Sketch(folder, "Ines")) {
            sketch.count(0, 1, 6);
            Path copy = folder.resolve("it's a copy.db");
            sketch.workbook.copyTo(copy);
            try (Workbook other = Workbook.open(copy, folder, java.time.Clock.systemUTC())) {
                assertEquals(
                        sketch.view().reports(), other.view().groups().get(0).reports());
            }
            assertFalse(sketch.view().reports().isEmpty());
        }
    }
}
