package roundwright.store.pages;

import java.util.Collections;
import java.util.List;
import java.util.OptionalLong;

/**
 * A row as it was found on a page.
 *
 * @param page the page, from 1
 * @param id the row's number, where the page is of a table that numbers its rows
 * @param values each a {@code Long}, {@code Double}, {@code String}, {@code byte[]} or null, in the order in which they are stored
 * @param whole whether every letter could be read
 */
public record FoundRow(int page, OptionalLong id, List<Object> values, boolean whole) {
    public FoundRow {
        values = Collections.unmodifiableList(values);
    }
}
