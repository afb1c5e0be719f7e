package roundwright.desktop.counts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import roundwright.desktop.DeskOnFile;
import roundwright.desktop.OnEventThread;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.look.Theme;
import roundwright.group.Group;
import roundwright.group.RoundPlace;
import roundwright.group.RoundStanding.State;
import roundwright.group.Student;
import roundwright.workbook.GroupEdit;
import roundwright.workbook.StudentEdit;

@ExtendWith(OnEventThread.class)
class CountsPresenterTest {
    private DeskOnFile file;
    private Desk desk;
    private CountsPresenter presenter;

    @BeforeEach
    void groupOfTwo() {
        Theme.LIGHT.install(1);
        file = new DeskOnFile().course("harbour-light");
        desk = file.desk();
        Group group = new Group(
                desk.workbook().newGroup(), desk.choice().course().orElseThrow(), "Mondays", Optional.empty(), "");
        desk.apply(new GroupEdit.AddGroup(group), () -> desk.chooseGroup(group.id()));
        desk.apply(new StudentEdit.AddStudents(group.id(), List.of(student("Oda"), student("Piet"))));
        presenter = new CountsPresenter(desk);
        desk.choosePlace(new RoundPlace("Tower", 2));
    }

    @AfterEach
    void close() {
        file.close();
    }

    private Student student(String name) {
        return new Student(desk.workbook().newStudent(), name, false, false, "");
    }

    private void type(String keys) {
        keys.chars().forEach(key -> presenter.type((char) key));
    }

    private State state(int row, int round) {
        return presenter
                .cell(presenter.rows().get(row), new RoundPlace("Tower", round))
                .state();
    }

    @Test
    void theColumnsAreTheRoundsOfTheLesson() {
        assertEquals(
                List.of(1, 2, 3),
                presenter.columns().stream().map(RoundPlace::round).toList());
        assertEquals("Tower, rounds 1 to 3", presenter.heading());
        assertEquals("Lesson 1: Into the ring", presenter.subheading());
    }

    @Test
    void enterReportsTheCountAndGoesToTheNextStudentThenToTheNextRound() {
        type("13");
        assertEquals(Optional.of("13"), presenter.typed());
        presenter.enter();
        assertEquals(1, presenter.chosenRow());
        type("12");
        presenter.enter();
        assertEquals(0, presenter.chosenRow());
        assertEquals(Optional.of(new RoundPlace("Tower", 3)), desk.place());
        assertEquals(State.OVER, state(0, 2));
        assertEquals(State.RIGHT, state(1, 2));
        assertEquals(
                1,
                presenter
                        .cell(presenter.rows().get(0), new RoundPlace("Tower", 2))
                        .difference());
    }

    @Test
    void enterWithNothingTypedOnlyGoesOn() {
        presenter.enter();
        assertEquals(1, presenter.chosenRow());
        assertEquals(State.NOT_YET, state(0, 2));
    }

    @Test
    void whatWasTypedCanBeRubbedOutAndForgotten() {
        type("129");
        presenter.rubOut();
        assertEquals(Optional.of("12"), presenter.typed());
        presenter.cancel();
        assertEquals(Optional.empty(), presenter.typed());
        type("x7.8");
        assertEquals(Optional.of("78"), presenter.typed());
        presenter.move(1, 0);
        assertEquals(Optional.empty(), presenter.typed());
    }

    private int count(int row, int round) {
        return presenter
                .cell(presenter.rows().get(row), new RoundPlace("Tower", round))
                .count()
                .orElse(-1);
    }

    @Test
    void thePointTwiceTakesThePatternsCount() {
        type("..");
        assertEquals(State.RIGHT, state(0, 2));
        type(",,");
        assertEquals(State.RIGHT, state(1, 2));
        assertEquals(Optional.of(new RoundPlace("Tower", 3)), desk.place());
    }

    @Test
    void aSignSaysHowManyMoreOrFewerThanThePattern() {
        type("+2");
        presenter.enter();
        type("-1");
        presenter.enter();
        assertEquals(14, count(0, 2));
        assertEquals(11, count(1, 2));
        presenter.choose(0, 1);
        type("-99");
        presenter.enter();
        assertEquals(Optional.of("-99"), presenter.typed());
        assertTrue(desk.notice().orElse("").startsWith("That would be fewer"));
    }

    @Test
    void oneNumberIsReportedForAStretchOfRoundsInOneStep() {
        type("40-9");
        presenter.enter();
        for (int round = 2; round <= 9; round++) {
            assertEquals(40, count(0, round));
        }
        assertEquals(-1, count(0, 10));
        assertEquals(1, presenter.chosenRow());
        desk.undo();
        assertEquals(-1, count(0, 2));
        assertEquals(-1, count(0, 9));
        presenter.choose(1, 1);
        type(">9");
        presenter.enter();
        for (int round = 2; round <= 9; round++) {
            assertEquals(State.RIGHT, state(1, round));
        }
    }

