package roundwright.desktop.work;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;

/** The one queue for work away from the event thread: tasks run one after the other, in the order they were handed in. */
public final class Work implements AutoCloseable {
    private static final int LAST_TASKS_SECONDS = 30;

    private final Executor away;
    private final Executor here;
    private final AtomicInteger waiting = new AtomicInteger();
    private final Runnable close;
    private final Supplier<Work> kind;
    private Runnable listener = () -> {};

    private Work(Executor away, Executor here, Runnable close, Supplier<Work> kind) {
        this.away = away;
        this.here = here;
        this.close = close;
        this.kind = kind;
    }

    /** A queue with a thread of its own. */
    public static Work queue() {
        ExecutorService thread = Executors.newSingleThreadExecutor(task -> {
            Thread own = new Thread(task, "roundwright-work");
            own.setDaemon(true);
            return own;
        });
        return new Work(thread, SwingUtilities::invokeLater, () -> finish(thread), Work::queue);
    }

    /** Does each task at once, on the thread that hands it in: for tests and for pictures. */
    public static Work atOnce() {
        return new Work(Runnable::run, Runnable::run, () -> {}, Work::atOnce);
    }

    /** Takes tasks and never comes to them: for tests of what happens meanwhile. */
    public static Work never() {
        return new Work(task -> {}, Runnable::run, () -> {}, Work::never);
    }

    /** Another queue of the same kind, for tasks that are not to keep those of this one waiting. */
    public Work another() {
        return kind.get();
    }

    /** Is told on the event thread whenever the number of waiting tasks changes. */
    public void listen(Runnable told) {
        listener = told;
    }

    /** Tasks that are not done yet. */
    public int waiting() {
        return waiting.get();
    }

    public <R> void submit(Task<R> task) {
        waiting.incrementAndGet();
        away.execute(() -> {
            try {
                R result = task.away();
                here.execute(() -> finished(() -> task.here(result)));
            } catch (RuntimeException | Error unforeseen) {
                here.execute(() -> finished(() -> task.failed(new Unforeseen(unforeseen))));
                Thread thread = Thread.currentThread();
                thread.getUncaughtExceptionHandler().uncaughtException(thread, unforeseen);
            } catch (Exception failure) {
                here.execute(() -> finished(() -> task.failed(failure)));
            }
        });
    }

    /** Hands something to the event thread, after what the tasks before it have handed there. */
    public void here(Runnable does) {
        here.execute(does);
    }

    private void finished(Runnable half) {
        waiting.decrementAndGet();
        try {
            half.run();
        } finally {
            listener.run();
        }
    }

    /** Waits for the tasks that were handed in, and takes no more. */
    @Override
    public void close() {
        close.run();
    }

    private static void finish(ExecutorService thread) {
        thread.shutdown();
        try {
            thread.awaitTermination(LAST_TASKS_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
