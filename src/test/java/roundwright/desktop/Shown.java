package roundwright.desktop;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import roundwright.desktop.action.Deed;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.desk.Page;
import roundwright.desktop.safety.Details;
import roundwright.desktop.safety.TroubleCard;
import roundwright.desktop.tables.ImportCard;
import roundwright.desktop.window.MainPanel;
import roundwright.desktop.work.Work;
import roundwright.group.RoundPlace;
import roundwright.group.counts.NotATable;
import roundwright.group.counts.Table;

/** Every page and every card of the window, each over a file of its own. */
record Shown(String name, Function<DeskOnFile, MainPanel> make) {
    private static final List<Deed> FROM_PLAN =
            List.of(Deed.SPLIT, Deed.DATES, Deed.PLAN_REST, Deed.RENAME_LESSON, Deed.EDIT_PATTERN);

    private static final List<Deed> FROM_COUNTS = List.of(
            Deed.FIND,
            Deed.SAMPLE_COURSE,
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
            Deed.PASTE_MESSAGES);

    static List<Shown> everything() {
        List<Shown> all = new ArrayList<>();
        all.add(new Shown("welcome", DeskOnFile::panel));
        for (Page page : Page.values()) {
            all.add(new Shown("page " + told(page), file -> on(file, page)));
        }
        FROM_PLAN.forEach(deed -> all.add(asked(Page.PLAN, deed)));
        FROM_COUNTS.forEach(deed -> all.add(asked(Page.COUNTS, deed)));
        all.add(new Shown("import", Shown::importing));
        all.add(new Shown("trouble", Shown::trouble));
        return all;
    }

    private static String told(Enum<?> which) {
        return which.name().toLowerCase(Locale.ROOT);
    }

    private static Shown asked(Page page, Deed deed) {
        return new Shown("card " + told(deed), file -> {
            MainPanel panel = on(file, page);
            panel.deeds().perform(deed);
            return panel;
        });
    }

    private static MainPanel on(DeskOnFile file, Page page) {
        file.course("harbour-light").group(6);
        file.desk().choosePage(page);
        file.desk().choosePlace(new RoundPlace("Tower", 22));
        file.desk().chooseStudent(file.desk().students().get(3).id());
        return file.panel();
    }

    private static MainPanel importing(DeskOnFile file) {
        MainPanel panel = on(file, Page.COUNTS);
        String name = file.desk().students().get(0).name();
        String text = "Name;Piece;Rnd;Sts\n" + name + ";Tower;22;30\nRuby;Tower;22;31\n" + name + ";Tower;23;thirty\n";
        try {
            panel.ask(new ImportCard(file.desk(), panel, Work.atOnce(), "tuesday.csv", List.of(Table.of(text))));
        } catch (NotATable refused) {
            throw new AssertionError(refused);
        }
        return panel;
    }

    private static MainPanel trouble(DeskOnFile file) {
        MainPanel panel = on(file, Page.COUNTS);
        panel.ask(new TroubleCard(Details.of(new IllegalStateException()), panel::close, () -> {}));
        return panel;
    }

    /** What can be reached in a window: the card alone while there is one. */
    static Stream<Component> reachable(MainPanel panel) {
        Container root = panel.asking() ? Inside.first(panel, AskCard.class) : panel;
        return seen(root);
    }

    private static Stream<Component> seen(Component component) {
        if (!component.isVisible()) {
            return Stream.of();
        }
        Stream<Component> own = Stream.of(component);
        return component instanceof Container container
                ? Stream.concat(own, Stream.of(container.getComponents()).flatMap(Shown::seen))
                : own;
    }

    @Override
    public String toString() {
        return name;
    }
}
