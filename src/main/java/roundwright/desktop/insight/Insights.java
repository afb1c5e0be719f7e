package roundwright.desktop.insight;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Predicate;
import java.util.function.Supplier;
import roundwright.course.Course;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.work.Task;
import roundwright.desktop.work.Work;
import roundwright.group.CountReport;
import roundwright.group.RegisterMark;
import roundwright.group.RoundStanding;
import roundwright.group.StudentId;
import roundwright.mistakes.help.GroupPicture;
import roundwright.mistakes.story.Rates;
import roundwright.workbook.GroupView;

/**
 * What the reports of the group in hand say. Asked for something that is not worked out yet, it answers with nothing, works it
 * out on queues of its own, and tells its listeners. The picture of a large group takes seconds; one student's explanations do not
 * wait for it.
 *
 * <p>The group's rates are learned when it is taken in hand, and again when so many reports have come that they may have moved.
 */
public final class Insights {
    private static final int ENOUGH_TO_LOOK_ANEW = 12;

    private final Desk desk;
    private final Work explaining;
    private final Work picturing;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private final Map<StudentId, StudentInsights> known = new HashMap<>();
    private final AtomicReference<Wanted> wanted = new AtomicReference<>();
    private Optional<Wanted> asked = Optional.empty();
    private Optional<Seen> seen = Optional.empty();
    private boolean looking;

    /** The picture of a group as it stood. */
    private record Seen(GroupView group, GroupPicture picture) {
        boolean isOf(GroupView now, Course open) {
            return group.id().equals(now.id()) && picture.course() == open;
        }

        int reportsSince(GroupView now) {
            return Math.abs(now.reportCount() - group.reportCount());
        }
    }

    /** A student whose reports are to be explained, by what a picture of the group says of them. */
    private record Wanted(Course course, StudentId student, List<CountReport> reports, Optional<Seen> by) {
        boolean sameAs(Wanted other) {
            return course == other.course
                    && student.equals(other.student)
                    && reports == other.reports
                    && by.orElse(null) == other.by.orElse(null);
        }

        StudentInsights explained() {
            Rates rates = by.orElseThrow().picture().rates(student).rates();
            return StudentInsights.of(course, student, reports, rates);
        }
    }

    /** What has been worked out for whom. */
    private record Explained(Wanted wanted, StudentInsights insights) {}

    public Insights(Desk desk, Work thinking) {
        this.desk = desk;
        this.explaining = thinking;
        this.picturing = thinking.another();
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
        Optional<GroupPicture> picture =
                lookWhen(seen -> seen.reportsSince(desk.group().orElseThrow()) >= ENOUGH_TO_LOOK_ANEW);
        if (picture.isEmpty()) {
            return Optional.empty();
        }
        List<CountReport> reports = desk.reports(student);
        StudentInsights found = known.get(student);
        if (found != null && found.reports().equals(reports)) {
            return Optional.of(found);
        }
        workOut(new Wanted(picture.get().course(), student, reports, seen));
        return Optional.ofNullable(known.get(student))
                .filter(worked -> worked.reports().equals(reports));
    }

    /** The group as its reports and its register show it; a picture from before the last edits until the new one is made. */
    public Optional<GroupPicture> picture() {
        return lookWhen(last -> last.group() != desk.group().orElseThrow());
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

    private Optional<GroupPicture> lookWhen(Predicate<Seen> stale) {
        Optional<OpenCourse> course = desk.course();
        Optional<GroupView> group = desk.group();
        if (course.isEmpty() || group.isEmpty()) {
            return Optional.empty();
        }
        Course open = course.get().course();
        boolean hold = seen.filter(last -> last.isOf(group.get(), open) && !stale.test(last))
                .isPresent();
        if (!hold && !looking) {
            looking = true;
            LocalDate today = desk.today();
            think(picturing, () -> look(group.get(), open, today), result -> {
                looking = false;
                seen = Optional.of(result);
                known.clear();
            });
        }
        return seen.filter(last -> last.isOf(group.get(), open)).map(Seen::picture);
    }

    private static Seen look(GroupView group, Course course, LocalDate today) {
        List<CountReport> standing =
                group.reports().stream().filter(CountReport::stands).toList();
        List<RegisterMark> marks = new ArrayList<>();
        group.sessions()
                .forEach(session -> group.students()
                        .forEach(student -> group.attendance(session.id(), student.id())
                                .ifPresent(mark ->
                                        marks.add(new RegisterMark(group.id(), session.id(), student.id(), mark)))));
        return new Seen(group, GroupPicture.of(course, group.students(), standing, group.sessions(), marks, today));
    }

    /** Explains what is wanted now; who was wanted before and has not been begun is asked for again when somebody looks there. */
    private void workOut(Wanted now) {
        if (asked.filter(now::sameAs).isPresent()) {
            return;
        }
        asked = Optional.of(now);
        if (wanted.getAndSet(now) == null) {
            think(explaining, this::explainWanted, result -> {
                asked = asked.filter(last -> !last.sameAs(result.wanted()));
                if (seen.orElse(null) == result.wanted().by().orElse(null)) {
                    known.put(result.wanted().student(), result.insights());
                }
            });
        }
    }

    private Explained explainWanted() {
        Wanted now = wanted.getAndSet(null);
        return new Explained(now, now.explained());
    }

    /** What to do with a result on the event thread. */
    private interface Taking<R> {
        void take(R result);
    }

    private <R> void think(Work work, Supplier<R> away, Taking<R> taking) {
        work.submit(new Task<R>() {
            @Override
            public R away() {
                return away.get();
            }

            @Override
            public void here(R result) {
                taking.take(result);
                listeners.forEach(Runnable::run);
            }

            @Override
            public void failed(Exception failure) {
                asked = Optional.empty();
                looking = false;
                desk.tell(String.valueOf(failure.getMessage()));
            }
        });
    }
}
