package roundwright.store;

import java.sql.SQLException;
import java.util.List;
import roundwright.group.GroupId;
import roundwright.group.Session;
import roundwright.group.SessionId;

/** The sessions of all groups, with their logs. */
final class SessionStore implements Shelf<Session> {
    private final Database database;

    SessionStore(Database database) {
        this.database = database;
    }

    @Override
    public List<Session> all() throws StoreException {
        return database.query(
                "SELECT id, group_id, date, lesson, reached, remember FROM session ORDER BY id", SessionStore::session);
    }

    @Override
    public void insert(Session session) throws StoreException {
        database.write(
                1,
                "INSERT INTO session (id, group_id, date, lesson, reached, remember) VALUES (?, ?, ?, ?, ?, ?)",
                session.id().value(),
                session.group().value(),
                IsoDates.text(session.date()),
                session.lesson(),
                session.reached(),
                session.remember());
    }

    @Override
    public void replace(Session before, Session after) throws StoreException {
        database.write(
                1,
                "UPDATE session SET date = ?, lesson = ?, reached = ?, remember = ? WHERE id = ?",
                IsoDates.text(after.date()),
                after.lesson(),
                after.reached(),
                after.remember(),
                before.id().value());
    }

    @Override
    public void delete(Session session) throws StoreException {
        database.write(1, "DELETE FROM session WHERE id = ?", session.id().value());
    }

    private static Session session(Fields row) throws SQLException {
        return new Session(
                new SessionId(row.id("id")),
                new GroupId(row.id("group_id")),
                row.date("date"),
                row.numberIfAny("lesson"),
                row.text("reached"),
                row.text("remember"));
    }
}
