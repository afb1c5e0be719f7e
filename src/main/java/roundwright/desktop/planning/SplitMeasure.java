package roundwright.desktop.planning;

import java.util.ArrayList;
import java.util.List;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlannedLesson;
import roundwright.wording.Wording;

/**
 * What a split comes to, in things that a teacher can see.
 *
 * @param lessons how many
 * @param over minutes over the sessions' ends, together
 * @param unused minutes unused, together, the last session left out
 * @param tooMuchNew new techniques beyond what a lesson should have, together
 * @param awkwardStops lessons that stop inside a stretch of like rounds, or before something is finished
 */
record SplitMeasure(int lessons, long over, long unused, int tooMuchNew, long awkwardStops) {
    private static final Wording WORDS = Wording.of("desktop");

    /** Stopping inside a written range, or where the next thing is prepared, is worth saying. */
    private static final double AWKWARD = 3;

    static SplitMeasure of(Plan plan) {
        double over = 0;
        double unused = 0;
        int tooMuch = 0;
        long awkward = 0;
        int last = plan.lessons().size() - 1;
        for (int i = 0; i <= last; i++) {
            PlannedLesson lesson = plan.lessons().get(i);
            over += lesson.over();
            double spare = plan.settings().minutes() - lesson.minutes().total();
            unused += i < last ? Math.max(0, spare) : 0;
            int most = plan.settings().mostNew(lesson.number() == 1);
            tooMuch += Math.max(0, lesson.introduces().size() - most);
            awkward += lesson.cost().stop() >= AWKWARD ? 1 : 0;
        }
        return new SplitMeasure(last + 1, Math.round(over), Math.round(unused), tooMuch, awkward);
    }

    /** "8 lessons: nothing over, 41 minutes unused, one stops at an awkward place". */
    String words() {
        List<String> said = new ArrayList<>();
        said.add(WORDS.say("measure-over", over));
        said.add(WORDS.say("measure-unused", unused));
        if (tooMuchNew > 0) {
            said.add(WORDS.say("measure-new", tooMuchNew));
        }
        if (awkwardStops > 0) {
            said.add(WORDS.say("measure-stops", awkwardStops));
        }
        return WORDS.say("measure", lessons, String.join(", ", said));
    }
}
