package roundwright.store;

import java.sql.SQLException;

/** Makes a value of one row. */
interface RowMapper<V> {
    V map(Fields row) throws SQLException;
}
