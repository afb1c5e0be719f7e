package roundwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One row of a result, read by the names of its columns. Every row is asked for the same columns in the same order, so a name is looked
 * up once and found again for the next row where it was.
 */
final class Fields {
    private final ResultSet row;
    private final List<String> asked = new ArrayList<>();
    private final List<Integer> places = new ArrayList<>();
    private int next;

    Fields(ResultSet row) {
        this.row = row;
    }

    /** Goes to the next row, where there is one. */
    boolean next() throws SQLException {
        next = 0;
        return row.next();
    }

    private int place(String column) throws SQLException {
        int turn = next++;
        if (turn == asked.size()) {
            asked.add(column);
            places.add(row.findColumn(column));
        }
        return column.equals(asked.get(turn)) ? places.get(turn) : row.findColumn(column);
    }

    long id(String column) throws SQLException {
        return row.getLong(place(column));
    }

    int number(String column) throws SQLException {
        return row.getInt(place(column));
    }

    OptionalInt numberIfAny(String column) throws SQLException {
        int number = row.getInt(place(column));
        return row.wasNull() ? OptionalInt.empty() : OptionalInt.of(number);
    }

    boolean flag(String column) throws SQLException {
        return row.getInt(place(column)) != 0;
    }

    String text(String column) throws SQLException {
        return row.getString(place(column));
    }

    LocalDate date(String column) throws SQLException {
        return IsoDates.date(row.getString(place(column)));
    }

    Optional<LocalDate> dateIfAny(String column) throws SQLException {
        return Optional.ofNullable(row.getString(place(column))).map(IsoDates::date);
    }

    Instant time(String column) throws SQLException {
        return IsoDates.time(row.getString(place(column)));
    }

    Optional<Instant> timeIfAny(String column) throws SQLException {
        return Optional.ofNullable(row.getString(place(column))).map(IsoDates::time);
    }

    <E extends Enum<E>> E word(String column, Class<E> type) throws SQLException {
        return Words.read(type, row.getString(place(column)));
    }
}
