package roundwright.desktop.insight;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import roundwright.course.Course;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.insight.KnownInsights.Known;
import roundwright.desktop.work.Task;
import roundwright.desktop.work.Work;
import roundwright.group.CountReport;
import roundwright.group.RegisterMark;
import roundwright.group.RoundStanding;
import roundwright.group.StudentId;
import roundwright.mistakes.help.GroupPicture;
import roundwright.mistakes.story.Rates;
import roundwright.workbook.Change;
import roundwright.workbook.GroupView;
import roundwright.workbook.WorkbookListener;
import roundwright.workbook.WorkbookView;

/**
 * What the reports of the group in hand say. Asked for something that is not worked out yet, it answers with nothing, works it
 * out on queues of its own, and tells its listeners. The picture of a large group takes seconds; one student's explanations do not
 * wait for it. A count that is on its way to the disk is explained beside the filing; nobody is given that explanation before it is
 * there.
 *
 * <p>The group's rates are learned when it is taken in hand, and again when so many reports have come that they may have moved.
 */
public final class Insights {
    private static final int ENOUGH_TO_LOOK_ANEW = 12;

    private final Desk desk;
    private final Work explaining;
    private final Work picturing;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private final KnownInsights known = new KnownInsights();
    private final AtomicReference<Wanted> wanted = new AtomicReference<>();
    private Optional<Wanted> asked = Optional.empty();
    private Optional<Wanted> foreseen = Optional.empty();
    private volatile Optional<Seen> seen = Optional.empty();
    private boolean looking;

    /**
     * The picture of a group as it stood.
     *
     * @param number which of all the pictures that were made it is
     */
    private record Seen(int number, GroupView group, GroupPicture picture) {
        boolean isOf(GroupView now, Course open) {
            return group.id().equals(now.id()) && picture.course() == open;
        }

        boolean isLike(Seen other) {
            return isOf(other.group, other.picture.course());
        }

        int reportsSince(GroupView now) {
            return Math.abs(now.reportCount() - group.reportCount());
        }
    }

    /** A student whose reports are to be explained, by what a picture of the group says of them. */
    private record Wanted(StudentId student, List<CountReport> reports, Seen by) {
        boolean sameAs(Wanted other) {
            return student.equals(other.student) && reports == other.reports && by == other.by;
        }

        Explained explained() {
            Rates rates = by.picture().rates(student).rates();
            return new Explained(this, StudentInsights.of(course(), student, reports, rates));
        }

        private Course course() {
            return by.picture().course();
        }
    }

    /** What has been worked out for whom. */
    private record Explained(Wanted wanted, StudentInsights insights) {}

    public Insights(Desk desk, Work thinking) {
        this.desk = desk;
        this.explaining = thinking;
        this.picturing = thinking.another();
        desk.follow(new WorkbookListener() {
            @Override
            public void coming(WorkbookView then, List<Change> changes) {
                foresee(then, changes);
            }

            @Override
            public void changed(List<Change> changes) {
                // whoever shows an explanation asks for it when the desk has taken in the change
            }
        });
    }

    /** Is told on the event thread when something was worked out. */
    public void listen(Runnable told) {
        listeners.add(told);
    }

    /** What lies behind the report that holds in a round. */
    public Optional<Insight> of(StudentId student, RoundStanding cell) {
        return cell.current().flatMap(report -> of(student).flatMap(insights -> insights.of(report)));
    }

    /** Everything that a student's reports say. */
    public Optional<StudentInsights> of(StudentId student) {
        Optional<Seen> by = lookWhen(last -> last.reportsSince(desk.group().orElseThrow()) >= ENOUGH_TO_LOOK_ANEW);
        if (by.isEmpty()) {
            return Optional.empty();
        }
        List<CountReport> reports = desk.reports(student);
        if (known.of(student, reports)
                .filter(found -> found.picture() == by.get().number())
                .isEmpty()) {
            workOut(new Wanted(student, reports, by.get()));
        }
        return known.of(student, reports).map(Known::insights);
    }

    /** The group as its reports and its register show it; a picture from before the last edits until the new one is made. */
    public Optional<GroupPicture> picture() {
        return lookWhen(last -> last.group() != desk.group().orElseThrow()).map(Seen::picture);
    }

    /** The picture that was made last of the group in hand, however old; none is made for this. */
    public Optional<GroupPicture> lastPicture() {
        return desk.course()
                .flatMap(course -> desk.group()
                        .flatMap(group -> seen.filter(last -> last.isOf(group, course.course()))
                                .map(Seen::picture)));
    }

