package roundwright.pattern;

import java.util.function.Supplier;

/** A value worked out when it is first asked for. Two threads may both work it out; they get equal values. */
final class Lazy<T> {
    private final Supplier<T> supplier;
    private volatile T value;

    Lazy(Supplier<T> supplier) {
        this.supplier = supplier;
    }

    T get() {
        T known = value;
        if (known == null) {
            known = supplier.get();
            value = known;
        }
        return known;
    }
}
