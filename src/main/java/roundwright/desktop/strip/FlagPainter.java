package roundwright.desktop.strip;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import roundwright.desktop.look.Cut;
import roundwright.desktop.look.Mark;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;

/** Paints a flag above each column where a technique comes first, and its name where there is room for words. */
final class FlagPainter {
    private static final double FLAG = 10;

    private final Graphics2D graphics;
    private final StripGeometry geometry;
    private final StripRooms rooms;
    private final double right;

    FlagPainter(Graphics2D graphics, StripGeometry geometry, StripRooms rooms, double right) {
        this.graphics = graphics;
        this.geometry = geometry;
        this.rooms = rooms;
        this.right = right;
    }

    /** A flag with its words and the row they stand in. */
    private record Flag(Rectangle2D body, String words, double x, int row) {}

    void paint(Map<Integer, List<String>> flags) {
        List<Flag> placed = new ArrayList<>();
        double[] taken = new double[Math.max(1, rooms.flagRows())];
        new TreeMap<>(flags).forEach((column, names) -> {
            Rectangle2D body = geometry.column(column);
            double x = body.getCenterX() - Space.points(0.5);
            String words = String.join(", ", names);
            int row = freeRow(taken, x, placed);
            taken[row] = x + Space.points(FLAG + 11) + metrics().stringWidth(words);
            placed.add(new Flag(body, words, x, row));
        });
        double[] used = new double[taken.length];
        for (int i = 0; i < placed.size(); i++) {
            Flag flag = placed.get(i);
            paint(flag);
            if (rooms.flagRows() > 0) {
                used[flag.row()] = paintWords(flag, start(placed, i, used[flag.row()]), end(placed, i));
            }
        }
    }

    private FontMetrics metrics() {
        return graphics.getFontMetrics(Type.SMALL.font());
    }

    /** The first row whose words have ended before x; where all still run on, another row than the flag before. */
    private static int freeRow(double[] taken, double x, List<Flag> placed) {
        for (int row = 0; row < taken.length; row++) {
            if (taken[row] <= x) {
                return row;
            }
        }
        return (placed.get(placed.size() - 1).row() + 1) % taken.length;
    }

    /** Words end before the next flag of their row, and before the staff of the next flag above them. */
    private double end(List<Flag> placed, int index) {
        Flag flag = placed.get(index);
        return placed.subList(index + 1, placed.size()).stream()
                .filter(other -> other.row() <= flag.row())
                .mapToDouble(other -> other.x() - Space.points(4))
                .findFirst()
                .orElse(right);
    }

    /** Words at the left of their flag begin after what stands in their row, and after the staff of a flag above them. */
    private static double start(List<Flag> placed, int index, double used) {
        Flag flag = placed.get(index);
        return placed.subList(0, index).stream()
                .filter(other -> other.row() < flag.row())
                .mapToDouble(Flag::x)
                .reduce(used, Math::max);
    }

    private void paint(Flag flag) {
        double top = rooms.flagTop(flag.row());
        graphics.setColor(Tone.MARIGOLD.color());
        graphics.setStroke(new BasicStroke(Space.points(1.2)));
        graphics.draw(new Line2D.Double(flag.x(), top, flag.x(), flag.body().getY() - Space.points(3)));
        Mark.NEW.paint(graphics, flag.x() - Space.points(0.5), top, Space.points(FLAG));
    }

    /** Words stand behind their flag; where only the room before it holds them whole, there. Returns where the flag and they end. */
    private double paintWords(Flag flag, double start, double end) {
        double behind = flag.x() + Space.points(FLAG + 5);
        double before = flag.x() - Space.points(5) - metrics().stringWidth(flag.words());
        boolean turned = behind + metrics().stringWidth(flag.words()) > end && before >= start + Space.points(4);
        String words = turned ? flag.words() : Cut.to(flag.words(), metrics(), end - behind);
        graphics.setFont(Type.SMALL.font());
        graphics.setColor(Tone.INK.color());
        graphics.drawString(words, (float) (turned ? before : behind), (float) rooms.flagBaseline(flag.row()));
        return turned ? behind : behind + metrics().stringWidth(words);
    }
}
