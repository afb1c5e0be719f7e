package roundwright.desktop;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.swing.AbstractButton;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import roundwright.desktop.action.Deed;
import roundwright.desktop.desk.Page;
import roundwright.desktop.look.Switch;
import roundwright.desktop.look.Theme;
import roundwright.desktop.messages.MessagesCard;
import roundwright.desktop.safety.Details;
import roundwright.desktop.safety.TroubleCard;
import roundwright.desktop.tables.ImportCard;
import roundwright.desktop.welcome.Samples;
import roundwright.desktop.window.MainPanel;
import roundwright.desktop.work.Work;
import roundwright.group.RoundPlace;
import roundwright.group.counts.NotATable;
import roundwright.group.counts.Table;

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

    /** A state of the window to be looked at. */
    private interface State {
        MainPanel make(DeskOnFile file);
    }

    @Test
    void welcome() {
        paint("welcome", DeskOnFile::panel);
    }

    @Test
    void plan() {
        paint("plan", file -> onPage(file, Page.PLAN));
    }

    @Test
    void planBesideLessonAndCourse() {
        for (int place : new int[] {1, 2}) {
            paint("plan-side-" + place, file -> {
                MainPanel panel = onPage(file, Page.PLAN);
                press(panel, place);
                return panel;
            });
        }
    }

    private static void press(MainPanel panel, int place) {
        ((AbstractButton) Inside.first(panel, Switch.class).getComponent(place)).doClick();
    }

    @Test
    void planWithoutLessons() {
        paint("plan-empty", file -> {
            String text = Samples.text("harbour-light").orElseThrow();
            file.course("harbour-light", text.substring(0, text.indexOf("## Lesson 1")));
            return file.panel();
        });
    }

    @Test
    void planningCards() {
        for (Deed deed : List.of(Deed.SPLIT, Deed.DATES, Deed.PLAN_REST, Deed.RENAME_LESSON)) {
            paint("card-" + deed.name().toLowerCase(Locale.ROOT), file -> {
                MainPanel panel = onPage(file, Page.PLAN);
                panel.deeds().perform(deed);
                return panel;
            });
        }
    }

    @Test
    void counts() {
        paint("counts", file -> onPage(file, Page.COUNTS));
    }

    @Test
    void editor() {
        paint("editor", file -> {
            String text =
                    Samples.text("harbour-light").orElseThrow().replace("(dc, inc) x 6 (18)", "(dc, inc) x 6 (20)");
            file.course("harbour-light", text).desk().choosePage(Page.PLAN);
            MainPanel panel = file.panel();
            panel.deeds().perform(Deed.EDIT_PATTERN);
            return panel;
        });
    }

    @Test
    void stuck() {
        paint("stuck", file -> onPage(file, Page.STUCK));
    }

    @Test
    void next() {
        paint("next", file -> onPage(file, Page.NEXT));
    }

    @Test
    void countsWithoutStudents() {
        paint("counts-empty", file -> {
            file.course("harbour-light").desk().choosePage(Page.COUNTS);
            return file.panel();
        });
    }

    @Test
    void cards() {
        for (Deed deed : List.of(
                Deed.FIND,
                Deed.REGISTER,
                Deed.ADD_STUDENTS,
                Deed.PASTE_PATTERN,
                Deed.KEYS,
                Deed.ABOUT,
                Deed.EDIT_STUDENT,
                Deed.BACKUPS,
                Deed.ERASE_STUDENT)) {
            paint("card-" + deed.name().toLowerCase(Locale.ROOT), file -> {
                MainPanel panel = onPage(file, Page.COUNTS);
                panel.deeds().perform(deed);
                return panel;
            });
        }
    }

    @Test
    void tables() {
        paint("card-import", file -> {
            MainPanel panel = onPage(file, Page.COUNTS);
            String name = file.desk().students().get(0).name();
            String text = "Tuesday group\nName;Piece;Rnd;Sts;Remark\n" + name
                    + ";Tower;22;30;\nRuby;Tower;22;31;asked twice\n" + name + ";Tower;99;12;\n" + name
                    + ";Tower;23;thirty;\n";
            panel.ask(new ImportCard(file.desk(), panel, Work.atOnce(), "tuesday.csv", List.of(table(text))));
            return panel;
        });
        paint("card-export", file -> {
            MainPanel panel = onPage(file, Page.COUNTS);
            panel.deeds().perform(Deed.SAVE_COUNTS);
            return panel;
        });
    }

    @Test
    void messages() {
        paint("card-messages", file -> {
            MainPanel panel = onPage(file, Page.COUNTS);
            String first = file.desk().students().get(0).name();
            String second = file.desk().students().get(1).name();
            MessagesCard card = new MessagesCard(file.desk(), panel);
            card.paste("[16/03/2027, 19:12] " + first + ": tower round 22 was 34, then 33 after I pulled back\n"
                    + "[16/03/2027, 19:14] " + first + ": still on tower r23, 12 so far. Hook is 4 mm, right?\n"
                    + "[16/03/2027, 19:20] " + second + ": Tower r22 33 or 34, can't tell. r23 is two short\n"
                    + "[16/03/2027, 19:31] " + second + ": oh and I once had 36");
            panel.ask(card);
            return panel;
        });
    }

    private static Table table(String text) {
        try {
            return Table.of(text);
        } catch (NotATable refused) {
            throw new AssertionError(refused);
        }
    }

    @Test
    void trouble() {
        paint("card-trouble", file -> {
            MainPanel panel = onPage(file, Page.COUNTS);
            panel.ask(new TroubleCard(Details.of(new IllegalStateException()), panel::close, () -> {}));
            return panel;
        });
    }

    @Test
    void notice() {
        paint("notice", file -> {
            MainPanel panel = onPage(file, Page.COUNTS);
            file.desk().tell("The file could not be written: the disk is full. Make room and type the count again.");
            return panel;
        });
    }

    private static MainPanel onPage(DeskOnFile file, Page page) {
        file.course("harbour-light").group(8);
        file.desk().choosePage(page);
        file.desk().choosePlace(new RoundPlace("Tower", 22));
        file.desk().chooseStudent(file.desk().students().get(3).id());
        return file.panel();
    }

    private static void paint(String name, State state) {
        for (Theme theme : THEMES) {
            for (Size size : SIZES) {
                theme.install(size.zoom());
                try (DeskOnFile file = new DeskOnFile()) {
                    MainPanel panel = Pictures.layOut(state.make(file), size.width(), size.height());
                    BufferedImage image = Pictures.paint(panel);
                    String look = theme.name().toLowerCase(Locale.ROOT);
                    Pictures.write(image, name + "-" + size.width() + "-" + size.zoom() + "00-" + look);
                    assertTrue(colours(image) > 8, name + " is empty");
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
