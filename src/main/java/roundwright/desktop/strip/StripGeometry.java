package roundwright.desktop.strip;

import java.awt.geom.Rectangle2D;

/**
 * Where everything of the strip stands in a rectangle of pixels. Rooms above and below the piece are given up, outermost first,
 * when there is little height.
 *
 * @param piece what is laid out
 * @param left x of the first column
 * @param width width of all columns and gaps between parts
 * @param bodyTop where the highest column begins
 * @param bodyHeight height of the highest column
 */
record StripGeometry(StripPiece piece, double left, double width, double bodyTop, double bodyHeight) {
    private static final double PART_GAP = 14;
    private static final double LOWEST = 3;

    /** Total width of the gaps between parts: never more than a fifth of the whole. */
    private double gaps() {
        int parts = 0;
        for (int i = 1; i < piece.columns().size(); i++) {
            parts += piece.beginsPart(i) ? 1 : 0;
        }
        return parts == 0 ? 0 : Math.min(width / 5, parts * scaled(PART_GAP)) / parts;
    }

    private static double scaled(double points) {
        return com.formdev.flatlaf.util.UIScale.scale((float) points);
    }

    /** Left edges of all columns, and the right edge of the last: one more than there are columns. */
    double[] edges() {
        int count = piece.columns().size();
        double[] edges = new double[count + 1];
        double gap = gaps();
        int parts = 0;
        for (int i = 1; i < count; i++) {
            parts += piece.beginsPart(i) ? 1 : 0;
        }
        double each = count == 0 ? 0 : (width - parts * gap) / count;
        double x = left;
        for (int i = 0; i < count; i++) {
            x += i > 0 && piece.beginsPart(i) ? gap : 0;
            edges[i] = x;
            x += each;
        }
        edges[count] = x;
        return edges;
    }

    /** Width of one column, its seam included. */
    double columnWidth() {
        double[] edges = edges();
        return edges[edges.length - 1] - edges[edges.length - 2];
    }

    /** The painted body of a column. */
    Rectangle2D column(double[] edges, int index) {
        double each = edges[edges.length - 1] - edges[edges.length - 2];
        double seam = each > scaled(6) ? scaled(1.5) : each > scaled(3) ? scaled(0.5) : 0;
        double share = piece.columns().get(index).count().orElse(0) / (double) piece.largestCount();
        double height = Math.max(scaled(LOWEST), bodyHeight * share);
        double top = bodyTop + (bodyHeight - height) / 2;
        return new Rectangle2D.Double(edges[index], top, each - seam, height);
    }

    /** The column at an x, the nearest where none is. */
    int columnAt(double x) {
        double[] edges = edges();
        int last = piece.columns().size() - 1;
        int found = 0;
        for (int i = 1; i <= last; i++) {
            double boundary = piece.beginsPart(i) ? (edges[i] + edges[i - 1] + columnWidthOf(edges)) / 2 : edges[i];
            found = x >= boundary ? i : found;
        }
        return found;
    }

    private static double columnWidthOf(double[] edges) {
        return edges[edges.length - 1] - edges[edges.length - 2];
    }
}
