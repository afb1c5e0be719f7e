package roundwright.desktop.insight;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Supplier;
import roundwright.course.Course;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.work.Task;
import roundwright.desktop.work.Work;
import roundwright.group.CountReport;
import roundwright.group.GroupId;
import roundwright.group.RoundStanding;
import roundwright.group.StudentId;
import roundwright.mistakes.learning.Learning;
import roundwright.mistakes.story.Rates;
import roundwright.workbook.GroupView;

/**
 * What the reports of the group in hand say. Asked for something that is not worked out yet, it answers with nothing, works it
 * out on a queue of its own, and tells its listeners.
 *
 * <p>The group's rates are learned when it is taken in hand, and again when so many reports have come that they may have moved.
 */
public final class Insights {
    private static final int REPORTS_TO_LEARN_ANEW = 12;

    private final Desk desk;
    private final Work thinking;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private final Map<StudentId, StudentInsights> known = new HashMap<>();
    private final Set<StudentId> underWay = new HashSet<>();
    private Optional<Learned> learned = Optional.empty();
    private boolean learning;

    /** The rates of a group, from so many reports on a pattern. */
    private record Learned(GroupId group, Course course, int reports, Map<StudentId, Rates> rates) {
        boolean holds(GroupView now, Course open) {
            return group.equals(now.id())
                    && course == open
                    && Math.abs(now.reports().size() - reports) < REPORTS_TO_LEARN_ANEW;
        }
    }

    public Insights(Desk desk, Work thinking) {
        this.desk = desk;
        this.thinking = thinking;
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
        Optional<Learned> rates = rates();
        if (rates.isEmpty() || desk.course().isEmpty()) {
            return Optional.empty();
        }
        List<CountReport> reports = desk.reports(student);
        StudentInsights found = known.get(student);
        if (found != null && found.reports().equals(reports)) {
            return Optional.of(found);
        }
        workOut(student, reports, rates.get().rates().getOrDefault(student, Rates.STORY));
        return Optional.ofNullable(known.get(student))
                .filter(worked -> worked.reports().equals(reports));
    }

    /** The rates that hold for the group in hand; they are learned first where they are not known. */
    private Optional<Learned> rates() {
        Optional<OpenCourse> course = desk.course();
        Optional<GroupView> group = desk.group();
        if (course.isEmpty() || group.isEmpty()) {
            return Optional.empty();
        }
        Course open = course.get().course();
        if (learned.filter(found -> found.holds(group.get(), open)).isEmpty() && !learning) {
            learning = true;
            think(() -> learn(group.get(), open), result -> {
                learning = false;
                learned = Optional.of(result);
                known.clear();
            });
        }
        return learned.filter(found -> found.group().equals(group.get().id()) && found.course() == open);
    }

    private static Learned learn(GroupView group, Course course) {
        List<CountReport> standing =
                group.reports().stream().filter(CountReport::stands).toList();
        Learning learning = Learning.of(course.pattern(), standing);
        Map<StudentId, Rates> rates = new HashMap<>();
        group.students()
                .forEach(student ->
                        rates.put(student.id(), learning.student(student.id()).rates()));
        return new Learned(group.id(), course, group.reports().size(), rates);
    }

    private void workOut(StudentId student, List<CountReport> reports, Rates rates) {
        if (!underWay.add(student)) {
            return;
        }
        Course course = desk.course().orElseThrow().course();
        List<CountReport> copy = new ArrayList<>(reports);
        think(() -> StudentInsights.of(course, student, copy, rates), result -> {
            underWay.remove(student);
            known.put(student, result);
        });
    }

    /** What to do with a result on the event thread. */
    private interface Taking<R> {
        void take(R result);
    }

    private <R> void think(Supplier<R> away, Taking<R> taking) {
        thinking.submit(new Task<R>() {
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
                underWay.clear();
                learning = false;
                desk.tell(String.valueOf(failure.getMessage()));
            }
        });
    }
}
