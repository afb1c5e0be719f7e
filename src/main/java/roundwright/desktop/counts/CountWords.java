package roundwright.desktop.counts;

import roundwright.group.RoundStanding;
import roundwright.wording.Wording;

/** A count told in words: what was said, and how it stands to the pattern. */
final class CountWords {
    private static final Wording WORDS = Wording.of("desktop");

    private CountWords() {}

    static String of(RoundStanding cell) {
        int count = cell.count().orElse(0);
        return switch (cell.state()) {
            case NOT_YET -> WORDS.say("cell-not-yet");
            case NOT_REPORTED -> WORDS.say("cell-not-reported");
            case RIGHT -> WORDS.say("cell-right", count);
            case OVER -> WORDS.say("cell-over", count, cell.difference());
            case UNDER -> WORDS.say("cell-under", count, -cell.difference());
            case COUNTED -> WORDS.say("cell-counted", count);
            case UNFINISHED ->
                cell.count().isPresent() ? WORDS.say("cell-unfinished-at", count) : WORDS.say("cell-unfinished");
            case PULLED_BACK -> WORDS.say("cell-pulled-back");
        };
    }
}
