package roundwright.desktop.work;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.util.function.LongConsumer;

/** An event queue that tells of every event which kept the event thread busy for more than 50 ms. */
public final class PauseWatch extends EventQueue {
    /** Longest time in milliseconds that goes unmentioned. */
    public static final long LONGEST = 50;

    private final LongConsumer pause;

    /** Hands each pause over, in milliseconds, on the event thread. */
    public PauseWatch(LongConsumer pause) {
        this.pause = pause;
    }

    @Override
    protected void dispatchEvent(AWTEvent event) {
        long start = System.nanoTime();
        try {
            super.dispatchEvent(event);
        } finally {
            long busy = (System.nanoTime() - start) / 1_000_000;
            if (busy > LONGEST) {
                pause.accept(busy);
            }
        }
    }
}
