package roundwright.workbook;

import java.util.Optional;
import roundwright.store.Shelf;
import roundwright.store.Store;
import roundwright.store.StoreException;

/**
 * The smallest change there is: one value comes, changes or goes. Every edit is a list of these, and its inverse is the list
 * turned round.
 *
 * @param before the value as it was; empty where it comes
 * @param after the value as it is to be; empty where it goes
 */
record Write<V>(Kind<V> kind, Optional<V> before, Optional<V> after) {
    Write {
        if (before.isEmpty() && after.isEmpty()) {
            throw new IllegalArgumentException("nothing to write");
        }
    }

    static <V> Write<V> insert(Kind<V> kind, V value) {
        return new Write<>(kind, Optional.empty(), Optional.of(value));
    }

    static <V> Write<V> replace(Kind<V> kind, V before, V after) {
        return new Write<>(kind, Optional.of(before), Optional.of(after));
    }

    static <V> Write<V> delete(Kind<V> kind, V value) {
        return new Write<>(kind, Optional.of(value), Optional.empty());
    }

    /** From one state to another; nothing where they are the same. */
    static <V> Optional<Write<V>> change(Kind<V> kind, Optional<V> before, Optional<V> after) {
        return before.equals(after) ? Optional.empty() : Optional.of(new Write<>(kind, before, after));
    }

    Write<V> inverse() {
        return new Write<>(kind, after, before);
    }

    boolean deletes() {
        return after.isEmpty();
    }

    void to(Store store) throws StoreException {
        Shelf<V> shelf = kind.shelf().apply(store);
        if (before.isEmpty()) {
            shelf.insert(after.orElseThrow());
        } else if (after.isEmpty()) {
            shelf.delete(before.orElseThrow());
        } else {
            shelf.replace(before.orElseThrow(), after.orElseThrow());
        }
    }

    void to(Draft draft) {
        before.ifPresent(
                value -> kind.places().apply(draft, value).remove(kind.key().apply(value)));
        after.ifPresent(
                value -> kind.places().apply(draft, value).put(kind.key().apply(value), value));
    }

    Change change() {
        return kind.change().apply(after.or(() -> before).orElseThrow());
    }
}
