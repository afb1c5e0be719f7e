package roundwright.desktop;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;

/**
 * An event queue that finds events which keep the window from answering. What counts is the processor's time and the time spent waiting,
 * so that whatever else the machine does meanwhile counts for nothing. Where the event thread was is told with each.
 */
final class SlowEvents extends EventQueue {
    private static final long LOOK_EVERY = 10;

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final List<String> found = new CopyOnWriteArrayList<>();
    private final double longest;
    private volatile Thread busy;
    private volatile String doing = "";
    private volatile StackTraceElement[] seen = {};

    /** Finds events that take longer than so many milliseconds. */
    SlowEvents(double longest) {
        this.longest = longest;
        threads.setThreadContentionMonitoringEnabled(true);
        Thread watcher = new Thread(this::watch, "slow-events");
        watcher.setDaemon(true);
        watcher.start();
    }

    /** Says what the hands do now; slow events are told with it. */
    void doing(String now) {
        doing = now;
    }

    List<String> found() {
        return found;
    }

    @Override
    protected void dispatchEvent(AWTEvent event) {
        boolean outermost = busy == null;
        double before = spent();
        if (outermost) {
            seen = new StackTraceElement[0];
            busy = Thread.currentThread();
        }
        try {
            super.dispatchEvent(event);
        } finally {
            double spent = spent() - before;
            if (outermost) {
                busy = null;
                if (spent > longest && !fetchesFromTheSystem()) {
                    found.add("%s: %.0f ms in %s".formatted(doing, spent, place()));
                }
            }
        }
    }

    /** What lies on the clipboard is fetched from the system's own window server, and pasting waits for it. */
    private boolean fetchesFromTheSystem() {
        return Stream.of(seen)
                .anyMatch(frame -> frame.getClassName().startsWith("sun.awt.datatransfer")
                        || frame.getClassName().startsWith("sun.awt.X11.XClipboard"));
    }

    private double spent() {
        ThreadInfo info = threads.getThreadInfo(Thread.currentThread().getId());
        return threads.getCurrentThreadCpuTime() / 1e6 + info.getBlockedTime() + info.getWaitedTime();
    }

    private void watch() {
        try {
            while (true) {
                Thread.sleep(LOOK_EVERY);
                Thread now = busy;
                if (now != null) {
                    seen = now.getStackTrace();
                }
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** The innermost places of the program in what was seen last. */
    private String place() {
        return Stream.of(seen)
                .filter(frame -> frame.getClassName().startsWith("roundwright."))
                .filter(frame -> !frame.getClassName().contains("SlowEvents"))
                .limit(4)
                .map(frame -> frame.getFileName() + ":" + frame.getLineNumber())
                .toList()
                .toString();
    }
}
