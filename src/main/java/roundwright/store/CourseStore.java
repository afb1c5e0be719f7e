package roundwright.store;

import java.sql.SQLException;
import java.util.List;
import roundwright.group.CourseId;

/** The courses of the file. */
final class CourseStore implements Shelf<KeptCourse> {
    private final Database database;

    CourseStore(Database database) {
        this.database = database;
    }

    @Override
    public List<KeptCourse> all() throws StoreException {
        return database.query("SELECT id, name, text FROM course ORDER BY id", CourseStore::course);
    }

    @Override
    public void insert(KeptCourse course) throws StoreException {
        database.write(
                1,
                "INSERT INTO course (id, name, text) VALUES (?, ?, ?)",
                course.id().value(),
                course.name(),
                course.text());
    }

    @Override
    public void replace(KeptCourse before, KeptCourse after) throws StoreException {
        database.write(
                1,
                "UPDATE course SET name = ?, text = ? WHERE id = ?",
                after.name(),
                after.text(),
                before.id().value());
    }

    @Override
    public void delete(KeptCourse course) throws StoreException {
        database.write(1, "DELETE FROM course WHERE id = ?", course.id().value());
    }

    private static KeptCourse course(Fields row) throws SQLException {
        return new KeptCourse(new CourseId(row.id("id")), row.text("name"), row.text("text"));
    }
}
