package roundwright.sheet.content;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether two cautions say the same, so that a sheet says it once. */
final class Alike {
    private static final int SHORT_WORD = 3;

    /** Half of the shorter one's words: "Rest hands and eyes every half hour" twice, with other words around it. */
    private static final double SHARED = 0.5;

    private Alike() {}

    static boolean any(List<String> said, String more) {
        return said.stream().anyMatch(one -> alike(words(one), words(more)));
    }

    private static boolean alike(Set<String> one, Set<String> other) {
        long both = one.stream().filter(other::contains).count();
        return both > 0 && both >= SHARED * Math.min(one.size(), other.size());
    }

    private static Set<String> words(String text) {
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
                .filter(word -> word.length() > SHORT_WORD)
                .collect(Collectors.toSet());
    }
}
