package roundwright.desktop.chart;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.swing.Icon;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Text;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.desktop.look.Wrap;
import roundwright.pattern.Step;
import roundwright.pattern.chart.ChartWords;

/** The key of a chart: each sign that it uses with its name. */
public final class ChartKey extends Wrap {
    public ChartKey() {
        super(1.5);
    }

    /** The signs of one chart, or of several that stand together. */
    public void show(ChartSubject... subjects) {
        removeAll();
        Map<String, Step> signs = new LinkedHashMap<>();
        for (ChartSubject subject : subjects) {
            ChartWords.signs(subject.steps(), subject.terms()).forEach(signs::putIfAbsent);
        }
        signs.forEach((name, step) -> add(entry(name, step)));
        revalidate();
        repaint();
    }

    private static Text entry(String name, Step step) {
        Text text = new Text(name, Type.SECOND, Tone.MUTED);
        text.setIcon(new SignIcon(step));
        text.setIconTextGap(Space.of(0.75));
        return text;
    }

    /** A sign at the size of the words beside it, with its legs where it has several. */
    private record SignIcon(Step step) implements Icon {
        @Override
        public void paintIcon(Component component, Graphics graphics, int x, int y) {
            Graphics2D smooth = Space.smooth(graphics);
            boolean shapes = step.increases() || step.decreases();
            smooth.setColor((shapes ? Tone.MARIGOLD : Tone.INK).color());
            smooth.translate(x + getIconWidth() / 2.0, y + getIconHeight() - Space.points(2));
            KeySign.paint(smooth, step, getIconHeight() - Space.points(4.0));
            smooth.dispose();
        }

        @Override
        public int getIconWidth() {
            return Space.points(18);
        }

        @Override
        public int getIconHeight() {
            return Space.points(20);
        }
    }
}
