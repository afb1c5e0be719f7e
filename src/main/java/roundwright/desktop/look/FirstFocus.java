package roundwright.desktop.look;

import javax.swing.JComponent;

/** A page that knows which of its components is to have the focus when the page is shown. */
public interface FirstFocus {
    JComponent first();
}
