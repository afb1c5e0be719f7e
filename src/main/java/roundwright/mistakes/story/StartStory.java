package roundwright.mistakes.story;

/** A part's first round, into a ring or on a foundation: nothing lies below it, and it may begin a stitch or two wrong. */
public final class StartStory implements Story {
    private final Landing landing;

    /** A start that is written to have {@code written} stitches. */
    public StartStory(int written, Rates rates) {
        Rows.Collector collector = new Rows.Collector();
        for (int error = -2; error <= 2; error++) {
            int code = error == 0 ? 0 : Kinds.code(Kind.WRONG_START);
            collector.add(Math.max(0, written + error), code, rates.starts(error));
        }
        this.landing = new Landing(collector.rows(), new double[] {0, 0, 0, 1, 0, 0, 0});
    }

    @Override
    public Landing at(int below) {
        return landing;
    }
}
