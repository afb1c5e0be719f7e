package roundwright.desktop.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.desktop.DeskOnFile;
import roundwright.desktop.OnEventThread;
import roundwright.desktop.desk.Page;
import roundwright.desktop.look.Theme;
import roundwright.group.RoundPlace;

@ExtendWith(OnEventThread.class)
class FinderTest {
    private DeskOnFile file;
    private Finder finder;

    private record Case(String typed, String first) {}

    @BeforeEach
    void open() {
        Theme.LIGHT.install(1);
        file = new DeskOnFile().course("harbour-light").group(8);
        finder = new Finder(file.desk());
    }

    @AfterEach
    void close() {
        file.close();
    }

    static List<Case> cases() {
        return List.of(
                new Case("gallery 4", "Gallery, round 4"),
                new Case("GALLERY   4", "Gallery, round 4"),
                new Case("37", "Tower, round 37"),
                new Case("round 36", "Tower, round 36"),
                new Case("red band", "Lesson 4: Red band"),
                new Case("lesson 6", "Lesson 6: The gallery"),
                new Case("invisible", "invisible decrease"),
                new Case("crab", "crab stitch"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theLikeliestComesFirst(Case sought) {
        List<Found> found = finder.find(sought.typed());
        assertEquals(sought.first(), found.get(0).words(), found.toString());
    }

    @Test
    void goingThereChoosesTheRound() {
        finder.find("gallery 4").get(0).go().run();
        assertEquals(Optional.of(new RoundPlace("Gallery", 4)), file.desk().place());
    }

    @Test
    void aStudentIsFoundByTheFirstLetters() {
        String name = file.desk().students().get(5).name();
        Found found = finder.find(name.substring(0, 3)).get(0);
        assertEquals(name, found.words());
        found.go().run();
        Finder.showPage(file.desk(), found);
        assertEquals(Optional.of(name), file.desk().student().map(student -> student.name()));
        assertEquals(Page.COUNTS, file.desk().choice().page());
    }

    @Test
    void hiddenNamesAreNotFound() {
        String name = file.desk().students().get(5).name();
        file.desk().hideNames(true);
        assertTrue(finder.find(name).isEmpty());
    }

    @Test
    void nothingIsFoundForNothing() {
        assertEquals(List.of(), finder.find("  "));
        assertEquals(List.of(), finder.find("no such thing"));
    }
}
