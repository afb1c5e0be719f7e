package roundwright.workbook;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.locks.ReentrantLock;
import roundwright.group.CourseId;
import roundwright.group.GroupId;
import roundwright.group.SessionId;
import roundwright.group.StudentId;
import roundwright.store.Backup;
import roundwright.store.PreparedCopy;
import roundwright.store.Store;
import roundwright.store.StoreException;
import roundwright.wording.Wording;

/**
 * The open file as the program sees it.
 *
 * <p>Reading: {@link #view()} is everything in the file, in memory, as it stood after the last edit; it never changes and any
 * thread may read it. Writing: {@link #apply}, {@link #undo}, {@link #redo} take turns, whatever thread they are called on, and
 * return when the edit is on the disk. Listeners are told on the thread that writes, before and after; a listener that writes in
 * turn is refused, since the listeners after it would be told of changes that are no longer the newest.
 *
 * <p>Undo and redo reach back to when the file was opened.
 */
public final class Workbook implements AutoCloseable {
    private static final Wording WORDS = Wording.of("workbook");

    private final Store store;
    private final Clock clock;
    private final Numbers numbers;
    private final ReentrantLock writing = new ReentrantLock();
    private final List<WorkbookListener> listeners = new CopyOnWriteArrayList<>();
    private final Deque<Step> done = new ArrayDeque<>();
    private final Deque<Step> undone = new ArrayDeque<>();
    private final Map<String, String> remembered = new LinkedHashMap<>();
    private volatile WorkbookView view;
    /** Whether the disk has not said yet what became of the last edit. */
    private boolean inDoubt;

    private Workbook(Store store, Clock clock) throws StoreException {
        this.store = store;
        this.clock = clock;
        this.view = Reading.of(store);
        this.numbers = new Numbers(view);
    }

    /**
     * Opens a file.
     *
     * @param backups folder for the backup that is made before a file of an older version is brought up to date
     * @throws StoreException with a sentence for the person; the file is left as it was
     */
    public static Workbook open(Path file, Path backups, Clock clock) throws StoreException {
        return reading(Store.open(file, backups), clock);
    }

    /** Makes a new, empty file and opens it; refuses where there is a file already. */
    public static Workbook create(Path file, Path backups, Clock clock) throws StoreException {
        return reading(Store.create(file, backups), clock);
    }

    private static Workbook reading(Store store, Clock clock) throws StoreException {
        try {
            return new Workbook(store, clock);
        } catch (StoreException | RuntimeException failure) {
            store.close();
            throw failure;
        }
    }

    public Path file() {
        return store.file();
    }

    /** Everything in the file as it stands now. */
    public WorkbookView view() {
        return view;
    }

    public CourseId newCourse() {
        return new CourseId(numbers.courses.incrementAndGet());
    }

    public GroupId newGroup() {
        return new GroupId(numbers.groups.incrementAndGet());
    }

    public StudentId newStudent() {
        return new StudentId(numbers.students.incrementAndGet());
    }

    public SessionId newSession() {
        return new SessionId(numbers.sessions.incrementAndGet());
    }

    public void listen(WorkbookListener listener) {
        listeners.add(listener);
    }

    public void unlisten(WorkbookListener listener) {
        listeners.remove(listener);
    }

    /** Does an edit. When this returns, it is on the disk; when it throws, nothing has changed. */
    public void apply(Edit edit) throws StoreException {
        alone(() -> {
            List<Write<?>> writes = edit.writes(view, new Stamp(now(), numbers.reports::incrementAndGet));
            if (edit instanceof SettingEdit.SetSetting setting) {
                forget(setting);
            }
            if (!writes.isEmpty()) {
                String name = edit.name(view);
                List<Change> changes = write(writes);
                if (edit.undoable()) {
                    done.push(new Step(name, writes));
                    undone.clear();
                }
                tell(changes);
            }
        });
    }

    /** What undo would take back, in words: "Undo: count of round 7 (Ines)". */
    public Optional<String> undoName() {
        return Optional.ofNullable(done.peek()).map(step -> WORDS.say("undo", step.name()));
    }

    /** How many steps can be undone. */
    int undoSteps() {
        return done.size();
    }

    /** What redo would do again, in words. */
    public Optional<String> redoName() {
        return Optional.ofNullable(undone.peek()).map(step -> WORDS.say("redo", step.name()));
    }

    /** Takes back the newest step; does nothing where there is none. */
    public void undo() throws StoreException {
        alone(() -> move(done, undone, step -> TakingBack.of(step, view, now())));
    }

    /** Does again what was undone last; does nothing where there is none. */
    public void redo() throws StoreException {
        alone(() -> move(undone, done, Step::backwards));
    }

    /** Remembers a setting for the next time the file is opened. It is written with the next edit, or when the file is closed. */
    public void remember(String setting, String value) {
        synchronized (remembered) {
            remembered.put(setting, value);
        }
    }

    /** The dated copies of this file, the newest first. */
    public List<Backup> backups() throws StoreException {
        return store.backups().newestFirst();
    }

    /** Where the dated copies of this file are. */
    public Path backupFolder() {
        return store.backups().folder();
    }

    /** Makes a dated copy now and checks it. */
    public Backup backUp() throws StoreException {
        return asked(() -> store.backUp(now()));
    }

    /** Makes a dated copy if the last one is older than a day, and if there is anything to copy. */
    public Optional<Backup> backUpIfDue() throws StoreException {
        return view.empty() ? Optional.empty() : asked(() -> store.backUpIfDue(now()));
    }

