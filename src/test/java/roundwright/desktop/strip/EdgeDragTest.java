package roundwright.desktop.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import roundwright.desktop.Pictures;
import roundwright.desktop.SampleCourse;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Theme;

class EdgeDragTest {
    private final List<String> moved = new ArrayList<>();
    private final List<Integer> chosen = new ArrayList<>();
    private boolean movable = true;
    private StripPanel panel;

    @BeforeEach
    void build() {
        Theme.LIGHT.install(1);
        panel = new StripPanel(chosen::add);
        panel.show(StripPiece.of(SampleCourse.lighthouse()), StripMarks.NONE);
        Pictures.layOut(panel, 1340, 206);
        panel.edges(new LessonEdges() {
            @Override
            public boolean movable() {
                return movable;
            }

            @Override
            public String told(int lesson, int column) {
                return "lesson " + lesson + " from " + column;
            }

            @Override
            public void move(int lesson, int column) {
                moved.add(lesson + " to " + column);
            }
        });
    }

    private double edge(int column) {
        StripRooms rooms = StripRooms.of(206);
        int margin = Space.points(30);
        StripPiece piece = StripPiece.of(SampleCourse.lighthouse());
        return new StripGeometry(piece, margin, 1340 - 2.0 * margin, rooms.top(), rooms.body()).edges()[column];
    }

    private void mouse(int kind, double x, int y) {
        int at = (int) x;
        panel.dispatchEvent(new MouseEvent(panel, kind, 0, 0, at, y, at, y, 1, false, MouseEvent.BUTTON1));
    }

    private void draw(int from, int to) {
        int y = StripRooms.of(206).bracket() + 2;
        mouse(MouseEvent.MOUSE_PRESSED, edge(from) + 1, y);
        mouse(MouseEvent.MOUSE_DRAGGED, edge(to) + 3, y);
        Pictures.paint(panel);
        mouse(MouseEvent.MOUSE_RELEASED, edge(to) + 3, y);
    }

    @Test
    void anEdgeDrawnAlongMovesTheBeginningOfItsLesson() {
        draw(9, 12);
        assertEquals(List.of("3 to 12"), moved);
        assertEquals(List.of(), chosen);
    }

    @Test
    void anEdgePutBackMovesNothing() {
        draw(9, 9);
        assertEquals(List.of(), moved);
    }

    @Test
    void whereLessonsStayTheMouseChoosesRoundsThereToo() {
        movable = false;
        draw(9, 12);
        assertEquals(List.of(), moved);
        assertEquals(12, chosen.get(chosen.size() - 1));
    }

    private void press(String stroke) {
        Object name = panel.getInputMap().get(KeyStroke.getKeyStroke(stroke));
        panel.getActionMap().get(name).actionPerformed(new ActionEvent(panel, ActionEvent.ACTION_PERFORMED, ""));
    }

    @Test
    void altAndTheArrowsMoveTheEdgesOfTheLessonInHand() {
        panel.setChosen(10);
        press("alt LEFT");
        press("alt RIGHT");
        press("alt shift RIGHT");
        assertEquals(3, moved.size());
        assertEquals(List.of("3 to 8", "3 to 10"), moved.subList(0, 2));
        assertTrue(moved.get(2).startsWith("4 to "), moved.toString());
        assertEquals(List.of(), chosen);
    }

    @Test
    void theKeysOfEdgesAreToldWhereTheyWork() {
        panel.setChosen(10);
        assertTrue(panel.getAccessibleContext().getAccessibleDescription().contains("Alt"));
        movable = false;
        assertFalse(panel.getAccessibleContext().getAccessibleDescription().contains("Alt"));
        press("alt LEFT");
        assertEquals(List.of(), moved);
    }

    @Test
    void thePieceBeginsAndEndsWhereItDoes() {
        press("HOME");
        press("alt LEFT");
        press("alt RIGHT");
        press("END");
        press("alt shift LEFT");
        press("alt shift RIGHT");
        assertEquals(List.of(), moved);
    }
}
