package roundwright.desktop.safety;

import java.util.concurrent.Callable;
import java.util.function.Consumer;
import roundwright.desktop.work.Task;

/**
 * A question to the file or the disk: asked away from the event thread, answered on it.
 *
 * @param <R> what comes back
 */
record Asked<R>(Callable<R> question, Consumer<R> answer, Consumer<Exception> refusal) implements Task<R> {
    @Override
    public R away() throws Exception {
        return question.call();
    }

    @Override
    public void here(R result) {
        answer.accept(result);
    }

    @Override
    public void failed(Exception failure) {
        refusal.accept(failure);
    }
}
