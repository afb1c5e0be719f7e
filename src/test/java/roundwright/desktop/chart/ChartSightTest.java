package roundwright.desktop.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ChartSightTest {
    private static final ChartSight RING = ChartSight.NOTHING.of(300, 300, 500, 300);

    @Test
    void theWholeDrawingStandsInTheMiddle() {
        Point2D middle = RING.toFrame().transform(new Point2D.Double(150, 150), null);
        assertEquals(new Point2D.Double(250, 150), middle);
    }

    @Test
    void thePlaceUnderThePointerStaysWhereItIs() {
        ChartSight near = RING.zoomed(3, 250, 150);
        Point2D before = near.toDrawing(200, 140);
        Point2D after = near.zoomed(1.5, 200, 140).toDrawing(200, 140);
        assertEquals(before.getX(), after.getX(), 1e-9);
        assertEquals(before.getY(), after.getY(), 1e-9);
    }

    @Test
    void noWayOfLookingLosesTheDrawing() {
        Random random = new Random(3);
        for (int run = 0; run < 2000; run++) {
            ChartSight sight = RING;
            for (int move = 0; move < 12; move++) {
                sight = random.nextBoolean()
                        ? sight.zoomed(0.3 + 3 * random.nextDouble(), random.nextInt(500), random.nextInt(300))
                        : sight.moved(random.nextInt(4000) - 2000, random.nextInt(4000) - 2000);
            }
            assertTrue(sight.zoom() >= 1 && sight.zoom() <= ChartSight.MOST);
            Point2D middle = sight.toDrawing(250, 150);
            assertTrue(middle.getX() >= 0 && middle.getX() <= 300, "run " + run + ": " + sight);
            assertTrue(middle.getY() >= 0 && middle.getY() <= 300, "run " + run + ": " + sight);
        }
    }

    @Test
    void aStepThatIsGoneToComesIntoSight() {
        ChartSight sight = RING.zoomed(8, 0, 0).showing(290, 290, 40);
        Point2D place = sight.toFrame().transform(new Point2D.Double(290, 290), null);
        assertTrue(place.getX() <= 500 && place.getY() <= 300, place.toString());
    }
}
