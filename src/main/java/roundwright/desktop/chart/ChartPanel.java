package roundwright.desktop.chart;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntConsumer;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import roundwright.desktop.look.Flowing;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.pattern.chart.ChartSign;
import roundwright.pattern.chart.ChartWords;
import roundwright.pattern.chart.RoundChart;
import roundwright.pattern.chart.SignShapes;
import roundwright.wording.Wording;

/** The chart on the screen; the arrow keys go through the round a step at a time, and what each step does is told in words. */
public final class ChartPanel extends JComponent implements Flowing {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double TALLEST = 330;
    private static final double LEAST_INSIDE = 56;

    private final transient IntConsumer stepShown;
    private transient Optional<RoundChart> chart = Optional.empty();
    private transient Optional<ChartWords> words = Optional.empty();
    private boolean leftHanded;
    private OptionalInt step = OptionalInt.empty();

    /** Tells the listener of each step that a person goes to. */
    public ChartPanel(IntConsumer stepShown) {
        this.stepShown = stepShown;
        setFocusable(true);
        Keys.bind(this, "RIGHT", () -> goTo(step.orElse(-1) + 1));
        Keys.bind(this, "LEFT", () -> goTo(step.orElse(1) - 1));
        Keys.bind(this, "HOME", () -> goTo(0));
        Keys.bind(this, "END", () -> goTo(Integer.MAX_VALUE));
        addFocusListener(new Keys.RepaintOnFocus(this));
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                requestFocusInWindow();
                nearest(event.getX(), event.getY()).ifPresent(ChartPanel.this::goTo);
            }
        });
    }

    public void show(RoundChart newChart, ChartWords newWords, boolean mirrored) {
        chart = Optional.of(newChart);
        words = Optional.of(newWords);
        leftHanded = mirrored;
        step = OptionalInt.empty();
        revalidate();
        repaint();
    }

    /** The step that is shown, where one is. */
    public OptionalInt step() {
        return step;
    }

    private void goTo(int index) {
        chart.ifPresent(shown -> {
            int last = shown.steps().list().size() - 1;
            String before = getAccessibleContext().getAccessibleDescription();
            step = last < 0 ? OptionalInt.empty() : OptionalInt.of(Math.max(0, Math.min(index, last)));
            step.ifPresent(stepShown);
            String now = getAccessibleContext().getAccessibleDescription();
            getAccessibleContext().firePropertyChange(AccessibleContext.ACCESSIBLE_DESCRIPTION_PROPERTY, before, now);
            repaint();
        });
    }

    private Optional<Integer> nearest(int x, int y) {
        ChartPainter painter = painter();
        return chart.flatMap(shown -> shown.signs().stream()
                .min(Comparator.comparingDouble(
                        sign -> painter.at(sign.angle(), painter.radius()).distance(new Point2D.Double(x, y))))
                .map(ChartSign::stepIndex));
    }

    @Override
    public int heightFor(int width) {
        return (int) Math.min(Space.points(TALLEST), Math.max(Space.points(160), width * 0.86));
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : Space.points(TALLEST);
        return new Dimension(width, heightFor(width));
    }

    private ChartPainter painter() {
        double half = Math.min(getWidth(), getHeight()) / 2.0;
        RoundChart shown = chart.orElseThrow();
        double tallest = shown.signs().stream()
                .mapToDouble(sign -> SignShapes.height(sign.step()))
                .max()
                .orElse(1);
        double radius = Math.max(Space.points(20), half - Space.points(10) - Space.points(13) * tallest);
        return new ChartPainter(shown, getWidth() / 2.0, getHeight() / 2.0, radius, leftHanded);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        if (hasFocus()) {
            smooth.setColor(Tone.PINE.color());
            smooth.setStroke(new java.awt.BasicStroke(Space.points(2)));
            int arc = Space.smallArc() * 2;
            smooth.drawRoundRect(1, 1, getWidth() - 3, getHeight() - 3, arc, arc);
        }
        if (chart.isPresent()) {
            ChartPainter painter = painter();
            painter.paint(smooth, step);
            paintCounts(smooth, painter);
        }
        smooth.dispose();
    }

    private void paintCounts(Graphics2D graphics, ChartPainter painter) {
        RoundChart shown = chart.orElseThrow();
        if (shown.takes() == 0 || painter.radius() < Space.points(LEAST_INSIDE)) {
            return;
        }
        centred(graphics, String.valueOf(shown.makes()), Type.TITLE.font(), Tone.INK, Space.points(4));
        String from = WORDS.say("chart-from", shown.takes());
        centred(graphics, from, Type.SECOND.font(), Tone.MUTED, Space.points(24));
    }

    private void centred(Graphics2D graphics, String text, Font font, Tone tone, int below) {
        graphics.setFont(font);
        graphics.setColor(tone.color());
        FontMetrics metrics = graphics.getFontMetrics();
        graphics.drawString(text, (getWidth() - metrics.stringWidth(text)) / 2f, getHeight() / 2f + below);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleChart();
        }
        return accessibleContext;
    }

    private final class AccessibleChart extends AccessibleJComponent {
        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }

        @Override
        public String getAccessibleName() {
            return words.map(ChartWords::whole).orElseGet(() -> WORDS.say("chart-none"));
        }

        @Override
        public String getAccessibleDescription() {
            return words.filter(found -> step.isPresent())
                    .map(found -> found.step(step.getAsInt()))
                    .orElseGet(() -> WORDS.say("chart-how"));
        }
    }
}