    @Test
    void aStretchThatIsNotThereIsSaidAndStaysToBePutRight() {
        for (String wrong : List.of("40-1", "40-99", ">99")) {
            presenter.cancel();
            type(wrong);
            presenter.enter();
            assertEquals(Optional.of(wrong), presenter.typed());
            assertTrue(desk.notice().isPresent(), wrong);
            assertEquals(0, presenter.chosenRow());
        }
        assertEquals(-1, count(0, 2));
    }

    @Test
    void enterGoesToTheRightWhereThatIsChosenAndAtTheEndToTheNextStudent() {
        presenter.onward(Onward.RIGHT);
        type("12");
        presenter.enter();
        assertEquals(Optional.of(new RoundPlace("Tower", 3)), desk.place());
        presenter.asPattern();
        assertEquals(1, presenter.chosenRow());
        assertEquals(Optional.of(new RoundPlace("Tower", 1)), desk.place());
        presenter.choose(1, 2);
        presenter.asPattern();
        assertEquals(0, presenter.chosenRow());
        assertEquals(Optional.of(new RoundPlace("Tower", 4)), desk.place());
    }

    @Test
    void aCountIsTakenBackAndWhatWasSaidBeforeHolds() {
        type("13");
        presenter.enter();
        presenter.choose(0, 1);
        type("12");
        presenter.enter();
        presenter.choose(0, 1);
        presenter.takeBack();
        assertEquals(13, count(0, 2));
        assertEquals(2, CountDetail.of(desk).orElseThrow().history().size());
        presenter.takeBack();
        assertEquals(State.NOT_YET, state(0, 2));
        desk.undo();
        desk.undo();
        assertEquals(12, count(0, 2));
        presenter.choose(1, 1);
        presenter.takeBack();
        assertTrue(desk.notice().isPresent());
    }

    @Test
    void aNumberBeforeTheMarkSaysToWhichRoundItWasPulledBack() {
        type(">9");
        presenter.enter();
        desk.choosePlace(new RoundPlace("Tower", 9));
        presenter.choose(0, presenter.chosenColumn());
        type("4");
        presenter.pulledBack();
        assertEquals(State.RIGHT, state(0, 4));
        assertEquals(State.PULLED_BACK, state(0, 5));
    }

    @Test
    void theEqualsSignTakesThePatternsCount() {
        presenter.asPattern();
        assertEquals(State.RIGHT, state(0, 2));
        assertEquals(1, presenter.chosenRow());
    }

    @Test
    void pulledBackTakesTheChosenRoundAndWhatIsAboveItOutOfForce() {
        presenter.asPattern();
        presenter.choose(0, 2);
        presenter.asPattern();
        presenter.choose(0, 1);
        presenter.pulledBack();
        assertEquals(State.PULLED_BACK, state(0, 2));
        assertEquals(State.PULLED_BACK, state(0, 3));
    }

    @Test
    void anUnfinishedRoundKeepsTheCountSoFar() {
        type("7");
        presenter.unfinished();
        assertEquals(State.UNFINISHED, state(0, 2));
        assertEquals(
                OptionalInt.of(7),
                presenter
                        .cell(presenter.rows().get(0), new RoundPlace("Tower", 2))
                        .count());
    }

    @Test
    void movingBeyondTheLastRoundGoesOnInTheNextLesson() {
        presenter.choose(0, 2);
        presenter.move(0, 1);
        assertEquals(Optional.of(new RoundPlace("Tower", 4)), desk.place());
        assertEquals("Tower, rounds 4 to 11", presenter.heading());
        presenter.move(0, -1);
        assertEquals(Optional.of(new RoundPlace("Tower", 3)), desk.place());
    }

    @Test
    void undoNamesTheCountAndTakesItBack() {
        type("13");
        presenter.enter();
        assertEquals(
                Optional.of("Undo: count of round 2 (Oda)"), desk.workbook().undoName());
        desk.undo();
        assertEquals(State.NOT_YET, state(0, 2));
        desk.redo();
        assertEquals(State.OVER, state(0, 2));
    }

    @Test
    void otherNamesAreHiddenAtOnce() {
        desk.hideNames(true);
        assertEquals("Oda", presenter.name(presenter.rows().get(0)));
        assertEquals("Student 2", presenter.name(presenter.rows().get(1)));
        assertEquals("", presenter.remark(presenter.rows().get(1)));
    }

    @Test
    void theDetailSaysWhatStandsBelow() {
        type("13");
        presenter.enter();
        presenter.choose(0, 2);
        CountDetail detail = CountDetail.of(desk).orElseThrow();
        assertEquals("Oda, round 3: not reported yet", detail.headline());
        assertEquals("Below, round 2 is the first that was off: 13 instead of 12.", detail.below());
        presenter.choose(0, 1);
        assertEquals(
                "Oda, round 2: 13 instead of 12",
                CountDetail.of(desk).orElseThrow().headline());
    }

    @Test
    void aCorrectedCountKeepsWhatWasSaidBefore() {
        type("13");
        presenter.enter();
        presenter.choose(0, 1);
        type("12");
        presenter.enter();
        presenter.choose(0, 1);
        List<String> history = CountDetail.of(desk).orElseThrow().history();
        assertEquals(2, history.size());
        assertTrue(history.get(0).endsWith("13 stitches"), history.toString());
    }
}
