package roundwright.mistakes.story;

import java.util.Arrays;
import java.util.Optional;

/** A way in which a beginner goes wrong. What a person reads is a sentence, never the word of the kind. */
public enum Kind {
    /** A stitch below was passed over. */
    SKIPPED("skipped", Per.STEP, 0.004),
    /** The hook went into the stitch just worked once more. */
    WORKED_TWICE("worked-twice", Per.STEP, 0.005),
    /** One plain stitch where an increase was due. */
    INCREASE_MISSED("increase-missed", Per.INCREASE, 0.03),
    /** One plain stitch where a decrease was due. */
    DECREASE_MISSED("decrease-missed", Per.DECREASE, 0.04),
    /** The bracket was worked once too few. */
    REPEAT_SHORT("repeat-short", Per.REPEAT, 0.008),
    /** The bracket was worked once too often. */
    REPEAT_EXTRA("repeat-extra", Per.REPEAT, 0.006),
    /** The bracket was worked a single time, then plain stitches. */
    REPEAT_ONCE("repeat-once", Per.REPEAT, 0.004),
    /** Every run of plain stitches in the bracket was one longer. */
    RUNS_LONG("runs-long", Per.RUNS, 0.004),
    /** Every run of plain stitches in the bracket was one shorter. */
    RUNS_SHORT("runs-short", Per.RUNS, 0.004),
    /** A plain stitch in each stitch, no increase or decrease at all. */
    SHAPING_LEFT_OUT("shaping-left-out", Per.SHAPING, 0.006),
    /** The round before or after was worked. */
    WRONG_LINE("wrong-line", Per.ROUND, 0.008),
    /** The round was ended up to three stitches before the marker. */
    STOPPED_SHORT("stopped-short", Per.ROUND, 0.012),
    /** The round was ended up to three stitches past the marker. */
    RAN_PAST("ran-past", Per.ROUND, 0.012),
    /** The ring or the foundation had another count than written. */
    WRONG_START("wrong-start", Per.PART, 0.03),
    /** The work has another count than was reported. */
    MISCOUNTED("miscounted", Per.REPORT, 0.04);

    /** What gives a chance for a mistake of a kind. */
    public enum Per {
        STEP,
        INCREASE,
        DECREASE,
        /** A round with a bracketed repeat of two or more steps, taken at least twice. */
        REPEAT,
        /** Such a round with plain stitches in the bracket. */
        RUNS,
        /** A round with an increase or a decrease. */
        SHAPING,
        ROUND,
        PART,
        REPORT
    }

    private final String word;
    private final Per per;
    private final double startingRate;

    Kind(String word, Per per, double startingRate) {
        this.word = word;
        this.per = per;
        this.startingRate = startingRate;
    }

    /** The name for it in files and JSON: {@code worked-twice}. */
    public String word() {
        return word;
    }

    public Per per() {
        return per;
    }

    /** Its chance before anything was learned; a judgement, no figure of a study. */
    public double startingRate() {
        return startingRate;
    }

    /** The kind of a word, where there is one. */
    public static Optional<Kind> of(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }
}
