package roundwright.store;

import java.sql.SQLException;
import java.util.List;
import roundwright.group.CourseId;
import roundwright.group.Group;
import roundwright.group.GroupId;

/** The groups of the file. */
final class GroupStore implements Shelf<Group> {
    private final Database database;

    GroupStore(Database database) {
        this.database = database;
    }

    @Override
    public List<Group> all() throws StoreException {
        return database.query(
                "SELECT id, course_id, name, start, place FROM course_group ORDER BY id", GroupStore::group);
    }

    @Override
    public void insert(Group group) throws StoreException {
        database.write(
                1,
                "INSERT INTO course_group (id, course_id, name, start, place) VALUES (?, ?, ?, ?, ?)",
                group.id().value(),
                group.course().value(),
                group.name(),
                group.start().map(IsoDates::text),
                group.place());
    }

    @Override
    public void replace(Group before, Group after) throws StoreException {
        database.write(
                1,
                "UPDATE course_group SET course_id = ?, name = ?, start = ?, place = ? WHERE id = ?",
                after.course().value(),
                after.name(),
                after.start().map(IsoDates::text),
                after.place(),
                before.id().value());
    }

    @Override
    public void delete(Group group) throws StoreException {
        database.write(1, "DELETE FROM course_group WHERE id = ?", group.id().value());
    }

    private static Group group(Fields row) throws SQLException {
        return new Group(
                new GroupId(row.id("id")),
                new CourseId(row.id("course_id")),
                row.text("name"),
                row.dateIfAny("start"),
                row.text("place"));
    }
}
