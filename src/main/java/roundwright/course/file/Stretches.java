package roundwright.course.file;

import java.util.ArrayList;
import java.util.List;
import roundwright.technique.FirstUses.Place;
import roundwright.wording.Wording;

/** Says rounds as a teacher does: "Tower 4-6 and Lantern 1". */
final class Stretches {
    /** More stretches than this are summed up. */
    private static final int MOST = 6;

    private static final Wording WORDS = Wording.of("course");

    private Stretches() {}

    static String say(List<Place> rounds) {
        List<String> said = new ArrayList<>();
        int from = 0;
        for (int to = 1; to <= rounds.size(); to++) {
            if (to == rounds.size() || !follows(rounds.get(to - 1), rounds.get(to))) {
                said.add(say(rounds.get(from), rounds.get(to - 1)));
                from = to;
            }
        }
        if (said.size() > MOST) {
            int more = said.size() - MOST;
            said = new ArrayList<>(said.subList(0, MOST));
            said.add(WORDS.say("more-stretches", more));
        }
        return Wording.list(said);
    }

    private static boolean follows(Place before, Place after) {
        return before.part().equals(after.part())
                && before.round().orElseThrow() + 1 == after.round().orElseThrow();
    }

    private static String say(Place first, Place last) {
        int from = first.round().orElseThrow();
        int to = last.round().orElseThrow();
        return first.part() + " " + (from == to ? from : from + "-" + to);
    }
}
