package roundwright.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import roundwright.wording.Wording;

/**
 * What became of a damaged file: exactly what was saved, and what was not.
 *
 * @param into the new file
 * @param saved how many rows of each table are in the new file
 * @param refused how many rows of each table were found and could not be kept, for they were broken or belong to what is lost
 * @param brokenRows rows of which no more can be said than that they were there
 * @param unreadablePages pages of the old file that could not be read, of {@code pages}
 * @param pages pages that the old file had
 * @param doubtfulTexts rows with letters that could not be read, each of which is now a mark
 * @param standIns what is now called by a made-up name, because its own row is lost
 */
public record Rescued(
        Path into,
        Map<String, Integer> saved,
        Map<String, Integer> refused,
        int brokenRows,
        int unreadablePages,
        int pages,
        int doubtfulTexts,
        List<String> standIns) {
    private static final Wording WORDS = Wording.of("store");

    /** Whether everything that the old file had is in the new one. */
    public boolean everything() {
        return refused.isEmpty() && brokenRows + unreadablePages + doubtfulTexts == 0 && standIns.isEmpty();
    }

    /** What the person is told, a sentence each. */
    public List<String> sentences() {
        List<String> said = new ArrayList<>();
        said.add(WORDS.say("rescued.saved", counted(saved)));
        if (everything()) {
            said.add(WORDS.say("rescued.everything"));
        }
        if (!refused.isEmpty()) {
            said.add(WORDS.say("rescued.refused", counted(refused)));
        }
        if (brokenRows > 0) {
            said.add(WORDS.say("rescued.broken", brokenRows));
        }
        if (unreadablePages > 0) {
            said.add(WORDS.say("rescued.pages", unreadablePages, pages));
        }
        if (doubtfulTexts > 0) {
            said.add(WORDS.say("rescued.doubtful", doubtfulTexts));
        }
        if (!standIns.isEmpty()) {
            said.add(WORDS.say("rescued.stand-ins", Wording.list(standIns)));
        }
        return said;
    }

    private static String counted(Map<String, Integer> rows) {
        List<String> each = rows.entrySet().stream()
                .filter(entry -> entry.getValue() > 0 && WORDS.has("table." + entry.getKey()))
                .map(entry -> WORDS.say("table." + entry.getKey(), entry.getValue()))
                .toList();
        return each.isEmpty() ? WORDS.say("rescued.nothing") : Wording.list(each);
    }
}
