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
 * so that whatever else the machine does meanwhile counts for nothing; nor does it count when the system's own window server is waited
 * for. Where the event thread was is told with each.
 */
final class SlowEvents extends EventQueue {
    private static final long LOOK_EVERY = 10;

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final List<String> found = new CopyOnWriteArrayList<>();
    private final double longest;
    private volatile Thread busy;
    private volatile String doing = "";
    private volatile StackTraceElement[] seen = {};
    private volatile double waitedForTheSystem;

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
        double worked = worked();
        double waited = waited();
        if (outermost) {
            seen = new StackTraceElement[0];
            waitedForTheSystem = 0;
            busy = Thread.currentThread();
        }
        try {
            super.dispatchEvent(event);
        } finally {
            if (outermost) {
                busy = null;
                double spent = worked() - worked + Math.max(0, waited() - waited - waitedForTheSystem);
                if (spent > longest) {
                    found.add("%s: %.0f ms in %s".formatted(doing, spent, place()));
                }
            }
        }
    }

    /**
     * What lies on the clipboard is fetched from the window server, and pasting waits for it; the hands' own waiting for the window to be
     * idle is an event, too; and while they press a key they keep the door to the server shut.
     */
    private static boolean waitsForTheSystem(StackTraceElement... stack) {
        return Stream.of(stack)
                .anyMatch(frame -> frame.getClassName().startsWith("sun.awt.datatransfer")
                        || frame.getClassName().startsWith("sun.awt.X11.XClipboard")
                        || frame.getClassName().startsWith("sun.awt.SunToolkit$")
                        || frame.getMethodName().equals("awtLock"));
    }

    private double worked() {
        return threads.getCurrentThreadCpuTime() / 1e6;
    }

    private double waited() {
        ThreadInfo info = threads.getThreadInfo(Thread.currentThread().getId());
        return info.getBlockedTime() + info.getWaitedTime();
    }

    private void watch() {
        try {
            while (true) {
                long before = System.nanoTime();
                Thread.sleep(LOOK_EVERY);
                Thread now = busy;
                if (now != null) {
                    seen = now.getStackTrace();
                    waitedForTheSystem += waitsForTheSystem(seen) ? (System.nanoTime() - before) / 1e6 : 0;
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
