package roundwright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a pasted pattern to a planned course with a group and its sheets before the printer, with no more than twenty actions. */
class FirstMinutesWindowTest {
    private static final int MOST_ACTIONS = 20;
    private static final String PATTERN = """
            Rnd 1: 6 dc in magic ring (6)
            Rnd 2: inc x 6 (12)
            Rnd 3: (dc, inc) x 6 (18)
            Rnds 4-6: dc in each st around (18)
            Rnd 7: (dc, dec) x 6 (12)
            Rnd 8: dec x 6 (6)
            """;

    @TempDir
    private Path home;

    private WindowDriver hands;
    private int actions;

    @BeforeEach
    void openTheWindow() throws Exception {
        hands = new WindowDriver(home);
    }

    @AfterEach
    void closeTheWindow() {
        if (hands != null) {
            hands.close();
        }
    }

    private void press(int key, boolean withControl) {
        actions++;
        hands.press(key, withControl);
    }

    private void paste(String words) {
        actions++;
        hands.paste(words);
    }

    @Test
    void fromAPatternToSheetsBeforeThePrinter() throws Exception {
        WindowDriver.await("the samples", () -> hands.button("Open the sample Harbour light"));
        press(KeyEvent.VK_N, true);
        WindowDriver.await("the card", () -> hands.text("Name of the course"));
        paste(PATTERN);
        press(KeyEvent.VK_TAB, false);
        paste("Pebble");
        press(KeyEvent.VK_ENTER, false);
        WindowDriver.await(
                "the course", () -> Optional.of(hands.frame().getTitle()).filter(title -> title.startsWith("Pebble")));
        press(KeyEvent.VK_G, true);
        WindowDriver.await("the group's card", () -> hands.text("First session"));
        paste("Tuesdays");
        press(KeyEvent.VK_ENTER, false);
        WindowDriver.await("the group", () -> hands.button("Pebble, Tuesdays"));
        press(KeyEvent.VK_J, true);
        WindowDriver.await("the names' card", () -> hands.text("Names, one a line"));
        paste("Oda\nPiet\nRania");
        press(KeyEvent.VK_ENTER, true);
        press(KeyEvent.VK_P, true);
        WindowDriver.await("the sheets' card", () -> hands.button("Look and print"));
        press(KeyEvent.VK_ENTER, false);
        WindowDriver.await("the first page", () -> hands.named("Page 1 of"));
        press(KeyEvent.VK_PAGE_DOWN, false);
        WindowDriver.await("the second page", () -> hands.named("Page 2 of"));
        assertTrue(hands.button("Print").isPresent());
        assertTrue(actions < MOST_ACTIONS, actions + " actions, and the printing itself");
        assertEquals(List.of(), hands.misuses());
    }
}
