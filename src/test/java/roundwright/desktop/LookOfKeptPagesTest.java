package roundwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import roundwright.desktop.action.Deed;
import roundwright.desktop.desk.Page;
import roundwright.desktop.look.Theme;
import roundwright.desktop.window.MainPanel;

/** A change of size reaches what is kept for later as well as what is seen. */
@ExtendWith(OnEventThread.class)
class LookOfKeptPagesTest {
    @Test
    void theLessonsBehindTheTextTakeTheNewSize() {
        Theme.LIGHT.install(1);
        try (DeskOnFile file = new DeskOnFile()) {
            file.course("harbour-light").desk().choosePage(Page.PLAN);
            MainPanel panel = Pictures.layOut(file.panel(), 1280, 800);
            List<Float> before = sizes(panel);
            panel.deeds().perform(Deed.EDIT_PATTERN);
            Theme.LIGHT.install(2);
            SwingUtilities.updateComponentTreeUI(panel);
            file.desk().choosePage(Page.NEXT);
            Theme.LIGHT.install(1);
            SwingUtilities.updateComponentTreeUI(panel);
            file.desk().choosePage(Page.PLAN);
            Inside.press(panel, "Back to the lessons");
            assertFalse(before.isEmpty());
            assertEquals(before, sizes(panel));
        }
    }

    private static List<Float> sizes(MainPanel panel) {
        return Inside.all(panel.shownPage())
                .map(component ->
                        component.getFont() == null ? 0f : component.getFont().getSize2D())
                .toList();
    }
}
