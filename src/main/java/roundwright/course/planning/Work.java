package roundwright.course.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import roundwright.pattern.Line;
import roundwright.pattern.Round;
import roundwright.pattern.Steps;
import roundwright.technique.FirstUses;
import roundwright.technique.FirstUses.Place;
import roundwright.technique.Technique;

/** An item of a plan while the pattern is being gone through: what its neighbours say of it comes later. */
final class Work {
    private final Place place;
    private final Set<Task> tasks;
    private final int stitches;
    private final boolean shaping;
    private final List<String> introduces = new ArrayList<>();
    private double teaching;
    private boolean firstUse;

    /**
     * @param tasks what the line asks for besides stitches
     * @param countBelow stitches of the round below; what a line that was not understood is taken to make where it states nothing
     */
    Work(Place place, Set<Task> tasks, OptionalInt countBelow) {
        this.place = place;
        this.tasks = tasks;
        Optional<Round> round = round();
        this.stitches = round.map(one -> stitches(one, countBelow)).orElse(0);
        this.shaping = round.map(one -> one.steps()
                        .map(Steps::shapes)
                        .orElse(countBelow.isPresent() && stitches != countBelow.getAsInt()))
                .orElse(false);
    }

    private static int stitches(Round round, OptionalInt countBelow) {
        return round.steps().map(Steps::makes).orElseGet(() -> round.count().orElse(countBelow.orElse(0)));
    }

    /** Adds what comes first at a place to what has to be taught here. */
    void teach(FirstUses uses, Place at) {
        teaching += uses.teachingMinutes(at.order());
        uses.newAt(at.order()).stream().map(Technique::id).forEach(introduces::add);
        firstUse |= !uses.at(at.order()).isEmpty();
    }

    Optional<Round> round() {
        return place.item() instanceof Round round ? Optional.of(round) : Optional.empty();
    }

    Line line() {
        return place.item().line();
    }

    String part() {
        return place.part();
    }

    int stitches() {
        return stitches;
    }

    /** Whether what follows it closes the opening: a closing, or a round of decreases. */
    private boolean closes(int countBelow) {
        return tasks.contains(Task.CLOSE) || (round().isPresent() && stitches < countBelow);
    }

    private boolean prepares(Optional<Work> next, int count) {
        return tasks.contains(Task.STUFF)
                && !tasks.contains(Task.CLOSE)
                && next.filter(work -> work.closes(count)).isPresent();
    }

    /**
     * The item.
     *
     * @param range number of its written range
     * @param next what follows it in its part; empty where it ends the part
     * @param count stitches on the work after it
     */
    PlanItem item(double pace, int range, Optional<Work> next, int count) {
        double taskMinutes = tasks.stream().mapToDouble(Task::minutes).sum();
        return new PlanItem(
                place.part(),
                round().map(one -> OptionalInt.of(one.number())).orElse(OptionalInt.empty()),
                round().isPresent()
                        ? Optional.empty()
                        : Optional.of(line().text().strip()),
                stitches,
                stitches / pace + taskMinutes,
                round().isPresent() ? PlanItems.COUNTING_MINUTES : 0,
                teaching,
                introduces,
                shaping,
                range,
                next.isEmpty(),
                prepares(next, count),
                !firstUse && tasks.stream().allMatch(Task::homework));
    }
}
