package roundwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.CellRendererPane;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JViewport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.desktop.look.Flowing;
import roundwright.desktop.look.Theme;
import roundwright.desktop.window.MainPanel;
import roundwright.wording.Wording;

/** Text three tenths longer, as in another language, breaks no page and no card: nothing is cut off, in the smallest window and in a large one. */
@ExtendWith(OnEventThread.class)
class LongerTextTest {
    private record Size(int width, int height, int zoom) {}

    private static final int LONGER = 30;
    private static final List<Size> SIZES =
            List.of(new Size(1024, 700, 1), new Size(1024, 700, 2), new Size(1600, 1000, 1), new Size(1600, 1000, 2));

    @AfterEach
    void asItIs() {
        Wording.lengthen(0);
    }

    static List<Shown> everything() {
        return Shown.everything();
    }

    @ParameterizedTest
    @MethodSource("everything")
    void nothingIsCutOff(Shown shown) {
        List<String> cut = new ArrayList<>();
        for (Size size : SIZES) {
            // what has room for longer words has room for its own
            Wording.lengthen(LONGER);
            Theme.LIGHT.install(size.zoom());
            try (DeskOnFile file = new DeskOnFile()) {
                MainPanel panel = shown.make().apply(file);
                Pictures.layOut(panel, size.width(), size.height());
                cutOff(panel).forEach(words -> cut.add(size + ": " + words));
            }
        }
        assertEquals("", String.join("\n", cut));
    }

    private static Stream<String> cutOff(Component component) {
        if (!component.isVisible() || component instanceof CellRendererPane || component instanceof JScrollBar) {
            return Stream.of();
        }
        Stream<String> own = Stream.of(component).filter(LongerTextTest::isCut).map(LongerTextTest::told);
        boolean whole = component instanceof JTable || component instanceof JComboBox;
        return component instanceof Container container && !whole
                ? Stream.concat(own, Stream.of(container.getComponents()).flatMap(LongerTextTest::cutOff))
                : own;
    }

    private static boolean isCut(Component component) {
        boolean inScroll = component.getParent() instanceof JViewport;
        boolean beyond = !inScroll
                && component.getParent() instanceof JComponent parent
                && !(parent instanceof JScrollPane)
                && component.getX() + component.getWidth() > parent.getWidth() + 1;
        return beyond && component.getWidth() > 0 || tooNarrow(component) || tooLow(component);
    }

    private static boolean tooNarrow(Component component) {
        boolean words = component instanceof JLabel label
                        && !String.valueOf(label.getText()).isBlank()
                || component instanceof AbstractButton button
                        && button.getText() != null
                        && !button.getText().isBlank()
                        && button.isContentAreaFilled();
        return words && component.getPreferredSize().width > component.getWidth() + 1;
    }

    private static boolean tooLow(Component component) {
        boolean scrolls = component.getParent() instanceof JViewport || component instanceof JScrollPane;
        return !scrolls
                && component instanceof Flowing flowing
                && !inAScroll(component)
                && flowing.heightFor(component.getWidth()) > component.getHeight() + 1;
    }

    /** What holds something that scrolls may be lower than all of it. */
    private static boolean inAScroll(Component component) {
        return component instanceof Container container
                && Inside.all(container).anyMatch(inner -> inner instanceof JScrollPane);
    }

    private static String told(Component component) {
        String name = component.getAccessibleContext() == null
                ? ""
                : component.getAccessibleContext().getAccessibleName();
        return component.getClass().getSimpleName() + " '" + name + "' " + component.getBounds() + " wants "
                + component.getPreferredSize() + " in "
                + component.getParent().getClass().getSimpleName();
    }
}
