package roundwright.desktop.ask;

import java.awt.Dimension;
import javax.swing.JPanel;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Text;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;

/** A key and what it does, in two columns. */
final class KeyLine extends JPanel {
    private final Text key;
    private final Text words;
    private final double keyWidth;

    KeyLine(String key, String words, double keyWidth) {
        super(null);
        this.keyWidth = keyWidth;
        this.key = new Text(key, Type.SMALL_STRONG, Tone.PINE);
        this.words = new Text(words.replace("…", ""), Type.BODY, Tone.INK);
        setOpaque(false);
        add(this.key);
        add(this.words);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Space.points(keyWidth * 3), words.getPreferredSize().height);
    }

    @Override
    public void doLayout() {
        int left = Space.points(keyWidth);
        key.setBounds(0, 0, left, getHeight());
        words.setBounds(left, 0, getWidth() - left, getHeight());
    }
}
