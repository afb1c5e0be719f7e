package roundwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Stream;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.desktop.action.Deed;
import roundwright.desktop.chart.ChartPanel;
import roundwright.desktop.desk.Page;
import roundwright.desktop.look.Painted;
import roundwright.desktop.look.Theme;
import roundwright.desktop.strip.StripPanel;
import roundwright.desktop.window.MainPanel;

/** Walks through every component of every page and card: what can be used has a name, and all of it can be reached. */
@ExtendWith(OnEventThread.class)
class AccessibilityTest {
    @BeforeEach
    void light() {
        Theme.LIGHT.install(1);
    }

    private static MainPanel panel(DeskOnFile file, Page page) {
        file.course("harbour-light").group(6);
        file.desk().choosePage(page);
        return Pictures.layOut(file.panel(), 1280, 800);
    }

    static List<Shown> everything() {
        return Shown.everything();
    }

    @ParameterizedTest
    @MethodSource("everything")
    void everythingSaysWhatItIs(Shown shown) {
        try (DeskOnFile file = new DeskOnFile()) {
            MainPanel panel = Pictures.layOut(shown.make().apply(file), 1280, 800);
            List<String> dumb = Shown.reachable(panel)
                    .filter(AccessibilityTest::speaks)
                    .flatMap(component -> AccessibilityTest.lacks(component)
                            .map(what -> what + ": " + component.getClass().getName() + " '"
                                    + component.getAccessibleContext().getAccessibleName() + "' in "
                                    + component.getParent().getClass().getName()))
                    .toList();
            assertEquals("", String.join("\n", dumb));
            assertTrue(Shown.reachable(panel).filter(AccessibilityTest::speaks).count() >= 1, "nothing can be used");
        }
    }

    /** What a component does not say of itself. A name alone does not tell what a picture shows, an icon does or a field takes. */
    private static Stream<String> lacks(Component component) {
        AccessibleContext context = component.getAccessibleContext();
        AccessibleRole role = context.getAccessibleRole();
        boolean icon = component instanceof AbstractButton button
                && button.getIcon() != null
                && (button.getText() == null || button.getText().isBlank());
        boolean needsMore = icon
                || component instanceof StripPanel
                || component instanceof ChartPanel
                || component instanceof JTextField
                || component instanceof JTable;
        List<String> lacking = new ArrayList<>();
        if (isBlank(context)) {
            lacking.add("name");
        }
        if (role == null || AccessibleRole.UNKNOWN.equals(role) || AccessibleRole.SWING_COMPONENT.equals(role)) {
            lacking.add("role");
        }
        if (needsMore
                && String.valueOf(context.getAccessibleDescription())
                        .replace("null", "")
                        .isBlank()) {
            lacking.add("description");
        }
        return lacking.stream();
    }

    @Test
    void noKeyDoesTwoThings() {
        List<KeyStroke> strokes =
                Stream.of(Deed.values()).flatMap(deed -> deed.stroke().stream()).toList();
        assertEquals(List.copyOf(new LinkedHashSet<>(strokes)), strokes);
    }

    @Test
    void everyCellOfTheCountsIsToldInWords() {
        try (DeskOnFile file = new DeskOnFile()) {
            MainPanel panel = panel(file, Page.COUNTS);
            List<String> told = new ArrayList<>();
            all(panel).filter(JTable.class::isInstance).map(JTable.class::cast).forEach(table -> {
                for (int row = 0; row < table.getRowCount(); row++) {
                    for (int column = 0; column < table.getColumnCount(); column++) {
                        Component cell = table.prepareRenderer(table.getCellRenderer(row, column), row, column);
                        told.add(cell.getAccessibleContext().getAccessibleName());
                    }
                }
            });
            assertTrue(told.size() > 30);
            assertTrue(told.stream().allMatch(words -> words != null && !words.isBlank()), told.toString());
        }
    }

    private static boolean speaks(Component component) {
        boolean inner = component.getClass().getName().startsWith("com.formdev")
                || component.getClass().getName().startsWith("javax.swing.JScrollBar")
                || component.getClass().getName().contains("ComboBoxButton");
        return component.isVisible()
                && !inner
                && component instanceof Accessible
                && (component instanceof Painted
                        || component instanceof JComponent used && used.isFocusable() && usable(used));
    }

    /** Swing lets everything have the focus; what has keys or the pointer of its own is meant to be used. */
    static boolean usable(JComponent component) {
        return component instanceof AbstractButton
                || component instanceof javax.swing.text.JTextComponent
                || component instanceof JTable
                || component instanceof javax.swing.JComboBox
                || component.getInputMap().size() > 0;
    }

    private static boolean isBlank(AccessibleContext context) {
        return context == null
                || context.getAccessibleName() == null
                || context.getAccessibleName().isBlank();
    }

    private static Stream<Component> all(Component component) {
        Stream<Component> own = Stream.of(component);
        return component instanceof Container container
                ? Stream.concat(own, Stream.of(container.getComponents()).flatMap(AccessibilityTest::all))
                : own;
    }
}
