package roundwright.desktop.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import roundwright.course.file.CourseFile;
import roundwright.desktop.OnEventThread;
import roundwright.desktop.Pictures;
import roundwright.desktop.SampleCourse;
import roundwright.desktop.look.Theme;

@ExtendWith(OnEventThread.class)
class StripPanelTest {
    private final List<Integer> told = new ArrayList<>();
    private StripPanel panel;

    private static final StripMarks MARKS = new StripMarks(
            Map.of(
                    0, List.of("magic ring", "double crochet"),
                    1, List.of("increase"),
                    6, List.of("back loop only"),
                    9, List.of("invisible decrease"),
                    14, List.of("changing colour"),
                    23, List.of("post stitch")),
            Map.of(
                    10,
                    List.of("Samir"),
                    11,
                    List.of("Ife"),
                    12,
                    List.of("Anneke", "Tobias", "Mira"),
                    13,
                    List.of("Pawel", "Grace", "Ludo")),
            Set.of(12),
            3);

    @BeforeEach
    void build() {
        Theme.LIGHT.install(1);
        panel = new StripPanel(told::add);
        panel.show(StripPiece.of(SampleCourse.lighthouse()), MARKS);
        Pictures.layOut(panel, 1340, 206);
    }

    private void press(String stroke) {
        Object name = panel.getInputMap().get(KeyStroke.getKeyStroke(stroke));
        panel.getActionMap().get(name).actionPerformed(null);
    }

    @Test
    void aShorterPieceComesWhileThePointerRestsOnALongerOne() {
        MouseEvent far = new MouseEvent(panel, MouseEvent.MOUSE_MOVED, 0, 0, 1200, 60, 0, false);
        for (var listener : panel.getMouseMotionListeners()) {
            listener.mouseMoved(far);
        }
        StripPiece whole = StripPiece.of(SampleCourse.lighthouse());
        panel.show(new StripPiece(whole.columns().subList(0, 2), List.of()), StripMarks.NONE);
        BufferedImage image = new BufferedImage(1340, 206, BufferedImage.TYPE_INT_RGB);
        panel.paint(image.createGraphics());
        assertEquals(0, panel.chosen());
    }

    @Test
    void arrowsHomeAndEndMoveByRoundsAndPagesByLessons() {
        press("RIGHT");
        press("RIGHT");
        press("LEFT");
        press("PAGE_DOWN");
        press("PAGE_DOWN");
        press("PAGE_UP");
        press("END");
        press("RIGHT");
        press("HOME");
        press("LEFT");
        assertEquals(List.of(1, 2, 1, 5, 9, 5, 33, 33, 0, 0), told);
    }

    @Test
    void thePointerChoosesTheColumnUnderIt() {
        StripRooms rooms = StripRooms.of(206);
        StripGeometry geometry =
                new StripGeometry(StripPiece.of(SampleCourse.lighthouse()), 30, 1280, rooms.top(), rooms.body());
        for (int column : new int[] {0, 12, 23, 33}) {
            int x = (int) geometry.column(column).getCenterX();
            panel.dispatchEvent(
                    new MouseEvent(panel, MouseEvent.MOUSE_PRESSED, 0, 0, x, 80, x, 80, 1, false, MouseEvent.BUTTON1));
            assertEquals(column, panel.chosen());
        }
    }

    @Test
    void theChosenRoundIsToldInWords() {
        panel.setChosen(12);
        assertEquals(
                "Tower, round 13 · 40 stitches · lesson 3: The wall; first decrease · 3 students here: Anneke, Tobias and Mira"
                        + " · many go wrong here",
                panel.getAccessibleContext().getAccessibleDescription());
        assertEquals(
                "The piece from its first round to its last: 34 rounds, 3 parts, 6 lessons",
                panel.getAccessibleContext().getAccessibleName());
    }

    @Test
    void colourFollowsTheYarnThatThePatternNames() {
        StripPiece piece = StripPiece.of(SampleCourse.lighthouse());
        assertEquals(Wool.CREAM, piece.columns().get(13).wool());
        assertEquals(Wool.RED, piece.columns().get(14).wool());
        assertEquals(Wool.RED, piece.columns().get(28).wool());
    }

