package roundwright.desktop;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.desktop.look.Theme;
import roundwright.desktop.window.MainPanel;

/**
 * Paints every page, card and empty state into {@code target/pictures}, to be looked at; here is only held that something was
 * painted. In light and dark, small and large, with {@code mvn test -Dtest=PicturesTest -Dpictures=all}; otherwise each in the
 * smallest window at the largest zoom, where most goes wrong.
 */
@ExtendWith(OnEventThread.class)
class PicturesTest {
    private record Size(int width, int height, int zoom) {}

    private static final Size SMALLEST = new Size(1024, 700, 2);
    private static final List<Size> ALL_SIZES =
            List.of(new Size(1024, 700, 1), new Size(1600, 1000, 1), SMALLEST, new Size(1600, 1000, 2));
    private static final boolean ALL = "all".equals(System.getProperty("pictures"));
    private static final List<Size> SIZES = ALL ? ALL_SIZES : List.of(SMALLEST);
    private static final List<Theme> THEMES = ALL ? List.of(Theme.values()) : List.of(Theme.LIGHT);

    static List<Shown> everything() {
        return Shown.everything();
    }

    @ParameterizedTest
    @MethodSource("everything")
    void isPainted(Shown shown) {
        for (Theme theme : THEMES) {
            for (Size size : SIZES) {
                theme.install(size.zoom());
                try (DeskOnFile file = new DeskOnFile()) {
                    MainPanel panel = Pictures.layOut(shown.make().apply(file), size.width(), size.height());
                    BufferedImage image = Pictures.paint(panel);
                    String look = theme.name().toLowerCase(Locale.ROOT);
                    Pictures.write(image, shown.name() + "-" + size.width() + "-" + size.zoom() + "00-" + look);
                    assertTrue(colours(image) > 8, shown.name() + " is empty");
                }
            }
        }
    }

    private static int colours(BufferedImage image) {
        Set<Integer> found = new HashSet<>();
        for (int x = 0; x < image.getWidth(); x += 3) {
            for (int y = 0; y < image.getHeight(); y += 3) {
                found.add(image.getRGB(x, y));
            }
        }
        return found.size();
    }
}
