package roundwright.store;

import java.util.List;

/**
 * All values of one kind in the file. Every write touches exactly the rows of its value, or fails as a whole.
 *
 * @param <V> the kind of value, a record with its own identity
 */
public interface Shelf<V> {
    /** Every value, in the order of its identity. */
    List<V> all() throws StoreException;

    void insert(V value) throws StoreException;

    /** Inserts values in their order, as {@link #insert} would one by one. */
    default void insertAll(List<V> values) throws StoreException {
        for (V value : values) {
            insert(value);
        }
    }

    /** Puts {@code after} in the place of {@code before}; both have the same identity. */
    void replace(V before, V after) throws StoreException;

    void delete(V value) throws StoreException;
}
