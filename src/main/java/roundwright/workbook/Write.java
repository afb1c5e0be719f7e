package roundwright.workbook;

import java.util.ArrayList;
import java.util.List;
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

    /** Writes all of them in their order; values of a kind that come one after the other go in together. */
    static void all(List<Write<?>> writes, Store store) throws StoreException {
        int from = 0;
        while (from < writes.size()) {
            int to = from + 1;
            while (to < writes.size() && writes.get(from).comesWith(writes.get(to))) {
                to++;
            }
            writes.get(from).to(store, writes.subList(from, to));
            from = to;
        }
    }

    private boolean comesWith(Write<?> other) {
        return before.isEmpty() && other.before.isEmpty() && kind == other.kind;
    }

    /** This one and others that come with it. */
    private void to(Store store, List<Write<?>> together) throws StoreException {
        if (together.size() == 1) {
            to(store);
            return;
        }
        List<V> values = new ArrayList<>(together.size());
        for (Write<?> write : together) {
            // what comes with this one is of the same kind, so of the same type
            @SuppressWarnings("unchecked")
            V value = (V) write.after.orElseThrow();
            values.add(value);
        }
        kind.shelf().apply(store).insertAll(values);
    }

    void to(Draft draft) {
        before.ifPresent(value -> kind.take(value, draft));
        after.ifPresent(value -> kind.put(value, draft));
    }

    Change change() {
        return kind.change().apply(after.or(() -> before).orElseThrow());
    }
}
