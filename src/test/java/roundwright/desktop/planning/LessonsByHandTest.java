package roundwright.desktop.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import roundwright.course.Lesson;
import roundwright.course.planning.ItemWords;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlannedLesson;
import roundwright.desktop.DeskOnFile;
import roundwright.desktop.desk.Desk;
import roundwright.group.RoundPlace;

class LessonsByHandTest {
    private DeskOnFile file;
    private Desk desk;
    private LessonsByHand hand;

    @BeforeEach
    void open() {
        file = new DeskOnFile().course("harbour-light");
        desk = file.desk();
        hand = new LessonsByHand(desk, new ChosenLesson(desk));
        choose("Tower", 12);
    }

    @AfterEach
    void close() {
        file.close();
    }

    private void choose(String part, int round) {
        desk.choosePlace(new RoundPlace(part, round));
    }

    private Lesson lesson(int number) {
        return desk.course().orElseThrow().lesson(number).orElseThrow();
    }

    private String rounds(int number) {
        return ItemWords.written(lesson(number).rounds());
    }

    private Plan plan() {
        return desk.course().orElseThrow().plan().orElseThrow();
    }

    private String text() {
        return desk.course().orElseThrow().kept().text();
    }

    private Optional<String> undo() {
        return desk.workbook().undoName();
    }

    @Test
    void aLessonBeginsEarlierAndItsMinutesChangeAtOnce() {
        double before = plan().lessons().get(2).minutes().total();
        hand.moveStart(-1);
        assertEquals("Tower 11-19", rounds(3));
        assertEquals("Tower 4-10", rounds(2));
        assertTrue(plan().lessons().get(2).minutes().total() > before);
        assertEquals(Optional.of("Undo: lesson 3 begins with Tower 11"), undo());
    }

    @Test
    void manyQuickMovesAreDoneOneAfterTheOther() {
        hand.moveStart(-1);
        hand.moveStart(-1);
        hand.moveStart(-1);
        hand.moveStart(1);
        assertEquals("Tower 10-19", rounds(3));
    }

    @Test
    void lessonsThatAreNotConcernedKeepEveryLetter() {
        String before = text();
        hand.moveStart(1);
        String after = text();
        int fourth = before.indexOf("## Lesson 4");
        assertEquals(before.substring(fourth), after.substring(after.indexOf("## Lesson 4")));
        int first = before.indexOf("## Lesson 2");
        assertEquals(before.substring(0, first), after.substring(0, first));
        assertTrue(after.contains("recap: Where is the ridge?"));
    }

    @Test
    void undoBringsTheTextBack() {
        String before = text();
        hand.moveStart(-2);
        hand.join();
        choose("Gallery", 5);
        hand.beginHere();
        hand.lock();
        hand.rename("High up");
        for (int i = 0; i < 5; i++) {
            desk.undo();
        }
        assertEquals(before, text());
    }

    @Test
    void aJoinedLessonHasTheWordsOfBothAndTheOthersStayThemselves() {
        Lesson fourth = lesson(4);
        List<String> later = List.of(lesson(5).name(), lesson(6).name());
        hand.join();
        assertEquals("The wall leans in", lesson(3).name());
        assertEquals("Tower 12-29", rounds(3));
        assertTrue(lesson(3).words("bring").containsAll(fourth.words("bring")));
        assertTrue(lesson(3)
                .words("bring")
                .contains("a strip of thick yarn with three decreases in it; pins to mark where the decreases fall"));
        assertEquals(later, List.of(lesson(4).name(), lesson(5).name()));
        assertEquals(7, plan().lessons().size());
    }

    @Test
    void aLessonIsDividedAtTheChosenRound() {
        choose("Tower", 16);
        assertTrue(hand.canBeginHere());
        List<String> later = List.of(lesson(4).name(), lesson(5).name());
        hand.beginHere();
        assertEquals("Tower 12-15", rounds(3));
        assertEquals("Tower 16-19", rounds(4));
        assertEquals("Tower 16-19", lesson(4).name());
        assertEquals(later, List.of(lesson(5).name(), lesson(6).name()));
        assertFalse(hand.canBeginHere());
    }

    @Test
    void aLockIsWrittenDownAndHoldsUntilItIsTakenAway() {
        hand.lock();
        assertTrue(lesson(3).locked());
        assertTrue(text().contains("- locked: yes"));
        hand.moveStart(1);
        assertEquals("Tower 12-19", rounds(3));
        assertEquals(Optional.of("Lesson 3 is locked. Unlock it to change what it holds."), desk.notice());
        hand.lock();
        assertFalse(text().contains("locked"));
    }

    @Test
    void aTitleIsChangedAndAnEmptyOneNamesTheRounds() {
        hand.rename("  Leaning walls ");
        assertEquals("Leaning walls", lesson(3).name());
        hand.rename("");
        assertEquals("Tower 12-19", lesson(3).name());
        hand.moveStart(-1);
        assertEquals("Tower 11-19", lesson(3).name());
    }

    @Test
    void whatCannotBeIsSaidAndChangesNothing() {
        String before = text();
        hand.moveStart(-30);
        assertTrue(desk.notice().orElse("").contains("nothing to do in class"), String.valueOf(desk.notice()));
        assertEquals(before, text());
    }

    @Test
    void theStripTellsWhatAMoveWouldComeToAndMovesToIt() {
        String told = hand.told(3, new RoundPlace("Tower", 11));
        hand.moveStart(3, new RoundPlace("Tower", 11));
        PlannedLesson third = plan().lessons().get(2);
        assertTrue(told.endsWith("lesson 3: " + Math.round(third.minutes().total()) + " minutes"), told);
        assertEquals("Tower 11-19", rounds(3));
    }
}
