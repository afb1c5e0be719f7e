package roundwright.desktop.strip;

import com.formdev.flatlaf.util.UIScale;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;

/**
 * Where everything of the strip stands in a rectangle of pixels. Where the tension is known a round is as wide as it makes the piece
 * longer, so that the columns draw the piece's outline; but never so narrow that a pointer could not find it.
 */
final class StripGeometry {
    private static final double PART_GAP = 14;
    private static final double LOWEST = 3;
    private static final double LEAST_SHARE = 0.45;

    private final StripPiece piece;
    private final double left;
    private final double width;
    private final double bodyTop;
    private final double bodyHeight;
    private final double[] edges;
    private final double[] widths;
    private final int largest;

    /**
     * Lays a piece out.
     *
     * @param left x of the first column
     * @param width width of all columns and gaps between parts
     * @param bodyTop where the highest column begins
     * @param bodyHeight height of the highest column
     */
    StripGeometry(StripPiece piece, double left, double width, double bodyTop, double bodyHeight) {
        this.piece = piece;
        this.left = left;
        this.width = width;
        this.bodyTop = bodyTop;
        this.bodyHeight = bodyHeight;
        this.widths = new double[piece.columns().size()];
        this.edges = layOut();
        this.largest = piece.largestCount();
    }

    StripPiece piece() {
        return piece;
    }

    double bodyTop() {
        return bodyTop;
    }

    double bodyHeight() {
        return bodyHeight;
    }

    private static double scaled(double points) {
        return UIScale.scale((float) points);
    }

    private static double share(StripPiece.Column column) {
        return Math.max(LEAST_SHARE, column.rise());
    }

    /** The gaps between parts are never more than a fifth of the whole. */
    private double[] layOut() {
        int count = widths.length;
        int gaps = 0;
        double shares = 0;
        for (int i = 0; i < count; i++) {
            gaps += i > 0 && piece.beginsPart(i) ? 1 : 0;
            shares += share(piece.columns().get(i));
        }
        double gap = gaps == 0 ? 0 : Math.min(width / 5, gaps * scaled(PART_GAP)) / gaps;
        double each = count == 0 ? 0 : (width - gaps * gap) / shares;
        double[] lefts = new double[count + 1];
        double x = left;
        for (int i = 0; i < count; i++) {
            x += i > 0 && piece.beginsPart(i) ? gap : 0;
            lefts[i] = x;
            widths[i] = each * share(piece.columns().get(i));
            x += widths[i];
        }
        lefts[count] = x;
        return lefts;
    }

    /** Left edges of all columns, and the right edge of the last: one more than there are columns. */
    double[] edges() {
        return edges;
    }

    /** Width of the middle column, its seam included. */
    double columnWidth() {
        return Arrays.stream(widths)
                .sorted()
                .skip(widths.length / 2)
                .findFirst()
                .orElse(0);
    }

    /** The painted body of a column. */
    Rectangle2D column(int index) {
        double each = widths[index];
        double seam = each > scaled(6) ? scaled(1.5) : each > scaled(3) ? scaled(0.5) : 0;
        double share = piece.columns().get(index).count().orElse(0) / (double) largest;
        double height = Math.max(scaled(LOWEST), bodyHeight * share);
        double top = bodyTop + (bodyHeight - height) / 2;
        return new Rectangle2D.Double(edges[index], top, each - seam, height);
    }

    /** The column at an x, the nearest where none is. */
    int columnAt(double x) {
        int found = 0;
        for (int i = 1; i < widths.length; i++) {
            double before = edges[i - 1] + widths[i - 1];
            found = x >= (before + edges[i]) / 2 ? i : found;
        }
        return found;
    }
}
