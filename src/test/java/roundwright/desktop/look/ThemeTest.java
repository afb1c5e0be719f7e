package roundwright.desktop.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.UIManager;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Contrast of what is read and of what is seen, computed from the keys of both themes (WCAG 2.1, 1.4.3 and 1.4.11). */
class ThemeTest {
    private static final String OWN = "Roundwright.";
    private static final double TEXT = 4.5;
    private static final double GRAPHICS = 3;

    private record Pair(Theme theme, String front, String back, double least) {}

    private static final List<String> GROUNDS =
            List.of("background", "surface", "wash", "switch", "marigoldWash", "overWash", "underWash");

    /** Whatever is written in these can stand on every ground. */
    private static final List<String> WORDS = List.of("ink", "muted", "pine", "marigold", "over", "under");

    /** Hairlines between things that are told apart without them. */
    private static final List<String> ORNAMENT = List.of("line");

    static Stream<Pair> pairs() {
        return Stream.of(Theme.values()).flatMap(theme -> {
            Stream.Builder<Pair> pairs = Stream.builder();
            for (String back : GROUNDS) {
                WORDS.forEach(words -> pairs.add(new Pair(theme, words, back, TEXT)));
            }
            pairs.add(new Pair(theme, "onPine", "pine", TEXT));
            pairs.add(new Pair(theme, "onPine", "pineHover", TEXT));
            for (String bar : List.of("pine", "marigold", "ink")) {
                pairs.add(new Pair(theme, bar, "track", GRAPHICS));
            }
            for (String back : List.of("background", "surface")) {
                pairs.add(new Pair(theme, "edge", back, GRAPHICS));
                pairs.add(new Pair(theme, "thumb", back, GRAPHICS));
            }
            return pairs.build();
        });
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void everyColourOfAThemeIsHeldAgainstAnother(Theme theme) throws IOException {
        Set<String> paired = pairs().flatMap(pair -> Stream.of(pair.front(), pair.back()))
                .collect(Collectors.toCollection(TreeSet::new));
        paired.addAll(ORNAMENT);
        Properties keys = new Properties();
        String file = theme == Theme.DARK ? "FlatDarkLaf" : "FlatLightLaf";
        try (InputStream in = Theme.class.getResourceAsStream("/roundwright/desktop/look/" + file + ".properties")) {
            keys.load(in);
        }
        Set<String> colours = keys.stringPropertyNames().stream()
                .filter(key -> key.startsWith(OWN) && !key.startsWith(OWN + "wool."))
                .map(key -> key.substring(OWN.length()))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(colours, paired);
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void everyPairCanBeToldApart(Pair pair) {
        pair.theme().install(1);
        double found = Contrast.between(color(pair.front()), color(pair.back()));
        assertTrue(found >= pair.least(), pair + " has only " + found);
    }

    private static Color color(String key) {
        return UIManager.getColor(OWN + key);
    }
}
