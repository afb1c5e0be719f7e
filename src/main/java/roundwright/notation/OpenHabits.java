package roundwright.notation;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import roundwright.notation.Node.Choice;
import roundwright.notation.Node.Manner;
import roundwright.notation.Node.Repeat;
import roundwright.notation.Node.Sequence;
import roundwright.notation.Node.Together;
import roundwright.notation.Node.Work;

/** The habits that a tree leaves open. */
final class OpenHabits {
    private EnumSet<Habit> open;

    private OpenHabits() {}

    static Set<Habit> of(List<Node> tree) {
        OpenHabits habits = new OpenHabits();
        habits.collect(tree);
        return habits.open == null ? Set.of() : Collections.unmodifiableSet(habits.open);
    }

    private void collect(List<Node> tree) {
        for (int i = 0; i < tree.size(); i++) {
            Node node = tree.get(i);
            if (node instanceof Choice choice) {
                add(choice.habit());
                collect(choice.options());
            } else if (node instanceof Repeat repeat) {
                collect(repeat.body());
                collect(repeat.cut());
            } else if (node instanceof Together together) {
                collect(together.body());
            } else if (node instanceof Sequence sequence) {
                collect(sequence.body());
            } else if (node instanceof Work work && work.manner() == Manner.CHAIN) {
                add(Habit.CHAINS);
            }
        }
    }

    private void add(Habit habit) {
        open = open == null ? EnumSet.noneOf(Habit.class) : open;
        open.add(habit);
    }
}
