package roundwright.desktop.look;

import javax.swing.JLabel;

/** One line of text in a type and a tone of the scale; it follows the theme and the zoom. */
public class Text extends JLabel {
    private final Type type;
    private Tone tone;

    public Text(String text, Type type, Tone tone) {
        super(text);
        this.type = type;
        this.tone = tone;
        dress();
    }

    public static Text heading(String text) {
        return new Text(text, Type.HEADING, Tone.INK);
    }

    public static Text muted(String text) {
        return new Text(text, Type.SECOND, Tone.MUTED);
    }

    public void setTone(Tone tone) {
        this.tone = tone;
        dress();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        dress();
    }

    private void dress() {
        if (type != null) {
            setFont(type.font());
            setForeground(tone.color());
        }
    }
}
