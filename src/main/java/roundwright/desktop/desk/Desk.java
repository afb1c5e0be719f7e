package roundwright.desktop.desk;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import roundwright.course.Lesson;
import roundwright.course.file.CourseFile;
import roundwright.desktop.work.Task;
import roundwright.desktop.work.Work;
import roundwright.group.CountReport;
import roundwright.group.CourseId;
import roundwright.group.GroupId;
import roundwright.group.RoundPlace;
import roundwright.group.RoundStanding;
import roundwright.group.Standing;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.store.KeptCourse;
import roundwright.store.StoreException;
import roundwright.wording.Wording;
import roundwright.workbook.Edit;
import roundwright.workbook.GroupView;
import roundwright.workbook.Workbook;
import roundwright.workbook.WorkbookListener;
import roundwright.workbook.WorkbookView;

/**
 * The open file with one course and one group in hand, and what is chosen in them. Lives on the event thread; edits and the
 * reading of courses run away from it.
 */
public final class Desk {
    private static final Wording WORDS = Wording.of("desktop");

    private final Workbook workbook;
    private final Work work;
    private final Clock clock;
    private final List<DeskListener> listeners = new CopyOnWriteArrayList<>();
    private final List<WorkbookListener> following = new ArrayList<>();
    private final Standings standings = new Standings();
    private WorkbookView view;
    private Choice choice = Choice.NONE;
    private Optional<OpenCourse> course = Optional.empty();
    private Optional<CourseFile> readElsewhere = Optional.empty();
    private Optional<String> notice = Optional.empty();
    private Optional<Lesson> lesson = Optional.empty();
    private LessonKey lessonFor = new LessonKey(Optional.empty(), Optional.empty(), LocalDate.MIN);

    /** A desk over an open file; {@link #open} lays the course on it that was last in hand. */
    public Desk(Workbook workbook, Work work, Clock clock) {
        this.workbook = workbook;
        this.work = work;
        this.clock = clock;
        this.view = workbook.view();
        follow(changes -> work.here(this::refresh));
    }

    /** Lets somebody hear of the file itself, on the thread that writes, for as long as this desk does. */
    public void follow(WorkbookListener listener) {
        following.add(listener);
        workbook.listen(listener);
    }

    public void listen(DeskListener listener) {
        listeners.add(listener);
    }

    /** How many are told of what changes. */
    public int listeners() {
        return listeners.size();
    }

    /** Hears of the file no more and tells nobody: the window it was made for is gone. */
    public void leave() {
        following.forEach(workbook::unlisten);
        listeners.clear();
    }

    /** Tells a listener no more. */
    public void forget(DeskListener listener) {
        listeners.remove(listener);
    }

    public Workbook workbook() {
        return workbook;
    }

    public Work work() {
        return work;
    }

    /** Everything in the file, as this desk has last heard of it. */
    public WorkbookView view() {
        return view;
    }

    public Choice choice() {
        return choice;
    }

    public Optional<OpenCourse> course() {
        return course;
    }

    public Optional<GroupView> group() {
        return choice.group().flatMap(view::group);
    }

    public List<Student> students() {
        return group().map(GroupView::students).orElse(List.of());
    }

    public Optional<Student> student() {
        return choice.student().flatMap(id -> group().flatMap(found -> found.student(id)));
    }

    public Optional<RoundPlace> place() {
        return choice.place();
    }

    public Instant now() {
        return clock.instant();
    }

    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /** A sentence the person has to be told, until it is taken away. */
    public Optional<String> notice() {
        return notice;
    }

    public void tell(String sentence) {
        notice = Optional.of(sentence);
        tell(EnumSet.of(Matter.NOTICE));
    }

    public void clearNotice() {
        if (notice.isPresent()) {
            notice = Optional.empty();
            tell(EnumSet.of(Matter.NOTICE));
        }
    }

    /** How a student of the group stands. */
    public Standing standing(StudentId student) {
        return standings.of(course.orElseThrow(), student, reports(student));
    }

    /** Everything a student of the group has reported, as it was entered. */
    public List<CountReport> reports(StudentId student) {
        return group().map(found -> found.reports(student)).orElse(List.of());
    }

