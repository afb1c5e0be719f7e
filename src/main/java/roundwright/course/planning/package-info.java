/**
 * Splits a pattern into lessons: the exact optimum, by dynamic programming over the pattern's working order; the same split
 * moved by hand; planning a running group anew.
 *
 * <p><b>Items</b> are the rounds (a written range is as many as it has) and the instructions between them that take time:
 * stuffing, placing eyes, joining, sewing, closing. An item's minutes are its stitches ÷ pace, 0.75 a round for counting and
 * moving the marker, the teaching of every technique used first in it, and the minutes of an instruction.
 *
 * <p>A technique that is shown in passing (groundwork) takes its teaching minutes where it is needed first, but is not one of a
 * lesson's new techniques. An instruction that takes no time is no item: what it teaches goes to the round after it. An
 * instruction written at the end of a round's line belongs to that round. A stuffing prepares the next item where that is a
 * closing or a round with fewer stitches.
 *
 * <p><b>A session</b> of L minutes has settling 5, recap 10 (none in the course's first), count and check 5, packing up 5. It
 * has at least one item in class. After them it may give a run of items as homework, of at most H minutes together, never
 * one with a first use, a join, a closing or a stuffing. The last session may give homework too: the piece is then finished
 * at home.
 *
 * <p><b>Cost</b>, summed over sessions:
 *
 * <ul>
 *   <li>4 × (minutes over L)², where minutes are the fixed ones and those of the items worked in class;
 *   <li>0.25 × (minutes unused)², except in the last session;
 *   <li>4 × (new techniques over K)², K = 3 in the course's first session and K after it;
 *   <li>the price of stopping after the last item in class: 0 where it ends a part or the pattern; else 6 where it prepares the
 *       next item; else 3 where both belong to one written range; else 2 after a shaping round; else 1;
 *   <li>half that price for the homework's last item, where there is homework (the class's own stop is paid in full).
 * </ul>
 *
 * <p>{@link roundwright.course.planning.Planner} finds the cheapest split, {@link roundwright.course.planning.ByHand} changes one,
 * {@link roundwright.course.planning.Replanning} plans the rest of a running group, and
 * {@link roundwright.course.planning.FinishForecast} says when a student will be done.
 * {@link roundwright.course.planning.WrittenLessons} and {@link roundwright.course.planning.LessonsOfPlan} turn a course file's
 * lessons into a plan and back.
 */
package roundwright.course.planning;
