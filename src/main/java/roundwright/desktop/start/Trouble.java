package roundwright.desktop.start;

import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import roundwright.desktop.safety.Details;
import roundwright.desktop.safety.TroubleCard;

/**
 * Whatever nobody caught is told here, in a dialog of its own, so that nothing that is half typed goes. Every edit that was
 * acknowledged is in the file by then; the program goes on, or its window is opened anew.
 */
final class Trouble implements Thread.UncaughtExceptionHandler {
    private final JFrame frame;
    private final CardDialog dialog;
    private final Runnable anew;

    /**
     * @param frame the window that the dialog belongs to
     * @param anew opens the window anew over the same file
     */
    Trouble(JFrame frame, Runnable anew) {
        this.frame = frame;
        this.anew = anew;
        this.dialog = new CardDialog(frame);
    }

    @Override
    public void uncaughtException(Thread thread, Throwable failure) {
        // one dialog is enough: what fails while painting fails again and again
        SwingUtilities.invokeLater(() -> {
            if (!dialog.open() && frame.isDisplayable()) {
                show(Details.of(failure));
            }
        });
    }

    private void show(String details) {
        dialog.ask(new TroubleCard(details, dialog::close, () -> {
            dialog.close();
            anew.run();
        }));
    }
}