    /**
     * Lays the course and group on the desk that were last in hand, or else the first there are.
     *
     * @param read the course, where it has been read already
     */
    public void open(Optional<ReadCourse> read) {
        LastInHand last = LastInHand.of(view);
        if (last.course().isEmpty()) {
            tell(EnumSet.allOf(Matter.class));
            return;
        }
        KeptCourse kept = last.course().get();
        read.filter(ready -> ready.course().kept().equals(kept))
                .ifPresentOrElse(ready -> lay(take(ready), last.group()), () -> chooseCourse(kept.id(), last.group()));
    }

    /** Takes a course in hand, with a group where one is given and takes that course, or else its first group. */
    public void chooseCourse(CourseId id, Optional<GroupId> wanted) {
        view.course(id).ifPresent(kept -> read(kept, read -> lay(read, wanted)));
    }

    private void lay(OpenCourse read, Optional<GroupId> wanted) {
        CourseId id = read.kept().id();
        course = Optional.of(read);
        Optional<GroupId> group = wanted.filter(one -> takes(one, id))
                .or(() -> view.groups(id).stream().findFirst().map(GroupView::id));
        choice = choice.withCourse(Optional.of(id)).withGroup(group).withPlace(Optional.empty());
        keepChoice();
        workbook.remember(LastInHand.COURSE, String.valueOf(id.value()));
        group.ifPresent(one -> workbook.remember(LastInHand.GROUP, String.valueOf(one.value())));
        tell(EnumSet.allOf(Matter.class));
    }

    private boolean takes(GroupId group, CourseId course) {
        return view.group(group)
                .filter(found -> found.group().course().equals(course))
                .isPresent();
    }

    /** Takes note of a text that has been read elsewhere: when it comes into the file, it is not read again. */
    public void know(CourseFile read) {
        readElsewhere = Optional.of(read);
    }

    private void read(KeptCourse kept, Consumer<OpenCourse> then) {
        WorkbookView now = view;
        Optional<CourseFile> known = readElsewhere.filter(file -> file.text().equals(kept.text()));
        work.submit(new Task<ReadCourse>() {
            @Override
            public ReadCourse away() {
                return known.map(file -> ReadCourse.of(OpenCourse.of(kept, file), now))
                        .orElseGet(() -> ReadCourse.of(kept, now));
            }

            @Override
            public void here(ReadCourse read) {
                then.accept(take(read));
            }

            @Override
            public void failed(Exception failure) {
                Desk.this.tell(String.valueOf(failure.getMessage()));
            }
        });
    }

    private OpenCourse take(ReadCourse read) {
        standings.take(read.standings());
        return read.course();
    }

    /** Chosen things that are no more are let go; where no round is chosen, the group's next one is. */
    private void keepChoice() {
        if (student().isEmpty()) {
            choice = choice.withStudent(students().stream().findFirst().map(Student::id));
        }
        boolean known = place().flatMap(place -> course.flatMap(open -> open.round(place)))
                .isPresent();
        if (!known) {
            choice = choice.withPlace(course.flatMap(this::startingPlace));
        }
    }

    private Optional<RoundPlace> startingPlace(OpenCourse open) {
        return lesson().flatMap(lesson -> open.places(lesson).stream().findFirst())
                .or(() -> open.places().stream().findFirst());
    }

    /**
     * The lesson the group is in: the one of its latest session up to today, else the one in which the student in the middle
     * works next, else the first.
     */
    public Optional<Lesson> lesson() {
        LessonKey now = new LessonKey(course, group(), today());
        if (!now.equals(lessonFor)) {
            lessonFor = now;
            lesson = findLesson();
        }
        return lesson;
    }

    /** What the lesson follows from; a group and a course are the same only while nothing in them has changed. */
    private record LessonKey(Optional<OpenCourse> course, Optional<GroupView> group, LocalDate today) {
        @Override
        public boolean equals(Object other) {
            return other instanceof LessonKey key
                    && key.course.orElse(null) == course.orElse(null)
                    && key.group.orElse(null) == group.orElse(null)
                    && key.today.equals(today);
        }

        @Override
        public int hashCode() {
            return today.hashCode();
        }
    }

    private Optional<Lesson> findLesson() {
        return course.flatMap(open -> lastLessonGiven(open)
                .or(() -> middle(open).flatMap(open::lessonOf))
                .or(() -> open.course().lessons().stream().findFirst()));
    }

