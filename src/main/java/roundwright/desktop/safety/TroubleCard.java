package roundwright.desktop.safety;

import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import javax.swing.JTextArea;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Fields;
import roundwright.desktop.look.Prose;
import roundwright.wording.Wording;

/** What the person is told when something went wrong that nobody foresaw: in plain words, with details to copy. */
public final class TroubleCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");

    /**
     * @param details from {@link Details}
     * @param goOn closes the card
     * @param anew opens the window anew over the same file
     */
    public TroubleCard(String details, Runnable goOn, Runnable anew) {
        super(WORDS.say("trouble-head"), 620);
        body().below(0, Prose.body(WORDS.say("trouble-what")));
        answer(WORDS.say("trouble-go-on"), goOn);
        JTextArea area = Fields.lines(details, 8);
        area.setEditable(false);
        area.setCaretPosition(0);
        row(WORDS.say("trouble-details"), area, WORDS.say("trouble-private"));
        other(WORDS.say("trouble-anew"), anew);
        other(WORDS.say("trouble-copy"), () -> copy(details));
    }

    private static void copy(String details) {
        Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(details), null);
    }
}
