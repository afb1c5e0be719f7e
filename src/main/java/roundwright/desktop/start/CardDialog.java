package roundwright.desktop.start;

import java.awt.BorderLayout;
import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.Optional;
import javax.swing.JDialog;
import javax.swing.JFrame;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.ask.Question;
import roundwright.desktop.look.Flowing;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.Space;
import roundwright.wording.Wording;

/** Asks by a card in a dialog of its own, where what is on the page is to be left alone. */
final class CardDialog implements Asking {
    private static final Wording WORDS = Wording.of("desktop");

    private final JFrame frame;
    private Optional<JDialog> shown = Optional.empty();

    /** @param frame the window that the dialog belongs to */
    CardDialog(JFrame frame) {
        this.frame = frame;
    }

    /** Shows a card in place of the one that is shown. */
    @Override
    public void ask(Question question) {
        close();
        JDialog dialog = new JDialog(frame, WORDS.say("window-title"), Dialog.ModalityType.MODELESS);
        shown = Optional.of(dialog);
        dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
        dialog.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent event) {
                closed(dialog);
            }
        });
        Keys.bindAround(question.card(), "ESCAPE", dialog::dispose);
        dialog.add(question.card(), BorderLayout.CENTER);
        int width = Space.points(question.width());
        dialog.getContentPane().setPreferredSize(new Dimension(width, Flowing.heightOf(question.card(), width)));
        dialog.pack();
        dialog.setLocationRelativeTo(frame);
        dialog.setVisible(true);
        question.first().requestFocusInWindow();
    }

    private void closed(JDialog dialog) {
        if (shown.equals(Optional.of(dialog))) {
            shown = Optional.empty();
        }
    }

    @Override
    public void close() {
        Optional<JDialog> last = shown;
        shown = Optional.empty();
        last.ifPresent(JDialog::dispose);
    }

    boolean open() {
        return shown.isPresent();
    }
}
