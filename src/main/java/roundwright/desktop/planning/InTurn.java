package roundwright.desktop.planning;

import java.util.ArrayDeque;
import java.util.Deque;
import roundwright.desktop.work.Task;
import roundwright.desktop.work.Work;

/**
 * Edits one after the other: each begins when the course as the one before left it lies on the desk, however quickly the keys are
 * pressed. Lives on the event thread.
 */
final class InTurn {
    /** Writing the text, writing the file and reading the course are handed in one by another. */
    private static final int STEPS = 3;

    private final Work work;
    private final Deque<Runnable> waiting = new ArrayDeque<>();
    private boolean busy;

    InTurn(Work work) {
        this.work = work;
    }

    /** Does an edit now, or as soon as those before it are done. */
    void soon(Runnable edit) {
        waiting.add(edit);
        goOn();
    }

    private void goOn() {
        if (!busy && !waiting.isEmpty()) {
            busy = true;
            waiting.remove().run();
            after(STEPS);
        }
    }

    private void after(int steps) {
        if (steps == 0) {
            busy = false;
            goOn();
            return;
        }
        work.submit(new Task<Void>() {
            @Override
            public Void away() {
                return null;
            }

            @Override
            public void here(Void nothing) {
                after(steps - 1);
            }

            @Override
            public void failed(Exception failure) {
                after(steps - 1);
            }
        });
    }
}
