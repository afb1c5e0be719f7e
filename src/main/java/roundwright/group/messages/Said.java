package roundwright.group.messages;

/**
 * How a count was said.
 *
 * @param pulledBack whether it was counted after pulling back
 * @param sureness how surely such words mean it, however likely the count is
 * @param inferred whether the words say only that it is right, and the number is the pattern's
 */
record Said(int count, boolean pulledBack, double sureness, boolean inferred) {}
