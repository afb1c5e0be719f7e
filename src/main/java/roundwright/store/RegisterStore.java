package roundwright.store;

import java.sql.SQLException;
import java.util.List;
import roundwright.group.Attendance;
import roundwright.group.GroupId;
import roundwright.group.RegisterMark;
import roundwright.group.SessionId;
import roundwright.group.StudentId;

/** The registers of all sessions. */
final class RegisterStore implements Shelf<RegisterMark> {
    private final Database database;

    RegisterStore(Database database) {
        this.database = database;
    }

    @Override
    public List<RegisterMark> all() throws StoreException {
        return database.query(
                "SELECT group_id, session_id, student_id, attendance FROM register ORDER BY session_id, student_id",
                RegisterStore::mark);
    }

    @Override
    public void insert(RegisterMark mark) throws StoreException {
        database.write(
                1,
                "INSERT INTO register (group_id, session_id, student_id, attendance) VALUES (?, ?, ?, ?)",
                mark.group().value(),
                mark.session().value(),
                mark.student().value(),
                Words.of(mark.attendance()));
    }

    @Override
    public void replace(RegisterMark before, RegisterMark after) throws StoreException {
        database.write(
                1,
                "UPDATE register SET attendance = ? WHERE session_id = ? AND student_id = ?",
                Words.of(after.attendance()),
                before.session().value(),
                before.student().value());
    }

    @Override
    public void delete(RegisterMark mark) throws StoreException {
        database.write(
                1,
                "DELETE FROM register WHERE session_id = ? AND student_id = ?",
                mark.session().value(),
                mark.student().value());
    }

    private static RegisterMark mark(Fields row) throws SQLException {
        return new RegisterMark(
                new GroupId(row.id("group_id")),
                new SessionId(row.id("session_id")),
                new StudentId(row.id("student_id")),
                row.word("attendance", Attendance.class));
    }
}
