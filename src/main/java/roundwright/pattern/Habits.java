package roundwright.pattern;

import java.util.Map;
import roundwright.notation.Habit;

/**
 * What a writer is known or assumed to mean where words can be read in more than one way.
 *
 * <p>A teacher can overrule: {@code Habits.NONE.with(Habit.REPEAT_FROM, 1)} makes "rep from * 5 times" mean five in all
 * throughout the pattern.
 *
 * @param overruled the option that holds for a habit, whatever the sums say
 */
public record Habits(Map<Habit, Integer> overruled) {
    public static final Habits NONE = new Habits(Map.of());

    public Habits {
        overruled = Map.copyOf(overruled);
    }

    public Habits with(Habit habit, int option) {
        if (option < 0 || option >= habit.options()) {
            throw new IllegalArgumentException(habit + " has no option " + option);
        }
        Map<Habit, Integer> more = new java.util.EnumMap<>(Habit.class);
        more.putAll(overruled);
        more.put(habit, option);
        return new Habits(more);
    }
}
