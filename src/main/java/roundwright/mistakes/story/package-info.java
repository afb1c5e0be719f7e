/**
 * How a beginner works one written round, as a story with chances, and its exact inversion.
 *
 * <p>A written round is a list of steps; each takes stitches of the round below and makes stitches of this one. With
 * {@code n} stitches truly below, the student makes {@code t}, which the line says should be {@code M}:
 *
 * <ol>
 *   <li><b>Which line.</b> Now and then the line before or after is worked instead ({@link Kind#WRONG_LINE}).
 *   <li><b>How the line is read.</b> At most one of six misreadings, such as the bracket once too few ({@link Reading}).
 *   <li><b>Stitch by stitch.</b> Each step may go wrong in one of four ways: a stitch below is passed over, a stitch is
 *       worked twice, an increase or a decrease becomes a plain stitch ({@link StepTable}, {@link StitchWork}).
 *   <li><b>The end.</b> Most students let the marker decide: stitches left below get a plain stitch each, and where the
 *       stitches run out first they stop. The others work the line to its end wherever that is.
 *   <li><b>The marker.</b> They may stop up to three stitches early or run up to three past.
 *   <li><b>The count.</b> They may miscount what they made, mostly by one.
 * </ol>
 *
 * <p>A part's first round (the ring or the foundation) has a story of its own: it may begin one or two stitches wrong.
 *
 * <p>The inversion needs P(t, kinds | n). For one way of reading one line, the state after k steps is nothing but which
 * slips happened so far: their number fixes the stitches used and made. {@link StitchWork} carries the chance of every
 * such mix through the steps. Until the marker can come in reach, that does not depend on {@code n}, so it is done once
 * a reading; for each {@code n} only the last few stitches are worked. {@link RoundStory} puts the readings together and
 * {@link Landing} holds what one {@code n} can become.
 *
 * <p>The chances to start from are the project's own judgement ({@link Rates#STORY}); they are learned from the group's records.
 */
package roundwright.mistakes.story;
