package roundwright.sheet;

import java.util.function.Supplier;

/** A value that is made when it is first asked for, once, whichever thread asks. */
final class Lazy<T> {
    private final Supplier<T> maker;
    private T value;

    Lazy(Supplier<T> maker) {
        this.maker = maker;
    }

    synchronized T get() {
        if (value == null) {
            value = maker.get();
        }
        return value;
    }
}
