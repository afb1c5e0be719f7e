package roundwright.desktop.look;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JButton;

/** Buttons in the three dresses of the window. */
public final class Buttons {
    private static final String STYLE = "FlatLaf.styleClass";
    private static final int ICON = 18;

    private Buttons() {}

    /** A button among others. */
    public static JButton quiet(Action action) {
        JButton button = new JButton(action);
        button.setIcon(null);
        return button;
    }

    /** The one button of a place that most people will press. */
    public static JButton main(Action action) {
        JButton button = quiet(action);
        button.putClientProperty(STYLE, "main");
        return button;
    }

    /** A button with an icon alone; its words are told, and shown as a hint. */
    public static JButton icon(Action action, Glyph glyph) {
        JButton button = new JButton(action) {
            @Override
            protected void actionPropertyChanged(Action changed, String property) {
                super.actionPropertyChanged(changed, property);
                setText(null);
                tell(this, changed);
            }
        };
        button.setText(null);
        button.setIcon(glyph.icon(ICON, java.util.Optional.empty()));
        button.putClientProperty("JButton.buttonType", "toolBarButton");
        tell(button, action);
        return button;
    }

    /** A button with an icon alone that does something of its own place; its words are told, and shown as a hint. */
    public static JButton icon(String words, Glyph glyph, Runnable does) {
        JButton button = icon(
                new AbstractAction(words) {
                    @Override
                    public void actionPerformed(ActionEvent event) {
                        does.run();
                    }
                },
                glyph);
        button.setToolTipText(words);
        return button;
    }

    /** A button with words of its own. */
    public static JButton quiet(String words, Runnable does) {
        JButton button = new JButton(words);
        button.addActionListener(event -> does.run());
        return button;
    }

    public static JButton main(String words, Runnable does) {
        JButton button = quiet(words, does);
        button.putClientProperty(STYLE, "main");
        return button;
    }

    private static void tell(JButton button, Action action) {
        button.getAccessibleContext().setAccessibleName(String.valueOf(action.getValue(Action.NAME)));
    }
}
