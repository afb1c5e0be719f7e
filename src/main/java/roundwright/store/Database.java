package roundwright.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteErrorCode;
import roundwright.wording.Wording;

/** The one connection to the file: queries, writes that know how many rows they touch, and transactions. */
final class Database implements AutoCloseable {
    private static final Wording WORDS = Wording.of("store");

    private static final int ROWS_AT_ONCE = 5_000;

    /** Work in one transaction: all of it is kept, or none. */
    interface Work {
        void run() throws StoreException;
    }

    private final Path file;
    private final Connection connection;
    private final Map<String, PreparedStatement> prepared = new HashMap<>();

    Database(Path file, Connection connection) {
        this.file = file;
        this.connection = connection;
    }

    Path file() {
        return file;
    }

    <V> List<V> query(String sql, RowMapper<V> mapper, Object... parameters) throws StoreException {
        try {
            try (ResultSet rows = bound(sql, parameters).executeQuery()) {
                List<V> values = new ArrayList<>();
                Fields row = new Fields(rows);
                while (row.next()) {
                    values.add(mapper.map(row));
                }
                return values;
            }
        } catch (SQLException failure) {
            throw failed(sql, failure);
        } catch (RuntimeException impossible) {
            // a value that its own type refuses: written by no version of this program
            throw new StoreException.Damaged(file, WORDS.say("damaged.value", impossible.getMessage()), impossible);
        }
    }

    /** Writes, and fails unless exactly so many rows were touched. */
    void write(int rows, String sql, Object... parameters) throws StoreException {
        int touched = change(sql, parameters);
        if (touched != rows) {
            throw new StoreException.Failed(file, touched + " rows for " + rows + ": " + sql.strip(), null);
        }
    }

    /** Writes, however many rows it touches, and says how many. */
    int change(String sql, Object... parameters) throws StoreException {
        try {
            return bound(sql, parameters).executeUpdate();
        } catch (SQLException failure) {
            throw failed(sql, failure);
        }
    }

    /** Inserts rows, many of them in one go; fails unless each of them was. */
    void insertAll(String sql, Iterator<Object[]> rows) throws StoreException {
        try {
            PreparedStatement statement = prepared(sql);
            while (rows.hasNext()) {
                for (int some = 0; some < ROWS_AT_ONCE && rows.hasNext(); some++) {
                    bind(statement, rows.next());
                    statement.addBatch();
                }
                requireOneEach(sql, statement.executeBatch());
            }
        } catch (SQLException failure) {
            throw failed(sql, failure);
        }
    }

    private void requireOneEach(String sql, int[] touched) throws StoreException {
        for (int rows : touched) {
            if (rows != 1) {
                throw new StoreException.Failed(file, rows + " rows for 1: " + sql.strip(), null);
            }
        }
    }

    /** Runs one statement as it stands: a schema step, a pragma. */
    void execute(String sql) throws StoreException {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        } catch (SQLException failure) {
            throw Failures.of(file, failure);
        }
    }

    void transaction(Work work) throws StoreException {
        execute("BEGIN IMMEDIATE");
        try {
            work.run();
            execute("COMMIT");
        } catch (StoreException | RuntimeException | Error failure) {
            rollBack(failure);
            throw failure;
        }
    }

    /** Writes everything into a file that is not there yet. */
    void backUpTo(Path target) throws StoreException {
        try {
            int code = connection
                    .unwrap(SQLiteConnection.class)
                    .getDatabase()
                    .backup("main", target.toAbsolutePath().toString(), null);
            if (code != SQLiteErrorCode.SQLITE_OK.code) {
                throw Failures.of(
                        target, code, SQLiteErrorCode.getErrorCode(code).toString());
            }
        } catch (SQLException failure) {
            throw Failures.of(target, failure);
        }
    }

    /** Takes in everything from another file of the same form in place of what is here; all of it, or nothing. */
    void takeAllFrom(Path source) throws StoreException {
        closePrepared();
        try {
            int code = connection
                    .unwrap(SQLiteConnection.class)
                    .getDatabase()
                    .restore("main", source.toAbsolutePath().toString(), null);
            if (code != SQLiteErrorCode.SQLITE_OK.code) {
                throw Failures.of(file, code, SQLiteErrorCode.getErrorCode(code).toString());
            }
        } catch (SQLException failure) {
            throw Failures.of(file, failure);
        }
    }

    /** Writes the file anew, without pages that are no longer used and what may stand in them. */
    void writeAnew() throws StoreException {
        closePrepared();
        execute("VACUUM");
    }

    private void closePrepared() throws StoreException {
        try {
            for (PreparedStatement statement : prepared.values()) {
                statement.close();
            }
            prepared.clear();
        } catch (SQLException failure) {
            throw Failures.of(file, failure);
        }
    }

    private void rollBack(Throwable reason) {
        try {
            execute("ROLLBACK");
        } catch (StoreException alreadyRolledBack) {
            // a full disk or an I/O error has ended the transaction already
            reason.addSuppressed(alreadyRolledBack);
        }
    }

    /** The driver closes a statement that fails, so it cannot be kept for the next time. */
    private StoreException failed(String sql, SQLException failure) {
        prepared.remove(sql);
        return Failures.of(file, failure);
    }

    private PreparedStatement bound(String sql, Object... parameters) throws SQLException {
        PreparedStatement statement = prepared(sql);
        bind(statement, parameters);
        return statement;
    }

    private PreparedStatement prepared(String sql) throws SQLException {
        PreparedStatement statement = prepared.get(sql);
        if (statement == null) {
            statement = connection.prepareStatement(sql);
            prepared.put(sql, statement);
        }
        return statement;
    }

    private static void bind(PreparedStatement statement, Object... parameters) throws SQLException {
        for (int place = 0; place < parameters.length; place++) {
            statement.setObject(place + 1, plain(parameters[place]));
        }
    }

    private static Object plain(Object parameter) {
        if (parameter instanceof Optional<?> optional) {
            return optional.orElse(null);
        }
        if (parameter instanceof OptionalInt number) {
            return number.isPresent() ? number.getAsInt() : null;
        }
        return parameter instanceof Boolean flag ? (flag ? 1 : 0) : parameter;
    }

    @Override
    public void close() throws StoreException {
        closePrepared();
        try {
            connection.close();
        } catch (SQLException failure) {
            throw Failures.of(file, failure);
        }
    }
}
