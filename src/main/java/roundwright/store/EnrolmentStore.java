package roundwright.store;

import java.sql.SQLException;
import java.util.List;
import roundwright.group.Enrolment;
import roundwright.group.GroupId;
import roundwright.group.StudentId;

/** Which student is in which group. */
final class EnrolmentStore implements Shelf<Enrolment> {
    private final Database database;

    EnrolmentStore(Database database) {
        this.database = database;
    }

    @Override
    public List<Enrolment> all() throws StoreException {
        return database.query(
                "SELECT group_id, student_id, place FROM enrolment ORDER BY group_id, student_id",
                EnrolmentStore::enrolment);
    }

    @Override
    public void insert(Enrolment enrolment) throws StoreException {
        database.write(
                1,
                "INSERT INTO enrolment (group_id, student_id, place) VALUES (?, ?, ?)",
                enrolment.group().value(),
                enrolment.student().value(),
                enrolment.place());
    }

    @Override
    public void replace(Enrolment before, Enrolment after) throws StoreException {
        database.write(
                1,
                "UPDATE enrolment SET place = ? WHERE group_id = ? AND student_id = ?",
                after.place(),
                before.group().value(),
                before.student().value());
    }

    @Override
    public void delete(Enrolment enrolment) throws StoreException {
        database.write(
                1,
                "DELETE FROM enrolment WHERE group_id = ? AND student_id = ?",
                enrolment.group().value(),
                enrolment.student().value());
    }

    private static Enrolment enrolment(Fields row) throws SQLException {
        return new Enrolment(new GroupId(row.id("group_id")), new StudentId(row.id("student_id")), row.number("place"));
    }
}