    private Optional<Lesson> lastLessonGiven(OpenCourse open) {
        LocalDate today = today();
        return group().stream()
                .flatMap(found -> found.sessions().stream())
                .filter(session ->
                        !session.date().isAfter(today) && session.lesson().isPresent())
                .reduce((earlier, later) -> later)
                .flatMap(session -> open.lesson(session.lesson().getAsInt()));
    }

    private Optional<RoundPlace> middle(OpenCourse open) {
        List<RoundPlace> next = students().stream()
                .map(student -> standing(student.id()).next())
                .flatMap(Optional::stream)
                .map(RoundStanding::place)
                .sorted(java.util.Comparator.comparingInt(open::order))
                .toList();
        return next.isEmpty() ? Optional.empty() : Optional.of(next.get(next.size() / 2));
    }

    public void chooseGroup(GroupId id) {
        view.group(id).ifPresent(found -> {
            if (choice.course().equals(Optional.of(found.group().course()))) {
                choice = choice.withGroup(Optional.of(id))
                        .withStudent(Optional.empty())
                        .withPlace(Optional.empty());
                keepChoice();
                workbook.remember(LastInHand.GROUP, String.valueOf(id.value()));
                tell(EnumSet.of(Matter.GROUP, Matter.COUNTS, Matter.PLACE, Matter.STUDENT));
            } else {
                chooseCourse(found.group().course(), Optional.of(id));
            }
        });
    }

    public void choosePlace(RoundPlace place) {
        change(now -> now.withPlace(Optional.of(place)), Matter.PLACE);
    }

    public void chooseStudent(StudentId student) {
        change(now -> now.withStudent(Optional.of(student)), Matter.STUDENT);
    }

    public void choosePage(Page page) {
        change(now -> now.withPage(page), Matter.PAGE);
    }

    public void hideNames(boolean hidden) {
        change(now -> now.withNamesHidden(hidden), Matter.NAMES);
    }

    private void change(UnaryOperator<Choice> change, Matter matter) {
        Choice before = choice;
        choice = change.apply(before);
        if (!choice.equals(before)) {
            tell(EnumSet.of(matter));
        }
    }

    /** Does an edit; what failed is told as a notice. */
    public void apply(Edit edit) {
        apply(edit, () -> {});
    }

    /** Does an edit, and something after it on the event thread when it is on the disk. */
    public void apply(Edit edit, Runnable then) {
        writing(
                () -> workbook.apply(edit),
                then,
                failure -> WORDS.say("not-filed", edit.name(view), failure.getMessage()));
    }

    public void undo() {
        writing(workbook::undo, () -> {}, Exception::getMessage);
    }

    public void redo() {
        writing(workbook::redo, () -> {}, Exception::getMessage);
    }

    /** Something that writes to the file. */
    private interface Writing {
        void run() throws Exception;
    }

    /** What to tell of a file that would not be written. */
    private interface Telling {
        String of(StoreException failure);
    }

    private void writing(Writing writing, Runnable then, Telling telling) {
        work.submit(new Task<Void>() {
            @Override
            public Void away() throws Exception {
                writing.run();
                return null;
            }

            @Override
            public void here(Void nothing) {
                refresh();
                then.run();
            }

            @Override
            public void failed(Exception failure) {
                Desk.this.tell(
                        failure instanceof StoreException refused
                                ? telling.of(refused)
                                : String.valueOf(failure.getMessage()));
            }
        });
    }

    /** Takes in what has changed in the file. */
    private void refresh() {
        WorkbookView before = view;
        view = workbook.view();
        if (view == before) {
            return;
        }
        Optional<KeptCourse> kept = choice.course().flatMap(view::course);
        if (kept.isEmpty()) {
            course = Optional.empty();
            choice = Choice.NONE.withPage(choice.page());
            open(Optional.empty());
        } else if (!kept.equals(course.map(OpenCourse::kept))) {
            read(kept.get(), this::renew);
        } else {
            keepGroup(kept.get().id());
            keepChoice();
            tell(EnumSet.of(Matter.GROUP, Matter.COUNTS, Matter.HISTORY));
        }
    }

    private void renew(OpenCourse read) {
        course = Optional.of(read);
        keepChoice();
        tell(EnumSet.allOf(Matter.class));
    }

    private void keepGroup(CourseId id) {
        if (group().isEmpty()) {
            choice = choice.withGroup(view.groups(id).stream().findFirst().map(GroupView::id));
        }
    }

    private void tell(Set<Matter> matters) {
        listeners.forEach(listener -> listener.changed(matters));
    }
}
