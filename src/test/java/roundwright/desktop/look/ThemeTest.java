package roundwright.desktop.look;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Contrast of what is read and of what is seen, computed from the keys of both themes (WCAG 2.1, 1.4.3 and 1.4.11). */
class ThemeTest {
    private static final double TEXT = 4.5;
    private static final double GRAPHICS = 3;

    private record Pair(Theme theme, Tone front, Tone back, double least) {}

    static Stream<Pair> pairs() {
        return Stream.of(Theme.values()).flatMap(theme -> {
            Stream.Builder<Pair> pairs = Stream.builder();
            for (Tone back : List.of(Tone.BACKGROUND, Tone.SURFACE, Tone.WASH)) {
                for (Tone text : List.of(Tone.INK, Tone.MUTED, Tone.PINE, Tone.MARIGOLD, Tone.OVER, Tone.UNDER)) {
                    pairs.add(new Pair(theme, text, back, TEXT));
                }
            }
            pairs.add(new Pair(theme, Tone.OVER, Tone.OVER_WASH, TEXT));
            pairs.add(new Pair(theme, Tone.UNDER, Tone.UNDER_WASH, TEXT));
            pairs.add(new Pair(theme, Tone.INK, Tone.OVER_WASH, TEXT));
            pairs.add(new Pair(theme, Tone.INK, Tone.UNDER_WASH, TEXT));
            pairs.add(new Pair(theme, Tone.MARIGOLD, Tone.MARIGOLD_WASH, TEXT));
            pairs.add(new Pair(theme, Tone.INK, Tone.SWITCH, TEXT));
            pairs.add(new Pair(theme, Tone.MUTED, Tone.SWITCH, TEXT));
            pairs.add(new Pair(theme, Tone.ON_PINE, Tone.PINE, TEXT));
            pairs.add(new Pair(theme, Tone.PINE, Tone.TRACK, GRAPHICS));
            pairs.add(new Pair(theme, Tone.MARIGOLD, Tone.TRACK, GRAPHICS));
            pairs.add(new Pair(theme, Tone.EDGE, Tone.SURFACE, GRAPHICS));
            pairs.add(new Pair(theme, Tone.EDGE, Tone.BACKGROUND, GRAPHICS));
            pairs.add(new Pair(theme, Tone.PINE, Tone.SWITCH, GRAPHICS));
            pairs.add(new Pair(theme, Tone.OVER, Tone.SURFACE, GRAPHICS));
            return pairs.build();
        });
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void everyPairCanBeToldApart(Pair pair) {
        pair.theme().install(1);
        double found = contrast(pair.front().color(), pair.back().color());
        assertTrue(found >= pair.least(), pair + " has only " + found);
    }

    private static double contrast(Color one, Color other) {
        double light = Math.max(luminance(one), luminance(other));
        double dark = Math.min(luminance(one), luminance(other));
        return (light + 0.05) / (dark + 0.05);
    }

    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
