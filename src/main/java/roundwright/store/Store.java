package roundwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import roundwright.group.Enrolment;
import roundwright.group.Group;
import roundwright.group.Note;
import roundwright.group.RegisterMark;
import roundwright.group.Session;
import roundwright.group.Student;
import roundwright.group.StudentId;

/**
 * The open file: one SQLite database, one connection, one writer. Not safe for use from two threads at once; whoever holds it
 * sees to that. While it is open no other program can open it.
 */
public final class Store implements AutoCloseable {
    /** Work in one transaction. */
    public interface Work {
        void run() throws StoreException;
    }

    private final Database database;
    private final Backups backups;
    private final Object fileKey;
    private final CourseStore courses;
    private final GroupStore groups;
    private final StudentStore students;
    private final EnrolmentStore enrolments;
    private final SessionStore sessions;
    private final RegisterStore register;
    private final ReportStore reports;
    private final NoteStore notes;
    private final SettingStore settings;

    private Store(Database database, Backups backups) throws StoreException {
        this.database = database;
        this.backups = backups;
        this.fileKey = key(database.file());
        this.courses = new CourseStore(database);
        this.groups = new GroupStore(database);
        this.students = new StudentStore(database);
        this.enrolments = new EnrolmentStore(database);
        this.sessions = new SessionStore(database);
        this.register = new RegisterStore(database);
        this.reports = new ReportStore(database);
        this.notes = new NoteStore(database);
        this.settings = new SettingStore(database);
    }

    /**
     * Opens a file that is there. One that is damaged, newer, not ours, locked or not to be written is refused and left as it is.
     *
     * @param backups folder for the backup that is made before a file of an older version is brought up to date
     */
    public static Store open(Path file, Path backups) throws StoreException {
        return open(file, backups, Migrations.KNOWN);
    }

    static Store open(Path file, Path backups, Migrations migrations) throws StoreException {
        return open(file, Optional.of(backups), migrations);
    }

    /** Opens a passing copy, of which no backup is needed. */
    static Store upToDate(Path file, Migrations migrations) throws StoreException {
        return open(file, Optional.empty(), migrations);
    }

    private static Store open(Path file, Optional<Path> backups, Migrations migrations) throws StoreException {
        Database database = Opening.open(file, migrations);
        try {
            Upgrade.ifOlder(database, backups, migrations);
            return new Store(database, new Backups(backups.orElse(file.resolveSibling("backups")), file));
        } catch (StoreException | RuntimeException failure) {
            database.close();
            throw failure;
        }
    }

    /** Makes a new file. It comes into being whole, under its own name, or not at all. */
    public static Store create(Path file, Path backups) throws StoreException {
        Path folder = file.toAbsolutePath().getParent();
        if (!Files.isDirectory(folder)) {
            throw StoreException.Missing.folder(folder);
        }
        if (Files.exists(file)) {
            throw StoreException.Failed.exists(file);
        }
        if (!Files.isWritable(folder)) {
            throw new StoreException.ReadOnly(file, null);
        }
        NewFile.make(file);
        return open(file, backups);
    }

    public Path file() {
        return database.file();
    }

    public Shelf<KeptCourse> courses() {
        return courses;
    }

    public Shelf<Group> groups() {
        return groups;
    }

    public Shelf<Student> students() {
        return students;
    }

    public Shelf<Enrolment> enrolments() {
        return enrolments;
    }

    public Shelf<Session> sessions() {
        return sessions;
    }

    public Shelf<RegisterMark> register() {
        return register;
    }

    public Shelf<FiledReport> reports() {
        return reports;
    }

    public Shelf<Note> notes() {
        return notes;
    }

    public Shelf<Setting> settings() {
        return settings;
    }

    /** Does the work in one transaction. When this returns, the work is on the disk; when it throws, none of it is. */
    public void transaction(Work work) throws StoreException {
        checkStillThere();
        database.transaction(work::run);
        checkStillThere();
    }

    /** Writes a copy of everything into a file that is not there yet, by the database's own backup. */
    public void copyTo(Path target) throws StoreException {
        Copy.write(database, target);
    }

    /** Reads every value once, to see whether all of them make sense. */
    void readAll() throws StoreException {
        for (Shelf<?> shelf :
                List.of(courses, groups, students, enrolments, sessions, register, reports, notes, settings)) {
            shelf.all();
        }
    }

    /** The dated copies of this file. */
    public Backups backups() {
        return backups;
    }

    /** Damaged files that this one took the place of, and that are still beside it. */
    public List<Path> setAside() throws StoreException {
        return SetAside.of(database.file());
    }

    /** Makes a dated copy, checks it, and thins the copies that there are. */
    public Backup backUp(Instant now) throws StoreException {
        Backup made = backups.make(database, now);
        backups.thin();
        return made;
    }

    /** The same, where the last copy is older than a day. */
    public Optional<Backup> backUpIfDue(Instant now) throws StoreException {
        return backups.due(now) ? Optional.of(backUp(now)) : Optional.empty();
    }

    /** Makes a passing copy of a backup, to be looked into or taken over. */
    public PreparedCopy prepare(Path backup) throws StoreException {
        try {
            if (Files.exists(backup) && Files.isSameFile(backup, database.file())) {
                throw StoreException.Failed.itself(backup);
            }
        } catch (IOException failure) {
            throw Failures.of(backup, failure);
        }
        return PreparedCopy.of(backup, database.file());
    }

    /** Takes over everything from a copy in place of what is here; all of it, or nothing. */
    public void takeAllFrom(PreparedCopy copy) throws StoreException {
        checkStillThere();
        copy.store().database.close();
        database.takeAllFrom(copy.file());
        checkStillThere();
    }

    /** Writes a copy in which students are called by what is given and no free text but the courses is left. */
    public void copyWithInitials(Path target, Map<StudentId, String> called) throws StoreException {
        InitialsCopy.write(database, target, called);
    }

    /** Writes the file anew, so that nothing stays behind of what has been deleted from it. */
    public void writeAnew() throws StoreException {
        checkStillThere();
        database.writeAnew();
    }

    @Override
    public void close() throws StoreException {
        database.close();
    }

    /** A file that was removed or replaced would go on taking edits, into nothing. */
    private void checkStillThere() throws StoreException {
        if (!Objects.equals(fileKey, key(database.file()))) {
            throw StoreException.Missing.gone(database.file());
        }
    }

    private static Object key(Path file) throws StoreException {
        try {
            Object key = Files.readAttributes(file, BasicFileAttributes.class).fileKey();
            return key == null ? file : key;
        } catch (IOException failure) {
            throw StoreException.Missing.gone(file);
        }
    }
}
