package roundwright.desktop.chart;

import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import roundwright.desktop.look.Buttons;
import roundwright.desktop.look.Glyph;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Wrap;
import roundwright.wording.Wording;

/** A chart with its key, what its chosen step does, and buttons to go through it, to look closer, and to save it. */
public final class ChartView extends Stack {
    private static final Wording WORDS = Wording.of("desktop");

    private final ChartPanel panel;
    private final ChartKey key = new ChartKey();
    private final Prose step;
    private final transient ChartSaver saver;
    private transient Optional<ChartSubject> subject = Optional.empty();

    /** What is said of a step is said in the type of the page that the chart stands on. */
    public ChartView(ChartSaver saver, Prose step) {
        this.saver = saver;
        this.step = step;
        panel = new ChartPanel(
                index -> subject.ifPresent(shown -> step.setText(shown.words().step(index))));
        below(0, panel);
        below(0.5, step);
        below(0.75, tools());
        below(1.25, key);
    }

    private Wrap tools() {
        Wrap tools = new Wrap(0.25);
        tools.add(Buttons.icon(WORDS.say("chart-back"), Glyph.LEFT, panel::back));
        tools.add(Buttons.icon(WORDS.say("chart-forward"), Glyph.RIGHT, panel::forward));
        tools.add(Buttons.icon(WORDS.say("chart-farther"), Glyph.SMALLER, panel::farther));
        tools.add(Buttons.icon(WORDS.say("chart-closer"), Glyph.LARGER, panel::closer));
        JButton whole = Buttons.quiet(WORDS.say("chart-all"), panel::whole);
        whole.setToolTipText(WORDS.say("chart-all-hint"));
        tools.add(whole);
        JButton save = Buttons.quiet(WORDS.say("chart-save"), () -> {});
        save.addActionListener(event -> saving().show(save, 0, save.getHeight()));
        tools.add(save);
        return tools;
    }

    private JPopupMenu saving() {
        JPopupMenu menu = new JPopupMenu(WORDS.say("chart-save"));
        for (ChartSaver.Format format : ChartSaver.Format.values()) {
            JMenuItem item = new JMenuItem(format.words());
            item.addActionListener(event -> subject.ifPresent(shown -> saver.save(shown, format)));
            menu.add(item);
        }
        return menu;
    }

    public void show(ChartSubject shown) {
        subject = Optional.of(shown);
        panel.show(shown);
        key.show(shown);
        step.setText(WORDS.say("chart-how"));
    }

    public ChartPanel panel() {
        return panel;
    }
}
