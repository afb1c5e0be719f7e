package roundwright.desktop.strip;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;

/**
 * Paints where the students are: a dot each at the foot of their column, or their number where there is no room for dots. Where the marks
 * of neighbouring columns would touch, one number stands for them all.
 */
final class StudentPainter {
    private static final double DOT = 7;
    private static final double LEAST_DOT = 4.5;
    private static final int MOST_ROWS = 4;
    private static final double APART = 1.5;

    private final Graphics2D graphics;
    private final StripGeometry geometry;

    StudentPainter(Graphics2D graphics, StripGeometry geometry) {
        this.graphics = graphics;
        this.geometry = geometry;
    }

    /** Students who are marked together; in dots so many in a row, or 0 where their number is written. */
    private record Together(double centre, double bottom, int students, double width, int across) {
        double left() {
            return centre - width / 2;
        }

        double right() {
            return centre + width / 2;
        }
    }

    void paint(Map<Integer, List<String>> students) {
        for (Together together : together(students)) {
            if (together.across() == 0) {
                number(together);
            } else {
                dots(together);
            }
        }
    }

    /** Where marks stand, for looking whether any touch. */
    List<Rectangle2D> places(Map<Integer, List<String>> students) {
        return together(students).stream()
                .<Rectangle2D>map(each -> new Rectangle2D.Double(each.left(), each.bottom(), each.width(), 1))
                .toList();
    }

    private List<Together> together(Map<Integer, List<String>> students) {
        List<Together> all = new ArrayList<>();
        new TreeMap<>(students).forEach((column, names) -> {
            Together next = inColumn(column, names.size());
            while (!all.isEmpty() && all.get(all.size() - 1).right() + Space.points(APART) > next.left()) {
                next = joined(all.remove(all.size() - 1), next);
            }
            all.add(next);
        });
        return all;
    }

    private static double dot(Rectangle2D body) {
        return Math.min(Space.points(DOT), Math.max(Space.points(LEAST_DOT), body.getWidth()));
    }

    private Together inColumn(int column, int students) {
        Rectangle2D body = geometry.column(column);
        double step = dot(body) + Space.points(APART);
        int across = Math.max(1, (int) ((body.getWidth() + 2 * Space.points(APART)) / step));
        int rows = Math.max(1, Math.min(MOST_ROWS, (int) (body.getHeight() / step)));
        if (students > across * rows) {
            return new Together(body.getCenterX(), body.getMaxY(), students, numberWidth(students), 0);
        }
        double width = Math.min(across, students) * step - Space.points(APART);
        return new Together(body.getCenterX(), body.getMaxY(), students, width, across);
    }

    private Together joined(Together one, Together other) {
        int students = one.students() + other.students();
        double centre = (one.centre() * one.students() + other.centre() * other.students()) / students;
        return new Together(centre, Math.max(one.bottom(), other.bottom()), students, numberWidth(students), 0);
    }

    private double numberWidth(int students) {
        double words = graphics.getFontMetrics(Type.SMALL_STRONG.font()).stringWidth(String.valueOf(students));
        return Math.max(numberHeight(), words + Space.points(10));
    }

    private static double numberHeight() {
        return Space.points(17);
    }

    private void dots(Together together) {
        double dot = Math.min(Space.points(DOT), together.width());
        double step = dot + Space.points(APART);
        for (int i = 0; i < together.students(); i++) {
            int row = i / together.across();
            int inRow = Math.min(together.across(), together.students() - row * together.across());
            double left = together.centre() - (inRow * step - Space.points(APART)) / 2;
            double x = left + (i % together.across()) * step;
            double y = together.bottom() - Space.points(3) - dot - row * step;
            edged(new Ellipse2D.Double(x, y, dot, dot), 1.6);
        }
    }

    private void number(Together together) {
        double high = numberHeight();
        double top = together.bottom() - high - Space.points(2);
        edged(new RoundRectangle2D.Double(together.left(), top, together.width(), high, high, high), 1.2);
        String words = String.valueOf(together.students());
        graphics.setFont(Type.SMALL_STRONG.font());
        double width = graphics.getFontMetrics().stringWidth(words);
        graphics.drawString(words, (float) (together.centre() - width / 2), (float) (top + high - Space.points(4.5)));
    }

    private void edged(Shape shape, double stroke) {
        graphics.setColor(Tone.SURFACE.color());
        graphics.fill(shape);
        graphics.setColor(Tone.INK.color());
        graphics.setStroke(new BasicStroke(Space.points(stroke)));
        graphics.draw(shape);
    }
}
