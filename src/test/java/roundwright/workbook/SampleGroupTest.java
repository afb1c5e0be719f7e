package roundwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.group.CountReport;
import roundwright.group.Student;
import roundwright.group.TrialCourse;
import roundwright.store.StoreException;

class SampleGroupTest {
    @TempDir
    Path folder;

    @Test
    void aGroupComesWholeInOneStepAndGoesInOne() throws StoreException {
        try (Sketch sketch = new Sketch(folder)) {
            GroupView group = add(sketch, 7);
            assertEquals(12, group.students().size());
            assertEquals(2, group.sessions().size());
            assertTrue(group.reports().size() > 60, "only " + group.reports().size() + " reports");
            assertEquals(
                    12,
                    group.students().stream()
                            .filter(student -> group.attendance(
                                            group.sessions().get(0).id(), student.id())
                                    .isPresent())
                            .count());
            sketch.workbook.undo();
            assertEquals(List.of(sketch.view().group()), groups(sketch));
        }
    }

    @Test
    void theSameSeedGivesTheSameGroup() throws StoreException {
        try (Sketch sketch = new Sketch(folder)) {
            assertEquals(said(add(sketch, 7)), said(add(sketch, 7)));
        }
    }

    private static GroupView add(Sketch sketch, long seed) throws StoreException {
        SampleGroup.Sample sample =
                SampleGroup.of(sketch.workbook, sketch.course, TrialCourse.TOWER, 12, seed, LocalDate.of(2026, 1, 6));
        sketch.workbook.apply(sample.edit());
        return sketch.workbook.view().group(sample.group()).orElseThrow();
    }

    private static List<?> groups(Sketch sketch) {
        return sketch.workbook.view().groups().stream().map(GroupView::group).toList();
    }

    private static List<String> said(GroupView group) {
        return group.reports().stream().map(report -> line(group, report)).toList();
    }

    private static String line(GroupView group, CountReport report) {
        String name = group.student(report.student()).map(Student::name).orElseThrow();
        return name + report.part() + report.round() + report.kind() + report.count() + report.at();
    }
}