    /** Whether a picture is being made. */
    public boolean looking() {
        return looking;
    }

    private Optional<Seen> lookWhen(Predicate<Seen> stale) {
        Optional<OpenCourse> course = desk.course();
        Optional<GroupView> group = desk.group();
        if (course.isEmpty() || group.isEmpty()) {
            return Optional.empty();
        }
        Course open = course.get().course();
        Optional<Seen> last = seen.filter(found -> found.isOf(group.get(), open));
        if (!looking && last.filter(found -> !stale.test(found)).isEmpty()) {
            looking = true;
            LocalDate today = desk.today();
            int number = seen.map(Seen::number).orElse(0) + 1;
            think(picturing, () -> look(number, group.get(), open, today), this::take);
        }
        return seen.filter(found -> found.isOf(group.get(), open));
    }

    /** Keeps a picture of the group; explanations by an older one stand until they are asked for anew. */
    private boolean take(Seen result) {
        looking = false;
        if (seen.filter(result::isLike).isEmpty()) {
            known.clear();
        }
        seen = Optional.of(result);
        return true;
    }

    private static Seen look(int number, GroupView group, Course course, LocalDate today) {
        List<CountReport> standing =
                group.reports().stream().filter(CountReport::stands).toList();
        List<RegisterMark> marks = new ArrayList<>();
        group.sessions()
                .forEach(session -> group.students()
                        .forEach(student -> group.attendance(session.id(), student.id())
                                .ifPresent(mark ->
                                        marks.add(new RegisterMark(group.id(), session.id(), student.id(), mark)))));
        return new Seen(
                number, group, GroupPicture.of(course, group.students(), standing, group.sessions(), marks, today));
    }

    /** Explains what is wanted now; who was wanted before and has not been begun is asked for again when somebody looks there. */
    private void workOut(Wanted now) {
        if (Stream.of(asked, foreseen).flatMap(Optional::stream).anyMatch(now::sameAs)) {
            return;
        }
        asked = Optional.of(now);
        if (wanted.getAndSet(now) == null) {
            think(explaining, () -> wanted.getAndSet(null).explained(), this::take);
        }
    }

    /** Begins to explain what an edit will have one student report; on the thread that writes. */
    private void foresee(WorkbookView then, List<Change> changes) {
        seen.ifPresent(by -> {
            List<StudentId> students = changes.stream()
                    .filter(Change.OfCount.class::isInstance)
                    .map(Change.OfCount.class::cast)
                    .filter(change -> change.group().equals(by.group().id()))
                    .map(Change.OfCount::student)
                    .distinct()
                    .limit(2)
                    .toList();
            if (students.size() == 1) {
                foresee(new Wanted(students.get(0), reports(then, by, students.get(0)), by));
            }
        });
    }

    private static List<CountReport> reports(WorkbookView view, Seen by, StudentId student) {
        return view.group(by.group().id()).map(group -> group.reports(student)).orElse(List.of());
    }

    private void foresee(Wanted next) {
        if (next.reports() != reports(desk.workbook().view(), next.by(), next.student())) {
            explaining.here(() -> foreseen = Optional.of(next));
            think(explaining, next::explained, this::take);
        }
    }

    /** Keeps what was worked out; says whether it is of how things stand. */
    private boolean take(Explained result) {
        Wanted done = result.wanted();
        asked = asked.filter(last -> !last.sameAs(done));
        foreseen = foreseen.filter(last -> !last.sameAs(done));
        if (seen.filter(done.by()::isLike).isEmpty()) {
            return false;
        }
        Known found = new Known(done.by().number(), result.insights());
        known.add(done.student(), found);
        return found.isOf(desk.reports(done.student()));
    }

    /** What to do with a result on the event thread; says whether somebody may show it. */
    private interface Taking<R> {
        boolean take(R result);
    }

    private <R> void think(Work work, Supplier<R> away, Taking<R> taking) {
        work.submit(new Task<R>() {
            @Override
            public R away() {
                return away.get();
            }

            @Override
            public void here(R result) {
                if (taking.take(result)) {
                    listeners.forEach(Runnable::run);
                }
            }

            @Override
            public void failed(Exception failure) {
                asked = Optional.empty();
                foreseen = Optional.empty();
                looking = false;
                desk.tell(String.valueOf(failure.getMessage()));
            }
        });
    }
}
