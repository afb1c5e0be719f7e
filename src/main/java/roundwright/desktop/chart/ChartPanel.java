package roundwright.desktop.chart;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
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
import roundwright.pattern.WorkedAs;
import roundwright.pattern.chart.ChartDrawing;
import roundwright.pattern.chart.RoundChart;
import roundwright.wording.Wording;

/**
 * The chart on the screen. The arrow keys go through the round a step at a time, and what each step does is told in words; plus, minus
 * and the wheel with Ctrl change its size, Shift with the arrows or a drag moves it.
 */
public final class ChartPanel extends JComponent implements Flowing {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double TALLEST = 330;
    private static final double LEAST = 90;
    private static final double LEAST_RING = 160;
    private static final double LEAST_INSIDE = 150;
    private static final double RATHER_WIDE = 0.86;
    private static final double CLOSER = 1.5;

    private final transient IntConsumer stepShown;
    private transient Optional<ChartSubject> subject = Optional.empty();
    private transient RoundChart chart;
    private transient ChartDrawing drawing;
    private transient ChartSight sight = ChartSight.NOTHING;
    private OptionalInt step = OptionalInt.empty();

    /** Tells the listener of each step that a person goes to. */
    public ChartPanel(IntConsumer stepShown) {
        this.stepShown = stepShown;
        setFocusable(true);
        Keys.bind(this, "RIGHT", this::forward);
        Keys.bind(this, "LEFT", this::back);
        Keys.bind(this, "HOME", () -> goTo(0));
        Keys.bind(this, "END", () -> goTo(Integer.MAX_VALUE));
        Keys.bind(this, "typed +", this::closer);
        Keys.bind(this, "typed =", this::closer);
        Keys.bind(this, "typed -", this::farther);
        Keys.bind(this, "typed 0", this::whole);
        Keys.bind(this, "shift LEFT", () -> move(Space.of(4), 0));
        Keys.bind(this, "shift RIGHT", () -> move(-Space.of(4), 0));
        Keys.bind(this, "shift UP", () -> move(0, Space.of(4)));
        Keys.bind(this, "shift DOWN", () -> move(0, -Space.of(4)));
        addFocusListener(new Keys.RepaintOnFocus(this));
        ChartMouse.on(this);
    }

    /** Shows a round whole, with no step chosen. */
    public void show(ChartSubject newSubject) {
        subject = Optional.of(newSubject);
        chart = newSubject.chart();
        drawing = null;
        sight = sight.whole();
        step = OptionalInt.empty();
        revalidate();
        repaint();
    }

    /** The step that is shown, where one is. */
    public OptionalInt step() {
        return step;
    }

    double zoom() {
        return sight.zoom();
    }

    void forward() {
        goTo(step.orElse(-1) + 1);
    }

    void back() {
        goTo(step.orElse(1) - 1);
    }

    void closer() {
        zoom(CLOSER, getWidth() / 2.0, getHeight() / 2.0);
    }

    void farther() {
        zoom(1 / CLOSER, getWidth() / 2.0, getHeight() / 2.0);
    }

    void whole() {
        see(sight.whole());
    }

    void zoom(double times, double x, double y) {
        see(sight.zoomed(times, x, y));
    }

    void move(double right, double down) {
        see(sight.moved(right, down));
    }

    private void see(ChartSight now) {
        layOut();
        sight = now;
        repaint();
    }

    void goTo(int index) {
        subject.ifPresent(shown -> {
            int last = shown.steps().list().size() - 1;
            String before = getAccessibleContext().getAccessibleDescription();
            step = last < 0 ? OptionalInt.empty() : OptionalInt.of(Math.max(0, Math.min(index, last)));
            step.ifPresent(stepShown);
            String now = getAccessibleContext().getAccessibleDescription();
            getAccessibleContext().firePropertyChange(AccessibleContext.ACCESSIBLE_DESCRIPTION_PROPERTY, before, now);
            layOut();
            step.ifPresent(this::scrollTo);
            repaint();
        });
    }

