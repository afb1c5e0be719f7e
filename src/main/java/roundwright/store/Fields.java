package roundwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/** One row of a result, read by the names of its columns. */
final class Fields {
    private final ResultSet row;

    Fields(ResultSet row) {
        this.row = row;
    }

    long id(String column) throws SQLException {
        return row.getLong(column);
    }

    int number(String column) throws SQLException {
        return row.getInt(column);
    }

    OptionalInt numberIfAny(String column) throws SQLException {
        int number = row.getInt(column);
        return row.wasNull() ? OptionalInt.empty() : OptionalInt.of(number);
    }

    boolean flag(String column) throws SQLException {
        return row.getInt(column) != 0;
    }

    String text(String column) throws SQLException {
        return row.getString(column);
    }

    LocalDate date(String column) throws SQLException {
        return IsoDates.date(row.getString(column));
    }

    Optional<LocalDate> dateIfAny(String column) throws SQLException {
        return Optional.ofNullable(row.getString(column)).map(IsoDates::date);
    }

    Instant time(String column) throws SQLException {
        return IsoDates.time(row.getString(column));
    }

    Optional<Instant> timeIfAny(String column) throws SQLException {
        return Optional.ofNullable(row.getString(column)).map(IsoDates::time);
    }

    <E extends Enum<E>> E word(String column, Class<E> type) throws SQLException {
        return Words.read(type, row.getString(column));
    }
}
