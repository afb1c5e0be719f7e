package roundwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import roundwright.desktop.action.Deed;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Page;
import roundwright.desktop.editor.EditorCard;
import roundwright.desktop.look.Theme;
import roundwright.desktop.window.MainPanel;
import roundwright.store.StoreException;
import roundwright.workbook.CourseEdit;

/** What is no longer shown is no longer told of changes: nothing piles up in a day of work. */
@ExtendWith(OnEventThread.class)
class ListeningTest {
    @Test
    void theTextOpenedAndLeftTenTimesListensNoMore() {
        Theme.LIGHT.install(1);
        try (DeskOnFile file = new DeskOnFile()) {
            file.course("harbour-light").desk().choosePage(Page.PLAN);
            MainPanel panel = Pictures.layOut(file.panel(), 1280, 800);
            editAndLeave(panel);
            int once = file.desk().listeners();
            for (int i = 0; i < 10; i++) {
                editAndLeave(panel);
            }
            assertEquals(once, file.desk().listeners());
        }
    }

    @Test
    void askingForTheTextTwiceOpensItOnce() {
        Theme.LIGHT.install(1);
        try (DeskOnFile file = new DeskOnFile()) {
            file.course("harbour-light").desk().choosePage(Page.PLAN);
            MainPanel panel = Pictures.layOut(file.panel(), 1280, 800);
            panel.deeds().perform(Deed.EDIT_PATTERN);
            EditorCard shown = Inside.first(panel, EditorCard.class);
            int listening = file.desk().listeners();
            panel.deeds().perform(Deed.EDIT_PATTERN);
            assertEquals(shown, Inside.first(panel, EditorCard.class));
            assertEquals(listening, file.desk().listeners());
        }
    }

    @Test
    void aWindowThatIsGoneIsToldOfNothing() {
        Theme.LIGHT.install(1);
        try (DeskOnFile file = new DeskOnFile()) {
            file.course("harbour-light").panel();
            Desk desk = file.desk();
            assertTrue(desk.listeners() > 0);
            desk.leave();
            assertEquals(0, desk.listeners());
            int known = desk.view().courses().size();
            desk.workbook().apply(new CourseEdit.AddCourse(desk.workbook().newCourse(), "Pebble", "# Pebble"));
            assertEquals(known, desk.view().courses().size());
        } catch (StoreException failure) {
            throw new AssertionError(failure);
        }
    }

    private static void editAndLeave(MainPanel panel) {
        panel.deeds().perform(Deed.EDIT_PATTERN);
        Inside.press(panel, "Back to the lessons");
    }
}
