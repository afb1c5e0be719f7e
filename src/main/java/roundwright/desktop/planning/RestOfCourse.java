package roundwright.desktop.planning;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.course.file.CourseEdits;
import roundwright.course.file.CourseFile;
import roundwright.course.planning.CannotPlan;
import roundwright.course.planning.FinishRange;
import roundwright.course.planning.GroupNow;
import roundwright.course.planning.ItemWords;
import roundwright.course.planning.Learner;
import roundwright.course.planning.LeftBehind;
import roundwright.course.planning.LessonChange;
import roundwright.course.planning.Plan;
import roundwright.course.planning.Replanning;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.CountReport;
import roundwright.mistakes.Forecast;
import roundwright.mistakes.chain.PatternStory;
import roundwright.mistakes.story.Rates;
import roundwright.wording.Dates;
import roundwright.wording.Wording;

/**
 * The rest of a running group's course planned anew, in sentences. Working it out takes a second or so, so not on the event
 * thread.
 *
 * @param rest what was found
 * @param whole the plan of the whole course, with what has been
 */
record RestOfCourse(Question question, GroupNow now, Replanning rest, Plan whole) {
    private static final Wording WORDS = Wording.of("desktop");
    private static final DateTimeFormatter DAY = Dates.as("d MMMM");

    /**
     * One who takes the course.
     *
     * @param name as the screen may show it
     * @param rates as the reports show them
     */
    record Taker(String name, List<CountReport> reports, Rates rates) {}

    /**
     * What is asked.
     *
     * @param held lessons that have been
     * @param lessons how many are left; empty for the number that fits best
     * @param dates of the sessions to come, from the next lesson on, and of some after the last
     */
    record Question(OpenCourse open, List<Taker> takers, int held, OptionalInt lessons, List<LocalDate> dates) {}

    static RestOfCourse of(Question question) throws CannotPlan {
        OpenCourse open = question.open();
        Plan current = open.plan().orElseThrow(() -> new CannotPlan(WORDS.say("rest-no-lessons")));
        Forecast forecast = new Forecast(
                open.course().pattern(), current, current.settings().pace());
        List<Learner> learners = question.takers().stream()
                .map(taker -> forecast.learner(taker.name(), taker.reports()))
                .toList();
        GroupNow now = GroupNow.of(learners, question.held());
        Replanning rest = Replanning.of(current, now, question.lessons());
        return new RestOfCourse(question, now, rest, rest.whole(current));
    }

    /** How the group goes, and where it is. */
    List<String> where() {
        Plan current = question.open().plan().orElseThrow();
        String at = ItemWords.name(current.items().get(now.done()));
        return List.of(
                WORDS.say(
                        "rest-where",
                        at,
                        now.sessionsHeld(),
                        Numbers.shortest(oneDecimal(now.pace())),
                        Numbers.shortest(current.settings().pace())),
                WORDS.say("rest-measure", SplitMeasure.of(rest.rest()).words()));
    }

    private static double oneDecimal(double number) {
        return Math.round(number * 10) / 10.0;
    }

    /** Lesson by lesson, what is to be done and, where that is something else, what was. */
    List<SplitAnew.Row> changes() {
        return rest.changes().stream().map(this::row).toList();
    }

    private SplitAnew.Row row(LessonChange change) {
        String anew = change.after()
                .map(text -> WORDS.say("rest-lesson", change.number(), text, minutes(change.number())))
                .orElse(WORDS.say("split-numbered", change.number(), WORDS.say("split-no-lesson")));
        return new SplitAnew.Row(
                anew, change.same() ? Optional.empty() : change.before().map(text -> WORDS.say("split-before", text)));
    }

    private long minutes(int lesson) {
        return rest.rest().lessons().stream()
                .filter(planned -> planned.number() == lesson)
                .mapToLong(planned -> Math.round(planned.minutes().total()))
                .findFirst()
                .orElse(0);
    }

    /** Who is left behind, with the minutes to catch up and those needed beyond the group's each lesson. */
    List<String> behind() {
        return rest.behind().stream().map(RestOfCourse::behind).toList();
    }

    private static String behind(LeftBehind one) {
        long catchUp = Math.round(one.catchUpMinutes());
        long extra = Math.round(one.extraMinutes());
        return catchUp > 0 && extra > 0
                ? WORDS.say("behind-both", one.name(), catchUp, extra)
                : catchUp > 0
                        ? WORDS.say("behind-catch-up", one.name(), catchUp)
                        : WORDS.say("behind-extra", one.name(), extra);
    }

    /** When each finishes, as a range; not for anyone who has finished. */
    List<String> finishing() {
        Forecast forecast = new Forecast(question.open().course().pattern(), whole, now.pace());
        Map<Rates, PatternStory> stories = new java.util.HashMap<>();
        List<String> said = new ArrayList<>();
        for (Taker taker : question.takers()) {
            PatternStory story = stories.computeIfAbsent(
                    taker.rates(),
                    rates -> new PatternStory(question.open().course().pattern(), rates));
            forecast.of(taker.reports(), story, now.sessionsHeld(), question.dates())
                    .ifPresent(range -> said.add(finish(taker.name(), range)));
        }
        return said;
    }

    private static String finish(String name, FinishRange range) {
        String minutes = Math.round(range.leastMinutes() / 10) * 10 + "–" + Math.round(range.mostMinutes() / 10) * 10;
        if (range.earliest().isEmpty()) {
            return WORDS.say("finish-late", name, minutes);
        }
        String from = DAY.format(range.earliest().get());
        return range.latest()
                .map(last -> range.earliest().get().equals(last)
                        ? WORDS.say("finish-on", name, from, minutes)
                        : WORDS.say("finish-between", name, from, DAY.format(last), minutes))
                .orElseGet(() -> WORDS.say("finish-from", name, from, minutes));
    }

    /** The course's text with the new lessons, and with the group's pace. */
    String text() {
        OpenCourse open = question.open();
        String pace = WORDS.say("split-written-pace", Numbers.shortest(oneDecimal(now.pace())));
        CourseFile file = CourseFile.read(CourseEdits.of(open.file()).setting("pace", Optional.of(pace)));
        return PlanInText.of(
                open.with(file), whole, PlanInText.mostInCommon(open.plan().orElseThrow(), whole));
    }
}
