package roundwright.notation;

/**
 * The two sets of words in which crochet patterns are written. The same letters mean different stitches:
 * UK {@code dc} is US {@code sc}, UK {@code tr} is US {@code dc}.
 */
public enum Terms {
    UK,
    US;

    public Terms other() {
        return this == UK ? US : UK;
    }
}
