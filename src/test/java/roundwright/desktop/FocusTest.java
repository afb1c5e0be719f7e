package roundwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Component;
import java.awt.DefaultKeyboardFocusManager;
import java.awt.Graphics2D;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JScrollBar;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.desktop.look.Contrast;
import roundwright.desktop.look.Sight;
import roundwright.desktop.look.Theme;
import roundwright.desktop.window.MainPanel;

/**
 * Where the keys go can be seen: each component is painted with the focus and without, and enough of it has to differ by a
 * contrast of 3 : 1 (WCAG 2.2, 2.4.7 and 2.4.13), in light and dark.
 */
@ExtendWith(OnEventThread.class)
class FocusTest {
    private static final double LEAST_CONTRAST = 3;

    /** Pixels that have to differ in something large: the ring round the box of a tick, a pixel wide. */
    private static final int ENOUGH = 72;

    private static final int ROUND = 4;

    private final Pretended focus = new Pretended();
    private KeyboardFocusManager before;

    /** Says that a component has the focus though there is no window. */
    private static final class Pretended extends DefaultKeyboardFocusManager {
        private Component owner;

        @Override
        public Component getFocusOwner() {
            return owner;
        }

        @Override
        public Component getPermanentFocusOwner() {
            return owner;
        }
    }

    @BeforeEach
    void pretend() {
        before = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        KeyboardFocusManager.setCurrentKeyboardFocusManager(focus);
    }

    @AfterEach
    void asItWas() {
        KeyboardFocusManager.setCurrentKeyboardFocusManager(before);
    }

    static List<Shown> everything() {
        return Shown.everything();
    }

    @ParameterizedTest
    @MethodSource("everything")
    void theFocusIsSeen(Shown shown) {
        List<String> unseen = new ArrayList<>();
        int looked = 0;
        for (Theme theme : Theme.values()) {
            theme.install(1);
            try (DeskOnFile file = new DeskOnFile()) {
                MainPanel panel = Pictures.layOut(shown.make().apply(file), 1280, 800);
                for (Component component :
                        Shown.reachable(panel).filter(FocusTest::takesFocus).toList()) {
                    looked++;
                    look(panel, (JComponent) component, theme, unseen);
                }
            }
        }
        assertEquals("", String.join("\n", unseen));
        assertTrue(looked > 0);
    }

    private static boolean takesFocus(Component component) {
        return component instanceof JComponent used
                && used.isFocusable()
                && used.isEnabled()
                && !(used instanceof JScrollBar)
                && used.getWidth() > 0
                && used.getHeight() > 0
                && !used.getClass().getName().startsWith("com.formdev")
                && !used.getClass().getName().contains("ComboBoxButton")
                && AccessibilityTest.usable(used);
    }

    private void look(MainPanel panel, JComponent component, Theme theme, List<String> unseen) {
        Sight.bring(
                component,
                component instanceof JTable table
                        ? table.getCellRect(table.getSelectedRow(), table.getSelectedColumn(), true)
                        : new Rectangle(component.getSize()));
        Rectangle place = SwingUtilities.convertRectangle(component, component.getVisibleRect(), panel);
        int needed = Math.min(ENOUGH, place.width + place.height);
        place.grow(ROUND, ROUND);
        place = place.intersection(new Rectangle(panel.getSize()));
        BufferedImage without = paint(panel, place, null);
        BufferedImage with = paint(panel, place, component);
        int differing = differing(without, with);
        if (differing < needed || needed == 0) {
            String name = component.getAccessibleContext().getAccessibleName();
            unseen.add(
                    theme + ": " + component.getClass().getName() + " '" + name + "': " + differing + " of " + needed);
        }
    }

    private BufferedImage paint(MainPanel panel, Rectangle place, Component owner) {
        focus.owner = owner;
        BufferedImage image =
                new BufferedImage(Math.max(1, place.width), Math.max(1, place.height), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.translate(-place.x, -place.y);
        graphics.setClip(place);
        panel.paint(graphics);
        graphics.dispose();
        focus.owner = null;
        return image;
    }

    private static int differing(BufferedImage one, BufferedImage other) {
        int count = 0;
        for (int x = 0; x < one.getWidth(); x++) {
            for (int y = 0; y < one.getHeight(); y++) {
                boolean same = one.getRGB(x, y) == other.getRGB(x, y);
                if (!same
                        && Contrast.between(new Color(one.getRGB(x, y)), new Color(other.getRGB(x, y)))
                                >= LEAST_CONTRAST) {
                    count++;
                }
            }
        }
        return count;
    }
}
