package roundwright.desktop.ask;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.JTextField;
import roundwright.course.file.CourseEdits;
import roundwright.course.file.CourseFile;
import roundwright.course.planning.CannotPlan;
import roundwright.course.planning.LessonsOfPlan;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlanItems;
import roundwright.course.planning.PlanRequest;
import roundwright.course.planning.PlanSettings;
import roundwright.course.planning.Planner;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.work.Task;
import roundwright.wording.Wording;
import roundwright.workbook.CourseEdit;

/** Splits the pattern into lessons anew: how long a session is, how many there are, how much may be new in one. */
public final class SplitCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient Desk desk;
    private final transient Asking asking;
    private final transient OpenCourse course;
    private final JTextField minutes;
    private final JTextField sessions = new JTextField();
    private final JTextField mostNew = new JTextField(String.valueOf(PlanSettings.USUAL_MOST_NEW));
    private final JTextField pace;

    public SplitCard(Desk desk, Asking asking) {
        super(WORDS.say("split-head"), 480);
        this.desk = desk;
        this.asking = asking;
        this.course = desk.course().orElseThrow();
        PlanSettings settings = course.planSettings();
        minutes = new JTextField(String.valueOf(Math.round(settings.minutes())));
        pace = new JTextField(shortest(settings.pace()));
        say(WORDS.say("split-how"));
        row(WORDS.say("split-minutes"), minutes, "");
        row(WORDS.say("split-sessions"), sessions, WORDS.say("split-sessions-hint"));
        row(WORDS.say("split-new"), mostNew, WORDS.say("split-new-hint"));
        row(WORDS.say("split-pace"), pace, WORDS.say("split-pace-hint"));
        answer(WORDS.say("split-answer"), this::split);
        cancel(asking);
    }

    private static String shortest(double number) {
        return number == Math.rint(number) ? String.valueOf((int) number) : String.valueOf(number);
    }

    private void split() {
        if (!whole(minutes, 20, 600)) {
            wrong(WORDS.say("split-minutes-wrong"), minutes);
        } else if (!sessions.getText().isBlank() && !whole(sessions, 1, 60)) {
            wrong(WORDS.say("split-sessions-wrong"), sessions);
        } else if (!whole(mostNew, 1, 9)) {
            wrong(WORDS.say("split-new-wrong"), mostNew);
        } else if (!pace.getText().strip().matches("\\d{1,2}([.]\\d)?") || Double.parseDouble(pace.getText()) < 1) {
            wrong(WORDS.say("split-pace-wrong"), pace);
        } else {
            split(new PlanSettings(
                    number(minutes), Double.parseDouble(pace.getText().strip()), number(mostNew), 0));
        }
    }

    private static boolean whole(JTextField field, int least, int most) {
        return field.getText().strip().matches("\\d{1,3}") && number(field) >= least && number(field) <= most;
    }

    private static int number(JTextField field) {
        return Integer.parseInt(field.getText().strip());
    }

    private void split(PlanSettings settings) {
        OptionalInt wanted = sessions.getText().isBlank() ? OptionalInt.empty() : OptionalInt.of(number(sessions));
        desk.work().submit(new Task<String>() {
            @Override
            public String away() throws CannotPlan {
                return text(settings, wanted);
            }

            @Override
            public void here(String text) {
                asking.close();
                desk.apply(new CourseEdit.ReplaceCourseText(
                        course.kept().id(), course.kept().name(), text));
            }

            @Override
            public void failed(Exception failure) {
                wrong(String.valueOf(failure.getMessage()), sessions);
            }
        });
    }

    /** The course file with the new lessons, and with the session's length and the pace that they were split by. */
    private String text(PlanSettings settings, OptionalInt wanted) throws CannotPlan {
        List<roundwright.course.planning.PlanItem> items = PlanItems.of(
                        course.course().pattern(), course.techniques(), settings.pace())
                .items();
        Plan plan = Planner.plan(PlanRequest.of(items, settings, wanted));
        CourseFile file = CourseFile.read(CourseEdits.of(course.file())
                .setting("session", Optional.of(WORDS.say("split-written-minutes", Math.round(settings.minutes())))));
        file = CourseFile.read(CourseEdits.of(file)
                .setting("pace", Optional.of(WORDS.say("split-written-pace", shortest(settings.pace())))));
        return CourseEdits.of(file)
                .lessons(LessonsOfPlan.of(plan, course.course().lessons()))
                .text();
    }
}