    @Test
    void columnsStandInOrderInsideThePanelAtAnyWidth() {
        for (int width : new int[] {300, 1000, 3000}) {
            StripGeometry geometry = new StripGeometry(StripPiece.of(SampleCourse.lighthouse()), 10, width, 20, 100);
            double[] edges = geometry.edges();
            IntStream.range(1, edges.length).forEach(i -> assertTrue(edges[i] > edges[i - 1]));
            assertEquals(10 + width, edges[edges.length - 1], 0.01);
        }
    }

    @Test
    void withATensionAWallIsLongAndADiscIsShort() {
        String text = "# Ball\n\n- terms: UK\n- tension: 18 stitches and 20 rounds to 10 cm\n\n## Part: Body\n\n"
                + "- Rnd 1: 6 dc in magic ring (6)\n- Rnd 2: inc x 6 (12)\n- Rnd 3: (dc, inc) x 6 (18)\n"
                + "- Rnds 4-6: dc in each st around (18)\n";
        StripPiece piece = StripPiece.of(CourseFile.read(text).course());
        StripGeometry geometry = new StripGeometry(piece, 0, 600, 0, 100);
        assertTrue(geometry.column(1).getWidth() < geometry.column(4).getWidth() * 0.6);
        assertEquals(geometry.column(4).getWidth(), geometry.column(5).getWidth(), 1e-9);
        assertEquals(600, geometry.edges()[6], 1e-6);
        for (int column = 0; column < 6; column++) {
            assertEquals(column, geometry.columnAt(geometry.column(column).getCenterX()));
        }
        assertEquals(31.8, piece.columns().get(3).across().getAsDouble(), 0.1);
        assertTrue(new StripWords(piece, StripMarks.NONE).of(3).contains("about 3 cm across"));
    }

    @Test
    void marksOfStudentsNeverTouch() {
        StripPiece piece = StripPiece.of(SampleCourse.lighthouse());
        Random random = new Random(8);
        var graphics = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        for (int run = 0; run < 300; run++) {
            Map<Integer, List<String>> students = new HashMap<>();
            for (int group = random.nextInt(20); group >= 0; group--) {
                students.put(random.nextInt(piece.columns().size()), Collections.nCopies(1 + random.nextInt(30), "A"));
            }
            StripGeometry geometry = new StripGeometry(piece, 30, 200 + random.nextInt(1500), 10, 40);
            List<Rectangle2D> places = new StudentPainter(graphics, geometry).places(students);
            for (int i = 1; i < places.size(); i++) {
                assertTrue(places.get(i - 1).getMaxX() < places.get(i).getMinX(), "run " + run + ": " + students);
            }
        }
    }

    @Test
    void fourHundredRoundsArePaintedQuickly() {
        panel.show(
                StripPiece.of(SampleCourse.piece(
                        IntStream.range(0, 400).map(i -> 6 + i % 90).toArray())),
                StripMarks.NONE);
        var threads = ManagementFactory.getThreadMXBean();
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            long before = threads.getCurrentThreadCpuTime();
            Pictures.paint(panel);
            times.add((threads.getCurrentThreadCpuTime() - before) / 1e6);
        }
        double middle = times.subList(10, 30).stream().sorted().toList().get(10);
        assertTrue(middle < 40, "painting takes " + middle + " ms of the processor");
    }

    @Test
    void aPieceWithoutRoundsIsPaintedAndTold() {
        panel.show(StripPiece.of(SampleCourse.piece()), StripMarks.NONE);
        Pictures.paint(panel);
        press("RIGHT");
        assertEquals("There are no rounds yet.", panel.chosenInWords());
        assertEquals(List.of(), told);
    }

    @Test
    void picturesOfTheStrip() {
        for (Theme theme : Theme.values()) {
            for (int zoom : new int[] {1, 2}) {
                theme.install(zoom);
                panel = new StripPanel(told::add);
                panel.show(StripPiece.of(SampleCourse.lighthouse()), MARKS);
                panel.setChosen(12);
                Pictures.write(
                        Pictures.paint(Pictures.layOut(panel, 1000, 170)), "strip-" + theme + "-" + zoom + "-low");
                Pictures.write(Pictures.paint(Pictures.layOut(panel, 1550, 206 * zoom)), "strip-" + theme + "-" + zoom);
            }
        }
    }
}
