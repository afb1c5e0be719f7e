package roundwright.store;

import java.sql.SQLException;
import java.util.List;
import roundwright.group.Student;
import roundwright.group.StudentId;

/** The students of the file, whatever group they are in. */
final class StudentStore implements Shelf<Student> {
    private final Database database;

    StudentStore(Database database) {
        this.database = database;
    }

    @Override
    public List<Student> all() throws StoreException {
        return database.query(
                "SELECT id, name, left_handed, large_print, note FROM student ORDER BY id", StudentStore::student);
    }

    @Override
    public void insert(Student student) throws StoreException {
        database.write(
                1,
                "INSERT INTO student (id, name, left_handed, large_print, note) VALUES (?, ?, ?, ?, ?)",
                student.id().value(),
                student.name(),
                student.leftHanded(),
                student.largePrint(),
                student.note());
    }

    @Override
    public void replace(Student before, Student after) throws StoreException {
        database.write(
                1,
                "UPDATE student SET name = ?, left_handed = ?, large_print = ?, note = ? WHERE id = ?",
                after.name(),
                after.leftHanded(),
                after.largePrint(),
                after.note(),
                before.id().value());
    }

    @Override
    public void delete(Student student) throws StoreException {
        database.write(1, "DELETE FROM student WHERE id = ?", student.id().value());
    }

    private static Student student(Fields row) throws SQLException {
        return new Student(
                new StudentId(row.id("id")),
                row.text("name"),
                row.flag("left_handed"),
                row.flag("large_print"),
                row.text("note"));
    }
}
