package roundwright.desktop.counts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
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
import roundwright.group.RoundStanding;
import roundwright.group.Student;
import roundwright.workbook.GroupEdit;
import roundwright.workbook.StudentEdit;

/** A class of twelve typed in by the keyboard alone, through the bindings of the grid, with every stroke counted. */
@ExtendWith(OnEventThread.class)
class KeyStrokesTest {
    private static final int CLASS = 12;

    /** Seconds a stroke for a person of average skill at the keys; and to look at the next name, or to hear it (keystroke-level model). */
    private static final double SECONDS_A_STROKE = 0.28;

    private static final double SECONDS_TO_LOOK = 1.35;

    private DeskOnFile file;
    private Desk desk;
    private CountsTable table;
    private int strokes;

    @BeforeEach
    void classOfTwelve() {
        Theme.LIGHT.install(1);
        file = new DeskOnFile().course("harbour-light");
        desk = file.desk();
        Group group = new Group(
                desk.workbook().newGroup(), desk.choice().course().orElseThrow(), "Mondays", Optional.empty(), "");
        desk.apply(new GroupEdit.AddGroup(group), () -> desk.chooseGroup(group.id()));
        List<Student> students = IntStream.rangeClosed(1, CLASS)
                .mapToObj(number -> new Student(desk.workbook().newStudent(), "S" + number, false, false, ""))
                .toList();
        desk.apply(new StudentEdit.AddStudents(group.id(), students));
        table = new CountsTable(new CountsPresenter(desk));
    }

    @AfterEach
    void close() {
        file.close();
    }

    private void press(String keys) {
        for (char key : keys.toCharArray()) {
            strokes++;
            if (key == '\n') {
                KeyStroke enter = KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0);
                Object bound = table.getInputMap(JComponent.WHEN_FOCUSED).get(enter);
                table.getActionMap().get(bound).actionPerformed(null);
            } else {
                table.typed(key);
            }
        }
    }

    private int expected(RoundPlace place) {
        return desk.course().orElseThrow().expected(place).orElseThrow();
    }

    private RoundStanding cell(int student, RoundPlace place) {
        return desk.standing(desk.students().get(student).id())
                .round(place.part(), place.round())
                .orElseThrow();
    }

    @Test
    void aRightCountTakesThreeStrokesAtMostAndAWrongOneFour() {
        for (RoundPlace place : desk.course().orElseThrow().places()) {
            int right = expected(place);
            desk.choosePlace(place);
            desk.chooseStudent(desk.students().get(0).id());
            strokes = 0;
            press("=");
            assertTrue(strokes <= 3, place + " right");
            assertEquals(right, cell(0, place).count().orElseThrow());
            strokes = 0;
            press(right + 3 + "\n");
            assertTrue(strokes <= 4, place + " wrong");
            assertEquals(right + 3, cell(1, place).count().orElseThrow());
            strokes = 0;
            press("-2\n");
            assertTrue(strokes <= 3, place + " wrong by two");
            assertEquals(right - 2, cell(2, place).count().orElseThrow());
        }
    }

    @Test
    void aRoundOfAClassIsEnteredInUnderAMinuteAndTheNextRoundFollowsByItself() {
        long seed = Long.getLong("seed", 4);
        Random chance = new Random(seed);
        List<RoundPlace> rounds = desk.course().orElseThrow().places().subList(0, 6);
        desk.choosePlace(rounds.get(0));
        List<Integer> said = new ArrayList<>();
        for (RoundPlace round : rounds) {
            assertEquals(Optional.of(round), desk.place());
            strokes = 0;
            for (int student = 0; student < CLASS; student++) {
                int off = chance.nextInt(3) == 0 ? chance.nextInt(7) - 3 : 0;
                said.add(expected(round) + off);
                press(off == 0 ? "=" : expected(round) + off + "\n");
            }
            double seconds = strokes * SECONDS_A_STROKE + CLASS * SECONDS_TO_LOOK;
            assertTrue(seconds < 60, round + " takes " + seconds + " seconds, seed " + seed);
        }
        for (int each = 0; each < said.size(); each++) {
            RoundPlace round = rounds.get(each / CLASS);
            assertEquals(said.get(each), cell(each % CLASS, round).count().orElseThrow(), round + ", seed " + seed);
        }
    }
}
