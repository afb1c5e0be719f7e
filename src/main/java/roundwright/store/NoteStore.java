package roundwright.store;

import java.sql.SQLException;
import java.util.List;
import roundwright.group.GroupId;
import roundwright.group.Note;
import roundwright.group.StudentId;

/** The teacher's notes on students' rounds. */
final class NoteStore implements Shelf<Note> {
    private static final String OF_ONE = " WHERE group_id = ? AND student_id = ? AND part = ? AND round = ?";

    private final Database database;

    NoteStore(Database database) {
        this.database = database;
    }

    @Override
    public List<Note> all() throws StoreException {
        return database.query(
                "SELECT group_id, student_id, part, round, text FROM note ORDER BY group_id, student_id, part, round",
                NoteStore::note);
    }

    @Override
    public void insert(Note note) throws StoreException {
        database.write(
                1,
                "INSERT INTO note (group_id, student_id, part, round, text) VALUES (?, ?, ?, ?, ?)",
                note.group().value(),
                note.student().value(),
                note.part(),
                note.round(),
                note.text());
    }

    @Override
    public void replace(Note before, Note after) throws StoreException {
        database.write(
                1,
                "UPDATE note SET text = ?" + OF_ONE,
                after.text(),
                before.group().value(),
                before.student().value(),
                before.part(),
                before.round());
    }

    @Override
    public void delete(Note note) throws StoreException {
        database.write(
                1,
                "DELETE FROM note" + OF_ONE,
                note.group().value(),
                note.student().value(),
                note.part(),
                note.round());
    }

    private static Note note(Fields row) throws SQLException {
        return new Note(
                new GroupId(row.id("group_id")),
                new StudentId(row.id("student_id")),
                row.text("part"),
                row.number("round"),
                row.text("text"));
    }
}
