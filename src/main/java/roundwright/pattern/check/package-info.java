/**
 * What a whole pattern must keep to beyond the sums of one round: parts that go on from others match them, rounds can be
 * worked by hands, and what is stuffed closes.
 *
 * <p>{@code PatternChecks.of(pattern).problems(line)} gives a line's own problems and those that its place in the whole
 * pattern brings. A new check is a class beside the others, named in {@code PatternChecks}.
 */
package roundwright.pattern.check;
