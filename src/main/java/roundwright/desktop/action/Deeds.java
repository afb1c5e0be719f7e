package roundwright.desktop.action;

import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;
import roundwright.desktop.look.Buttons;
import roundwright.desktop.look.Keys;

/** What each deed does in one window, and whether it can be done now. */
public final class Deeds {
    private final Map<Deed, Doing> doings = new EnumMap<>(Deed.class);
    private final BooleanSupplier free;

    /** Deeds do nothing while the window is not free, as when a question is open in it. */
    public Deeds(BooleanSupplier free) {
        this.free = free;
        for (Deed deed : Deed.values()) {
            doings.put(deed, new Doing(deed));
        }
    }

    /** Says what a deed does. */
    public void on(Deed deed, Runnable does) {
        doings.get(deed).does = does;
        doings.get(deed).setEnabled(true);
    }

    /** Does it, as if its button had been pressed. */
    public void perform(Deed deed) {
        Doing doing = doings.get(deed);
        if (doing.isEnabled()) {
            doing.actionPerformed(new ActionEvent(this, ActionEvent.ACTION_PERFORMED, deed.name()));
        }
    }

    public void enable(Deed deed, boolean enabled) {
        doings.get(deed).setEnabled(enabled);
    }

    /** A deed's words with its key. */
    public String hint(Deed deed) {
        return String.valueOf(doings.get(deed).getValue(Action.SHORT_DESCRIPTION));
    }

    public boolean enabled(Deed deed) {
        return doings.get(deed).isEnabled();
    }

    /** Other words for a deed, as for what exactly would be undone. */
    public void call(Deed deed, String words) {
        doings.get(deed).name(words);
    }

    /** A button with the deed's words. */
    public JButton button(Deed deed) {
        return Buttons.quiet(doings.get(deed));
    }

    /** The one button of a place that most people will press. */
    public JButton mainButton(Deed deed) {
        return Buttons.main(doings.get(deed));
    }

    /** A button with only the deed's icon; the words are told and shown as a hint. */
    public JButton iconButton(Deed deed) {
        return Buttons.icon(doings.get(deed), deed.glyph());
    }

    public JMenuItem menuItem(Deed deed) {
        JMenuItem item = new JMenuItem(doings.get(deed));
        item.setIcon(deed.glyph().icon());
        return item;
    }

    /** Binds every key to its deed, wherever in the window the focus is. */
    public void bind(JComponent root) {
        for (Deed deed : Deed.values()) {
            deed.stroke()
                    .ifPresent(
                            stroke -> Keys.bind(root, JComponent.WHEN_IN_FOCUSED_WINDOW, stroke, () -> perform(deed)));
        }
        alsoOn(root, Deed.LARGER, KeyEvent.VK_EQUALS, KeyEvent.VK_PLUS, KeyEvent.VK_ADD);
        alsoOn(root, Deed.SMALLER, KeyEvent.VK_SUBTRACT);
    }

    /** Plus and minus lie in other places on other keyboards: with Shift, without, and in the number block. */
    private static void alsoOn(JComponent root, Deed deed, int... codes) {
        Object same = deed.stroke().orElseThrow();
        for (int code : codes) {
            KeyStroke plain = Keys.menu(code);
            KeyStroke shifted = KeyStroke.getKeyStroke(code, plain.getModifiers() | InputEvent.SHIFT_DOWN_MASK);
            root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(plain, same);
            root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(shifted, same);
        }
    }

    /** Binds keys of deeds on a component that has a use of its own for them. */
    public void bindOn(JComponent component, List<Deed> wanted) {
        for (Deed deed : wanted) {
            deed.stroke()
                    .ifPresent(stroke -> Keys.bind(component, JComponent.WHEN_FOCUSED, stroke, () -> perform(deed)));
        }
    }

    private final class Doing extends AbstractAction {
        private final transient Deed deed;
        private transient Runnable does = () -> {};

        Doing(Deed deed) {
            this.deed = deed;
            name(deed.words());
            deed.stroke().ifPresent(stroke -> putValue(Action.ACCELERATOR_KEY, stroke));
            setEnabled(false);
        }

        void name(String words) {
            putValue(Action.NAME, words);
            putValue(
                    Action.SHORT_DESCRIPTION,
                    deed.keyWords().map(key -> words + " (" + key + ")").orElse(words));
        }

        @Override
        public void actionPerformed(ActionEvent event) {
            if (free.getAsBoolean()) {
                does.run();
            }
        }
    }
}
