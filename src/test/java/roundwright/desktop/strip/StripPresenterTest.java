package roundwright.desktop.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import roundwright.desktop.DeskOnFile;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.RoundPlace;
import roundwright.group.Student;
import roundwright.workbook.CountEdit;
import roundwright.workbook.NewCount;

class StripPresenterTest {
    private DeskOnFile file;
    private Desk desk;
    private StripPresenter presenter;

    @BeforeEach
    void open() {
        file = new DeskOnFile().course("harbour-light").group(6);
        desk = file.desk();
        presenter = new StripPresenter(desk);
    }

    @AfterEach
    void close() {
        file.close();
    }

    @Test
    void aMovedChoiceLeavesTheMarksAsTheyAre() {
        StripMarks before = presenter.marks(Set.of());
        desk.chooseStudent(desk.students().get(3).id());
        assertSame(before, presenter.marks(Set.of()));
    }

    @Test
    void countsMoveTheirStudents() {
        StripMarks before = presenter.marks(Set.of());
        OpenCourse course = desk.course().orElseThrow();
        for (Student student : desk.students()) {
            RoundPlace last =
                    desk.standing(student.id()).position().orElseThrow().place();
            RoundPlace next = course.places().get(course.order(last) + 1);
            desk.apply(new CountEdit.ReportCounts(
                    desk.group().orElseThrow().id(), NewCount.of(student.id(), next.part(), next.round(), 6)));
            assertEquals(new StripPresenter(desk).marks(Set.of()), presenter.marks(Set.of()));
        }
        assertNotEquals(before, presenter.marks(Set.of()));
    }

    @Test
    void aHiddenNameIsShownForTheChosenStudentAlone() {
        desk.hideNames(true);
        for (Student chosen : desk.students()) {
            desk.chooseStudent(chosen.id());
            long named = presenter.marks(Set.of()).students().values().stream()
                    .flatMap(names -> names.stream())
                    .filter(name -> desk.students().stream()
                            .anyMatch(student -> student.name().equals(name)))
                    .count();
            assertEquals(1, named, chosen.name());
        }
    }
}