    /** What would change if a backup took the place of what is in the file. */
    public Difference compareWith(Path backup) throws StoreException {
        try (PreparedCopy copy = asked(() -> store.prepare(backup))) {
            return Difference.between(view, Reading.of(copy.store()));
        }
    }

    /**
     * Takes over everything from a backup. What was in the file is first copied into a backup of its own, which this gives back;
     * what was done before cannot be undone any more.
     */
    public Backup restore(Path backup) throws StoreException {
        return asked(() -> {
            try (PreparedCopy copy = store.prepare(backup)) {
                WorkbookView then = Reading.of(copy.store());
                write(List.of());
                Backup before = store.backUp(now());
                store.takeAllFrom(copy);
                List<Change> changes = Change.between(view, then);
                begin(then);
                tell(changes);
                return before;
            }
        });
    }

    /**
     * Erases a student: who they are, their place in every group, their reports with their history, register, notes. The file is
     * written anew, so that nothing of them stays in it unseen. Cannot be undone, and nothing before it can.
     *
     * @param fromBackups whether they are erased from the dated copies of this file, too
     */
    public Erased erase(StudentId student, boolean fromBackups) throws StoreException {
        return asked(() -> {
            Erased erased = Erased.planned(view, student, store.setAside());
            List<Change> changes = write(Removal.everywhere(view, student));
            begin(view);
            tell(changes);
            Erased whole = erased.writtenAnew(tryToWriteAnew());
            return fromBackups ? whole.withBackups(store.backups().erase(student)) : whole;
        });
    }

    /** The student is gone by now, and what stood there is overwritten; that the file could not be made smaller is told. */
    private Optional<String> tryToWriteAnew() {
        try {
            store.writeAnew();
            return Optional.empty();
        } catch (StoreException cannot) {
            return Optional.of(cannot.getMessage());
        }
    }

    /** Writes a copy in which students have only their initials and nothing that anybody wrote about them is left. */
    public void copyWithInitials(Path target) throws StoreException {
        alone(() ->
                store.copyWithInitials(target, Initials.of(view.studentsCopy().values())));
    }

    /** Nothing that was done to another state of the file can be undone in this one. */
    private void begin(WorkbookView state) {
        view = state;
        numbers.passOver(state);
        done.clear();
        undone.clear();
    }

    /** Writes a copy of everything into a file that is not there yet. */
    public void copyTo(Path target) throws StoreException {
        alone(() -> store.copyTo(target));
    }

    @Override
    public void close() throws StoreException {
        alone(() -> {
            try {
                write(List.of());
            } finally {
                store.close();
            }
        });
    }

    private interface Work {
        void run() throws StoreException;
    }

    private interface Question<V> {
        V answer() throws StoreException;
    }

    private interface Steps {
        List<Write<?>> of(Step step);
    }

    private void alone(Work work) throws StoreException {
        if (writing.isHeldByCurrentThread()) {
            throw new IllegalStateException("a listener cannot edit the workbook while it is told of an edit");
        }
        writing.lock();
        try {
            work.run();
        } finally {
            writing.unlock();
        }
    }

    private <V> V asked(Question<V> question) throws StoreException {
        List<V> answer = new ArrayList<>(1);
        alone(() -> answer.add(question.answer()));
        return answer.get(0);
    }

    private void move(Deque<Step> from, Deque<Step> to, Steps steps) throws StoreException {
        if (!from.isEmpty()) {
            List<Write<?>> writes = steps.of(from.peek());
            List<Change> changes = write(writes);
            to.push(new Step(from.pop().name(), writes));
            tell(changes);
        }
    }

    /** Writes these and what is to be remembered; says what changes by these. */
    private List<Change> write(List<Write<?>> writes) throws StoreException {
        List<Write<?>> all = new ArrayList<>(writes);
        all.addAll(rememberedWrites());
        if (all.isEmpty()) {
            return List.of();
        }
        if (inDoubt) {
            lookAgain(StoreException.Unsure.unknown(store.file(), null));
        }
        Draft draft = new Draft(view);
        all.forEach(write -> write.to(draft));
        WorkbookView then = draft.finished();
        List<Change> changes =
                writes.stream().<Change>map(Write::change).distinct().toList();
        listeners.forEach(listener -> listener.coming(then, changes));
        try {
            store.transaction(() -> Write.all(all, store));
        } catch (StoreException failure) {
            lookAgain(failure);
            throw failure;
        }
        view = then;
        return changes;
    }

    /** A disk that fails at the very end of an edit says no to what is on it already: the file itself is asked. */
    private void lookAgain(StoreException failure) throws StoreException {
        WorkbookView there;
        try {
            there = Reading.of(store);
        } catch (StoreException unreadable) {
            failure.addSuppressed(unreadable);
            inDoubt = true;
            throw StoreException.Unsure.unknown(store.file(), failure);
        }
        inDoubt = false;
        if (!there.sameAs(view)) {
            List<Change> changes = Change.between(view, there);
            begin(there);
            tell(changes);
            throw StoreException.Unsure.kept(store.file(), failure);
        }
    }

    private List<Write<?>> rememberedWrites() {
        synchronized (remembered) {
            List<Write<?>> writes = new ArrayList<>();
            remembered.forEach((setting, value) -> SettingEdit.SetSetting.write(view, setting, Optional.of(value))
                    .ifPresent(writes::add));
            remembered.clear();
            return writes;
        }
    }

    /** What was to be remembered under this name is older than the edit. */
    private void forget(SettingEdit.SetSetting setting) {
        synchronized (remembered) {
            remembered.remove(setting.setting());
        }
    }

    private void tell(List<Change> changes) {
        listeners.forEach(listener -> listener.changed(changes));
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }
}
