package roundwright.desktop.chart;

import java.awt.Container;
import java.awt.Dimension;
import javax.swing.JPanel;
import roundwright.desktop.look.Flowing;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;

/** Two charts to compare: side by side, or one below the other where there is little width. */
public final class ChartPair extends JPanel implements Flowing {
    private static final double LEAST_BESIDE = 360;

    private final Stack first;
    private final Stack second;

    /** Each chart stands under its title; what its chosen step does is told below it. */
    public ChartPair(ChartSubject first, ChartSubject second) {
        super(null);
        setOpaque(false);
        this.first = column(first);
        this.second = column(second);
        add(this.first);
        add(this.second);
    }

    private static Stack column(ChartSubject subject) {
        Stack column = new Stack();
        Prose step = Prose.muted("");
        ChartPanel panel = new ChartPanel(index -> step.setText(subject.words().step(index)));
        panel.show(subject);
        column.below(0, Prose.of(subject.title(), Type.SMALL_STRONG, Tone.INK));
        column.below(0.5, panel);
        column.below(0.5, step);
        return column;
    }

    private static int gap() {
        return Space.of(1.5);
    }

    private static boolean beside(int width) {
        return width >= Space.points(LEAST_BESIDE);
    }

    @Override
    public int heightFor(int width) {
        int half = (width - gap()) / 2;
        return beside(width)
                ? Math.max(first.heightFor(half), second.heightFor(half))
                : first.heightFor(width) + gap() + second.heightFor(width);
    }

    @Override
    public Dimension getPreferredSize() {
        Container parent = getParent();
        int width =
                getWidth() > 0 || parent == null ? Math.max(getWidth(), Space.points(LEAST_BESIDE)) : parent.getWidth();
        return new Dimension(width, heightFor(width));
    }

    @Override
    public void doLayout() {
        int width = getWidth();
        if (beside(width)) {
            int half = (width - gap()) / 2;
            first.setBounds(0, 0, half, getHeight());
            second.setBounds(half + gap(), 0, half, getHeight());
        } else {
            int high = first.heightFor(width);
            first.setBounds(0, 0, width, high);
            second.setBounds(0, high + gap(), width, second.heightFor(width));
        }
    }
}
