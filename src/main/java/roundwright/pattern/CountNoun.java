package roundwright.pattern;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import roundwright.notation.Vocabulary;

/** Finds the writer's own word for a counted stitch: the one that most lines end with, after a number ("…, 18 p."). */
final class CountNoun {
    private static final int ENOUGH = 3;
    private static final int LONGEST = 12;

    private final Map<String, Integer> ends = new HashMap<>();
    private int lines;

    void see(String text) {
        lines++;
        int end = text.length();
        while (end > 0 && ".)]} ".indexOf(text.charAt(end - 1)) >= 0) {
            end--;
        }
        int begin = end;
        while (begin > 0 && end - begin <= LONGEST && Character.isLetter(text.charAt(begin - 1))) {
            begin--;
        }
        int number = begin > 0 && text.charAt(begin - 1) == ' ' ? begin - 1 : begin;
        boolean counted = number > 0 && Character.isDigit(text.charAt(number - 1));
        if (counted && end > begin && end - begin <= LONGEST) {
            ends.merge(text.substring(begin, end).toLowerCase(Locale.ROOT), 1, Integer::sum);
        }
    }

    /** The word, where it ends at least half of the lines and is none that rounds are written with. */
    Optional<String> word() {
        for (Map.Entry<String, Integer> end : ends.entrySet()) {
            boolean most = end.getValue() >= ENOUGH && 2 * end.getValue() >= lines;
            if (most && Vocabulary.mayCount(end.getKey())) {
                return Optional.of(end.getKey());
            }
        }
        return Optional.empty();
    }
}
