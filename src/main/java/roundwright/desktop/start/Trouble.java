package roundwright.desktop.start;

import java.awt.BorderLayout;
import java.awt.Dialog;
import java.util.Optional;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import roundwright.desktop.look.Flowing;
import roundwright.desktop.look.Space;
import roundwright.desktop.safety.Details;
import roundwright.desktop.safety.TroubleCard;
import roundwright.wording.Wording;

/**
 * Whatever nobody caught is told here, in a dialog of its own, so that nothing that is half typed goes. Every edit that was
 * acknowledged is in the file by then; the program goes on, or its window is opened anew.
 */
final class Trouble implements Thread.UncaughtExceptionHandler {
    private static final Wording WORDS = Wording.of("desktop");

    private final JFrame frame;
    private final Runnable anew;
    private Optional<JDialog> shown = Optional.empty();

    /**
     * @param frame the window that the dialog belongs to
     * @param anew opens the window anew over the same file
     */
    Trouble(JFrame frame, Runnable anew) {
        this.frame = frame;
        this.anew = anew;
    }

    @Override
    public void uncaughtException(Thread thread, Throwable failure) {
        // one dialog is enough: what fails while painting fails again and again
        SwingUtilities.invokeLater(() -> {
            if (shown.isEmpty() && frame.isDisplayable()) {
                show(Details.of(failure));
            }
        });
    }

    private void show(String details) {
        JDialog dialog = new JDialog(frame, WORDS.say("window-title"), Dialog.ModalityType.MODELESS);
        TroubleCard card = new TroubleCard(details, () -> close(dialog), () -> {
            close(dialog);
            anew.run();
        });
        shown = Optional.of(dialog);
        dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
        dialog.addWindowListener(new java.awt.event.WindowAdapter() {
            @Override
            public void windowClosed(java.awt.event.WindowEvent event) {
                shown = Optional.empty();
            }
        });
        dialog.add(card, BorderLayout.CENTER);
        int width = Space.points(card.width());
        dialog.getContentPane().setPreferredSize(new java.awt.Dimension(width, Flowing.heightOf(card, width)));
        dialog.pack();
        dialog.setLocationRelativeTo(frame);
        dialog.setVisible(true);
        card.first().requestFocusInWindow();
    }

    private void close(JDialog dialog) {
        shown = Optional.empty();
        dialog.dispose();
    }
}
