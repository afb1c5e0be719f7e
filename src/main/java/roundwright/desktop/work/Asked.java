package roundwright.desktop.work;

import java.util.concurrent.Callable;
import java.util.function.Consumer;

/**
 * A question to the file or the disk: asked away from the event thread, answered on it.
 *
 * @param <R> what comes back
 */
public record Asked<R>(Callable<R> question, Consumer<R> answer, Consumer<Exception> refusal) implements Task<R> {
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
