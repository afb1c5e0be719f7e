package roundwright.desktop.planning;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.JButton;
import javax.swing.JTextField;
import roundwright.course.calendar.ImpossibleDates;
import roundwright.course.calendar.Meeting;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.ask.WhenTyped;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Names;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.insight.Insights;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.desktop.planning.RestOfCourse.Question;
import roundwright.desktop.planning.RestOfCourse.Taker;
import roundwright.desktop.work.Task;
import roundwright.desktop.work.Work;
import roundwright.group.Group;
import roundwright.mistakes.story.Rates;
import roundwright.wording.Wording;
import roundwright.workbook.GroupView;

/** Plans the rest of the course by the group's own pace and place, and says what that changes and for whom. */
public final class RestCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");

    /** Weeks after the last lesson in which someone may still finish. */
    private static final int TIME_TO_FINISH = 12;

    private final transient Desk desk;
    private final transient Asking asking;
    private final transient Insights insights;
    private final transient Work longWork;
    private final transient OpenCourse open;
    private final transient GroupView group;
    private final int held;
    private final JTextField lessons;
    private final Stack shown = new Stack();
    private final JButton take;
    private transient Optional<RestOfCourse> found = Optional.empty();
    private int asked;

    public RestCard(Desk desk, Asking asking, Insights insights, Work longWork) {
        super(WORDS.say("rest-head"), 720);
        this.desk = desk;
        this.asking = asking;
        this.insights = insights;
        this.longWork = longWork;
        this.open = desk.course().orElseThrow();
        this.group = desk.group().orElseThrow();
        this.held = new LessonDates(desk)
                .lastHeld()
                .flatMap(session -> session.lesson().stream().boxed().findFirst())
                .orElse(0);
        int left = open.course().lessons().size() - held;
        say(WORDS.say("rest-how"));
        lessons = row(
                WORDS.say("rest-lessons"),
                new JTextField(left > 0 ? String.valueOf(left) : ""),
                WORDS.say("split-sessions-hint"));
        WhenTyped.atOnce(lessons, this::workOut);
        body().below(2, shown);
        take = answer(WORDS.say("rest-take"), this::take);
        cancel(asking);
        workOut();
    }

    private void workOut() {
        OptionalInt wanted = Numbers.whole(lessons, 1, 60);
        take.setEnabled(false);
        found = Optional.empty();
        int number = ++asked;
        if (wanted.isEmpty() && !lessons.getText().isBlank()) {
            refuse(WORDS.say("split-sessions-wrong"));
            return;
        }
        wrong("", this);
        shown.removeAll();
        shown.below(0, Prose.muted(WORDS.say("rest-working")));
        Question question = new Question(open, takers(), held, wanted, dates());
        longWork.submit(new Task<Runnable>() {
            @Override
            public Runnable away() throws Exception {
                RestOfCourse rest = RestOfCourse.of(question);
                List<String> finishing = rest.finishing();
                return () -> show(rest, finishing);
            }

            @Override
            public void here(Runnable show) {
                if (number == asked) {
                    show.run();
                }
            }

            @Override
            public void failed(Exception failure) {
                if (number == asked) {
                    refuse(String.valueOf(failure.getMessage()));
                }
            }
        });
    }

    private List<Taker> takers() {
        return group.students().stream()
                .map(student -> new Taker(
                        Names.of(student, desk),
                        group.reports(student.id()),
                        insights.lastPicture()
                                .map(picture -> picture.rates(student.id()).rates())
                                .orElse(Rates.STORY)))
                .toList();
    }

    /** Dates from the next lesson on; weekly from today where nothing is known. */
    private List<LocalDate> dates() {
        LessonDates dates = new LessonDates(desk);
        Group started = group.group().start().isPresent()
                ? group.group()
                : new Group(
                        group.id(),
                        group.group().course(),
                        group.group().name(),
                        Optional.of(desk.today()),
                        group.group().place());
        GroupRun run = dates.run().orElseGet(() -> weekly(desk.today().getDayOfWeek()));
        try {
            return dates.meetings(open, started, run, TIME_TO_FINISH).stream()
                    .filter(meeting -> meeting.lesson() > held)
                    .map(Meeting::start)
                    .map(start -> start.toLocalDate())
                    .filter(day -> !day.isBefore(desk.today()))
                    .toList();
        } catch (ImpossibleDates impossible) {
            return new ArrayList<>();
        }
    }

    private static GroupRun weekly(DayOfWeek day) {
        return new GroupRun(
                java.util.Set.of(day),
                java.time.LocalTime.of(19, 0),
                java.time.ZoneId.systemDefault(),
                java.util.Set.of(),
                "");
    }

    private void refuse(String sentence) {
        shown.removeAll();
        wrong(sentence, this);
        repaint();
    }

    private void show(RestOfCourse rest, List<String> finishing) {
        found = Optional.of(rest);
        take.setEnabled(true);
        shown.removeAll();
        rest.where().forEach(line -> shown.below(0.5, Prose.body(line)));
        for (SplitAnew.Row row : rest.changes()) {
            shown.below(1.25, Prose.body(row.anew()));
            row.before().ifPresent(before -> shown.below(0.25, Prose.muted(before)));
        }
        list(WORDS.say("rest-behind"), rest.behind(), WORDS.say("rest-nobody-behind"));
        list(WORDS.say("rest-finishing"), finishing, WORDS.say("rest-all-finished"));
        revalidate();
        if (getParent() != null) {
            getParent().revalidate();
        }
        repaint();
    }

    private void list(String heading, List<String> lines, String none) {
        shown.below(2, Prose.of(heading, Type.SMALL_STRONG, Tone.INK));
        lines.forEach(line -> shown.below(0.5, Prose.body(line)));
        if (lines.isEmpty()) {
            shown.below(0.5, Prose.muted(none));
        }
    }

    private void take() {
        found.ifPresent(rest -> {
            asking.close();
            TakePlan.take(desk, WORDS.say("edit-rest", group.group().name()), ignored -> rest.text(), () -> {});
        });
    }
}
