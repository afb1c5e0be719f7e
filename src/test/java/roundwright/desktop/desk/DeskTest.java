package roundwright.desktop.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import roundwright.course.Lesson;
import roundwright.course.file.CourseFile;
import roundwright.desktop.DeskOnFile;
import roundwright.group.GroupId;
import roundwright.group.RoundPlace;
import roundwright.workbook.CourseEdit;
import roundwright.workbook.GroupEdit;

class DeskTest {
    private DeskOnFile file;
    private Desk desk;

    @BeforeEach
    void open() {
        file = new DeskOnFile();
        desk = file.desk();
    }

    @AfterEach
    void close() {
        file.close();
    }

    @Test
    void anEmptyFileHasNothingInHand() {
        assertEquals(Optional.empty(), desk.course());
        assertEquals(Optional.empty(), desk.lesson());
        assertEquals(List.of(), desk.students());
    }

    @Test
    void aGroupHalfWayThroughIsInItsLatestLesson() {
        file.course("harbour-light").group(6);
        assertEquals(Optional.of(4), desk.lesson().map(Lesson::number));
        assertEquals(
                Optional.of(4),
                desk.place().flatMap(desk.course().orElseThrow()::lessonOf).map(Lesson::number));
        assertEquals(6, desk.students().size());
        assertTrue(desk.student().isPresent());
    }

    @Test
    void whatWasInHandLastIsLaidOutAgain() {
        file.course("harbour-light").group(4);
        GroupId first = desk.choice().group().orElseThrow();
        file.course("pocket-planet").group(4);
        desk.chooseGroup(first);
        desk.apply(new GroupEdit.ChangeGroup(desk.group().orElseThrow().group().named("Mondays")));
        Desk later = new Desk(desk.workbook(), roundwright.desktop.work.Work.atOnce(), java.time.Clock.systemUTC());
        later.open(Optional.empty());
        assertEquals(Optional.of(first), later.choice().group());
        assertEquals("Harbour light", later.course().orElseThrow().kept().name());
    }

    @Test
    void aTextThatWasReadElsewhereIsNotReadAgain() {
        file.course("harbour-light");
        CourseFile read =
                CourseFile.read(desk.course().orElseThrow().kept().text() + "\n## Part: Boat\n\n- Rnd 1: 6 dc (6)\n");
        desk.know(read);
        var id = desk.choice().course().orElseThrow();
        desk.apply(new CourseEdit.ReplaceCourseText(id, "Harbour light", read.text()));
        assertSame(read, desk.course().orElseThrow().file());
        desk.apply(new CourseEdit.ReplaceCourseText(id, "Harbour light", read.text() + "- Rnd 2: inc x 6 (12)\n"));
        assertNotSame(read, desk.course().orElseThrow().file());
        assertTrue(desk.course().orElseThrow().places().contains(new RoundPlace("Boat", 2)));
    }

    @Test
    void removingTheCourseInHandTakesUpAnother() {
        file.course("harbour-light");
        var first = desk.choice().course().orElseThrow();
        file.course("window-pot");
        desk.apply(new CourseEdit.RemoveCourse(desk.choice().course().orElseThrow()));
        assertEquals(Optional.of(first), desk.choice().course());
        desk.apply(new CourseEdit.RemoveCourse(first));
        assertEquals(Optional.empty(), desk.course());
        desk.undo();
        assertEquals("Harbour light", desk.course().orElseThrow().kept().name());
    }

    @Test
    void listenersHearWhatChanged() {
        file.course("harbour-light").group(4);
        List<Set<Matter>> heard = new ArrayList<>();
        desk.listen(heard::add);
        desk.choosePage(Page.COUNTS);
        desk.choosePage(Page.COUNTS);
        desk.hideNames(true);
        desk.tell("Something to know.");
        assertEquals(List.of(Set.of(Matter.PAGE), Set.of(Matter.NAMES), Set.of(Matter.NOTICE)), heard);
    }

    @Test
    void anEditThatFailsIsToldAndChangesNothing() {
        file.course("harbour-light").group(4);
        var before = desk.view();
        desk.apply(new GroupEdit.RemoveGroup(new GroupId(99)));
        assertTrue(desk.notice().isPresent());
        assertEquals(before, desk.view());
    }

    @Test
    void everyNewTechniqueHasARound() {
        file.course("harbour-light");
        OpenCourse course = desk.course().orElseThrow();
        long all = course.uses().places().stream()
                .mapToLong(place -> course.uses().newAt(place.order()).size())
                .sum();
        assertEquals(
                all, course.newByPlace().values().stream().mapToLong(List::size).sum());
        course.newByPlace()
                .keySet()
                .forEach(place -> assertTrue(course.round(place).isPresent(), place.toString()));
    }
}
