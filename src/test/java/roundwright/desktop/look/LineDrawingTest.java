package roundwright.desktop.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Rectangle;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class LineDrawingTest {
    private record Case(String data, double left, double top, double right, double bottom, double endX, double endY) {}

    static Stream<Case> paths() {
        return Stream.of(
                new Case("M2 3L10 3", 2, 3, 10, 3, 10, 3),
                new Case("m9 14 2 2 4-4", 9, 12, 15, 16, 15, 12),
                new Case("M8 13h.01v-.5.5", 8, 12.5, 8.01, 13, 8.01, 13),
                new Case("M1 1H5V9h-4Z", 1, 1, 5, 9, 1, 1),
                new Case("M0 5a5 5 0 1 1 10 0", 0, 0, 10, 5, 10, 5),
                new Case("M0 5a5 5 0 1 0 10 0", 0, 5, 10, 10, 10, 5),
                new Case("M0 5a5 5 0 0110 0", 0, 0, 10, 5, 10, 5),
                new Case("M16 21v-2a4 4 0 0 0-4-4", 12, 15, 16, 21, 12, 15),
                new Case("M10 5a5 5 0 1 1-5-5", 0, 0, 10, 10, 5, 0),
                new Case("M0 5A1 1 0 0 1 10 5", 0, 0, 10, 5, 10, 5),
                new Case("M5 0a2 5 90 0 0 0 4", 0, 0, 5, 4, 5, 4),
                new Case("M0 0C0 4 4 4 4 0", 0, 0, 4, 3, 4, 0));
    }

    @ParameterizedTest
    @MethodSource("paths")
    void aPathGoesWhereItsDataSays(Case path) {
        Path2D read = new PathData(path.data()).read();
        Rectangle2D bounds =
                new java.awt.geom.Area(new java.awt.BasicStroke(0.001f).createStrokedShape(read)).getBounds2D();
        assertEquals(path.left(), bounds.getMinX(), 0.01);
        assertEquals(path.top(), bounds.getMinY(), 0.01);
        assertEquals(path.right(), bounds.getMaxX(), 0.01);
        assertEquals(path.bottom(), bounds.getMaxY(), 0.01);
        Point2D end = read.getCurrentPoint();
        assertEquals(0, end.distance(path.endX(), path.endY()), 0.001);
    }

    @ParameterizedTest
    @EnumSource
    void everyIconIsDrawnWithinItsSquare(Glyph glyph) {
        Rectangle drawn = glyph.drawing().getBounds();
        assertTrue(new Rectangle(1, 1, 22, 22).contains(drawn), glyph + " " + drawn);
        assertTrue(drawn.width >= 8 && drawn.height >= 6 || drawn.height >= 8 && drawn.width >= 6, glyph + " " + drawn);
    }

    @Test
    void shapesAreReadBesidePaths() {
        Path2D read = LineDrawing.read(
                "<svg width=\"24\"><circle cx=\"11\" cy=\"11\" r=\"8\" />"
                        + "<rect width=\"8\" height=\"4\" x=\"8\" y=\"2\" rx=\"1\" /><line x1=\"3\" x2=\"20\" y1=\"4\" y2=\"21\" /></svg>");
        assertEquals(new Rectangle2D.Double(3, 2, 17, 19), read.getBounds2D());
    }

    @Test
    void whatALineDrawingDoesNotHaveIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> LineDrawing.read("<g><path d=\"M0 0\"/></g>"));
        assertThrows(IllegalArgumentException.class, () -> new PathData("M0 0Q1 1 2 2").read());
        assertThrows(NumberFormatException.class, () -> new PathData("M0 0L1 red").read());
    }
}