    private void scrollTo(int index) {
        drawing.standsOf(index).stream()
                .findFirst()
                .ifPresent(stand -> sight = sight.showing(stand.x(), stand.y(), Space.of(5)));
    }

    void goToNearest(int x, int y) {
        if (subject.isPresent()) {
            layOut();
            Point2D place = sight.toDrawing(x, y);
            drawing.nearest(place.getX(), place.getY()).ifPresent(this::goTo);
        }
    }

    /** Draws the chart at the size of the panel, if that has not been done. */
    private void layOut() {
        int width = Math.max(1, getWidth());
        int height = Math.max(1, getHeight());
        boolean done = drawing != null && sight.frameWidth() == width && sight.frameHeight() == height;
        if (done || subject.isEmpty()) {
            return;
        }
        ChartDrawing wide = ChartDrawing.of(chart, width, subject.get().setting());
        drawing = wide.height() <= height
                ? wide
                : ChartDrawing.of(
                        chart, width * height / wide.height(), subject.get().setting());
        sight = sight.of(drawing.width(), drawing.height(), width, height);
    }

    @Override
    public int heightFor(int width) {
        if (subject.isEmpty()) {
            return Space.points(LEAST_RING);
        }
        if (subject.get().setting().worked() == WorkedAs.ROUNDS) {
            return (int) Math.min(Space.points(TALLEST), Math.max(Space.points(LEAST_RING), width * RATHER_WIDE));
        }
        double high = ChartDrawing.of(chart, width, subject.get().setting()).height();
        return (int) Math.min(Space.points(TALLEST), Math.max(Space.points(LEAST), high));
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : Space.points(TALLEST);
        return new Dimension(width, heightFor(width));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        if (subject.isPresent()) {
            layOut();
            Graphics2D placed = (Graphics2D) smooth.create();
            placed.transform(sight.toFrame());
            new ChartPainter(drawing, step).paint(placed);
            placed.dispose();
            paintCounts(smooth);
        }
        if (hasFocus()) {
            smooth.setColor(Tone.PINE.color());
            smooth.setStroke(new BasicStroke(Space.points(2)));
            int arc = Space.smallArc() * 2;
            smooth.drawRoundRect(1, 1, getWidth() - 3, getHeight() - 3, arc, arc);
        }
        smooth.dispose();
    }

    /** The counts stand inside a ring that has room for them. */
    private void paintCounts(Graphics2D graphics) {
        boolean row = subject.orElseThrow().setting().worked() == WorkedAs.ROWS;
        if (row || chart.takes() == 0 || drawing.height() * sight.zoom() < Space.points(LEAST_INSIDE)) {
            return;
        }
        Point2D middle = sight.toFrame().transform(new Point2D.Double(drawing.width() / 2, drawing.height() / 2), null);
        centred(graphics, String.valueOf(chart.makes()), Type.TITLE.font(), Tone.INK, middle, Space.points(4));
        String from = WORDS.say("chart-from", chart.takes());
        centred(graphics, from, Type.SECOND.font(), Tone.MUTED, middle, Space.points(24));
    }

    private static void centred(Graphics2D graphics, String text, Font font, Tone tone, Point2D middle, int below) {
        graphics.setFont(font);
        graphics.setColor(tone.color());
        FontMetrics metrics = graphics.getFontMetrics();
        double left = middle.getX() - metrics.stringWidth(text) / 2.0;
        graphics.drawString(text, (float) left, (float) middle.getY() + below);
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
            return subject.map(shown -> shown.title() + ". " + shown.words().whole())
                    .orElseGet(() -> WORDS.say("chart-none"));
        }

        @Override
        public String getAccessibleDescription() {
            return subject.filter(found -> step.isPresent())
                    .map(found -> found.words().step(step.getAsInt()))
                    .orElseGet(() -> WORDS.say("chart-how"));
        }
    }
}
