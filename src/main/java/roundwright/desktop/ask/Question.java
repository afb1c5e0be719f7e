package roundwright.desktop.ask;

import javax.swing.JComponent;

/** What can be laid over the page. Those who ask know no more of it, so that no card is loaded before it is asked. */
public interface Question {
    /** What is laid there. */
    JComponent card();

    /** Its width in points. */
    double width();

    /** What gets the focus when it is shown. */
    JComponent first();
}
