package roundwright.desktop.next;

import roundwright.technique.Technique;

/**
 * A technique on the student's way through the course.
 *
 * @param state how it stands
 * @param lesson number of the lesson in which it comes first; 0 where that is in none
 */
public record TechniqueStep(Technique technique, State state, int lesson) {
    /** How a technique stands for a student. */
    public enum State {
        /** Worked, and the last rounds with it brought no new difference. */
        SURE,
        /** Worked, but lately with a new difference, or only once. */
        NEARLY,
        /** It comes first in the round to work now, or in the next round that brings something new. */
        NEXT,
        LATER
    }
}
