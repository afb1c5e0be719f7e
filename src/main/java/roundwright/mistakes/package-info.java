/**
 * From a count to what went wrong: explanations, the next check to ask for, advice, and who needs help.
 *
 * <p>Nobody can look at "41" and say what happened; the story of a beginner ({@code story}) says how likely every way to 41 is.
 * A student's reports are followed round by round through a chain of true counts ({@code chain}), so that a wrong count that
 * is followed by right ones turns out a miscount, and a start with 5 stitches explains 10, 15, 20. The rates of the story are
 * learned from the group ({@code learning}); {@code help} ranks who is stuck.
 *
 * <pre>
 * Explanations explanations = Explanations.of(pattern, reports, student -&gt; Rates.STORY);
 * Explanation newest = …explanations.of(student)…;
 * new Sentences(terms).causes(newest, newest.soFar());   // "One stitch was probably worked twice (64 %). It could also be …"
 * newest.question();                                     // the check that tells most, with its answers
 * new Adviser(pattern, pace).of(newest, earlier);        // pull back, put right or leave, with minutes and the line
 * GroupPicture.of(course, students, reports, sessions, marks, today).stuck();
 * </pre>
 *
 * <p>Everything here is a pure function of lines, reports and rates. To add a kind of mistake: a constant of {@code Kind}, its
 * place in the story (a misreading in {@code Reading}, a slip in {@code StepTable}, else {@code RoundStory}), its sentences in
 * the catalogue, and the same in the tests' {@code Enumeration}, which tells the story a second time without this code.
 */
package roundwright.mistakes;
