package roundwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JTable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.desktop.action.Deed;
import roundwright.desktop.desk.Page;
import roundwright.desktop.look.Painted;
import roundwright.desktop.look.Theme;
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

    @ParameterizedTest
    @EnumSource(Page.class)
    void everythingOnAPageHasAName(Page page) {
        try (DeskOnFile file = new DeskOnFile()) {
            assertEquals(List.of(), nameless(panel(file, page)));
        }
    }

    @Test
    void everythingOnTheWelcomeHasAName() {
        try (DeskOnFile file = new DeskOnFile()) {
            MainPanel panel = Pictures.layOut(file.panel(), 1280, 800);
            assertEquals(List.of(), nameless(panel));
            assertTrue(all(panel).filter(AbstractButton.class::isInstance).count() >= 5);
        }
    }

    static List<Deed> askingDeeds() {
        return List.of(
                Deed.FIND,
                Deed.SPLIT,
                Deed.DATES,
                Deed.PLAN_REST,
                Deed.PASTE_PATTERN,
                Deed.ADD_GROUP,
                Deed.ADD_STUDENTS,
                Deed.EDIT_STUDENT,
                Deed.BACKUPS,
                Deed.ERASE_STUDENT,
                Deed.REGISTER,
                Deed.SAVE_COUNTS,
                Deed.NOTE,
                Deed.KEYS,
                Deed.ABOUT,
                Deed.SHEETS,
                Deed.PASTE_MESSAGES,
                Deed.EDIT_PATTERN);
    }

    @ParameterizedTest
    @MethodSource("askingDeeds")
    void everythingThatIsAskedHasAName(Deed deed) {
        try (DeskOnFile file = new DeskOnFile()) {
            MainPanel panel = panel(file, Page.COUNTS);
            if (deed == Deed.EDIT_PATTERN) {
                panel.deeds().perform(Deed.PLAN);
            }
            panel.deeds().perform(deed);
            Pictures.layOut(panel, 1280, 800);
            assertEquals(List.of(), nameless(panel));
        }
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

    /** Components that can be used, or that show something painted, and do not say what they are. */
    private static List<String> nameless(Container root) {
        return all(root)
                .filter(AccessibilityTest::speaks)
                .filter(component -> isBlank(component.getAccessibleContext()))
                .map(component -> component.getClass().getName() + " in "
                        + component.getParent().getClass().getName())
                .toList();
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
    private static boolean usable(JComponent component) {
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
