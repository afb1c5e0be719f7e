package roundwright.desktop;

import java.awt.Component;
import java.awt.Container;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import roundwright.desktop.action.Deed;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.desk.Page;
import roundwright.desktop.look.Switch;
import roundwright.desktop.messages.MessagesCard;
import roundwright.desktop.safety.DamageCard;
import roundwright.desktop.safety.Details;
import roundwright.desktop.safety.ToldCard;
import roundwright.desktop.safety.TroubleCard;
import roundwright.desktop.tables.BlockPaste;
import roundwright.desktop.tables.ImportCard;
import roundwright.desktop.tables.TableFiles;
import roundwright.desktop.welcome.Samples;
import roundwright.desktop.window.MainPanel;
import roundwright.desktop.work.Work;
import roundwright.group.RoundPlace;
import roundwright.group.counts.NotATable;
import roundwright.group.counts.Table;
import roundwright.store.Backup;
import roundwright.wording.Wording;

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
            all.add(new Shown(told(page), file -> on(file, page)));
        }
        FROM_PLAN.forEach(deed -> all.add(asked(Page.PLAN, deed)));
        FROM_COUNTS.forEach(deed -> all.add(asked(Page.COUNTS, deed)));
        all.add(new Shown("plan-beside-lesson", file -> planBeside(file, 1)));
        all.add(new Shown("plan-beside-course", file -> planBeside(file, 2)));
        all.add(new Shown("plan-empty", Shown::planWithoutLessons));
        all.add(new Shown("counts-empty", Shown::countsWithoutStudents));
        all.add(new Shown("plan-mistake", Shown::mistakeInThePattern));
        all.add(new Shown("editor-mistake", Shown::mistakeInTheText));
        all.add(new Shown("notice", Shown::notice));
        all.add(new Shown("card-messages", Shown::messages));
        all.add(new Shown("card-import", Shown::importing));
        all.add(new Shown("card-misfits", Shown::misfits));
        all.add(new Shown("card-progress", file -> makingSheets(file, Work.never())));
        all.add(new Shown("card-print", file -> makingSheets(file, Work.atOnce())));
        all.add(new Shown(
                "card-trouble",
                file -> over(
                        file,
                        panel -> new TroubleCard(Details.of(new IllegalStateException()), panel::close, () -> {}))));
        all.add(new Shown("card-damage", Shown::damage));
        all.add(new Shown("card-told", Shown::told));
        return all;
    }

    private static String told(Enum<?> which) {
        return which.name().toLowerCase(Locale.ROOT);
    }

    private static Shown asked(Page page, Deed deed) {
        return new Shown("card-" + told(deed), file -> {
            MainPanel panel = on(file, page);
            panel.deeds().perform(deed);
            return panel;
        });
    }

    private static MainPanel on(DeskOnFile file, Page page) {
        return on(file, page, Work.atOnce());
    }

    private static MainPanel on(DeskOnFile file, Page page, Work longWork) {
        file.course("harbour-light").group(6);
        file.desk().choosePage(page);
        file.desk().choosePlace(new RoundPlace("Tower", 22));
        file.desk().chooseStudent(file.desk().students().get(3).id());
        return file.panel(longWork);
    }

    private static MainPanel over(DeskOnFile file, Function<MainPanel, AskCard> card) {
        MainPanel panel = on(file, Page.COUNTS);
        panel.ask(card.apply(panel));
        return panel;
    }

    private static MainPanel planBeside(DeskOnFile file, int place) {
        MainPanel panel = on(file, Page.PLAN);
        ((AbstractButton) Inside.first(panel, Switch.class).getComponent(place)).doClick();
        return panel;
    }

    private static MainPanel planWithoutLessons(DeskOnFile file) {
        String text = Samples.text("harbour-light").orElseThrow();
        file.course("harbour-light", text.substring(0, text.indexOf("## Lesson 1")));
        return file.panel();
    }

    private static MainPanel countsWithoutStudents(DeskOnFile file) {
        file.course("harbour-light").desk().choosePage(Page.COUNTS);
        return file.panel();
    }

    private static MainPanel mistakeInThePattern(DeskOnFile file) {
        String text = Samples.text("harbour-light").orElseThrow().replace("(dc, inc) x 6 (18)", "(dc, inc) x 6 (20)");
        file.course("harbour-light", text).desk().choosePage(Page.PLAN);
        return file.panel();
    }

    private static MainPanel mistakeInTheText(DeskOnFile file) {
        MainPanel panel = mistakeInThePattern(file);
        panel.deeds().perform(Deed.EDIT_PATTERN);
        return panel;
    }

    private static MainPanel notice(DeskOnFile file) {
        MainPanel panel = on(file, Page.COUNTS);
        file.desk().tell("The file could not be written: the disk is full. Make room and type the count again.");
        return panel;
    }

    private static MainPanel messages(DeskOnFile file) {
        MainPanel panel = on(file, Page.COUNTS);
        String first = file.desk().students().get(0).name();
        String second = file.desk().students().get(1).name();
        MessagesCard card = new MessagesCard(file.desk(), panel);
        card.paste("[16/03/2027, 19:12] " + first + ": tower round 22 was 34, then 33 after I pulled back\n"
                + "[16/03/2027, 19:14] " + first + ": still on tower r23, 12 so far. Hook is 4 mm, right?\n"
                + "[16/03/2027, 19:20] " + second + ": Tower r22 33 or 34, can't tell. r23 is two short\n"
                + "[16/03/2027, 19:31] " + second + ": oh and I once had 36");
        panel.ask(card);
        return panel;
    }

    private static MainPanel importing(DeskOnFile file) {
        return over(file, panel -> {
            String name = file.desk().students().get(0).name();
            String text = "Tuesday group\nName;Piece;Rnd;Sts;Remark\n" + name
                    + ";Tower;22;30;\nRuby;Tower;22;31;asked twice\n" + name + ";Tower;99;12;\n" + name
                    + ";Tower;23;thirty;\n";
            try {
                return new ImportCard(file.desk(), panel, Work.atOnce(), "tuesday.csv", List.of(Table.of(text)));
            } catch (NotATable refused) {
                throw new AssertionError(refused);
            }
        });
    }

    private static MainPanel misfits(DeskOnFile file) {
        MainPanel panel = on(file, Page.COUNTS);
        new BlockPaste(file.desk(), panel, new TableFiles(file.desk(), panel, Work.atOnce()))
                .take("33\tabout twenty\n34\t\n");
        return panel;
    }

    private static MainPanel makingSheets(DeskOnFile file, Work longWork) {
        MainPanel panel = on(file, Page.PLAN, longWork);
        panel.deeds().perform(Deed.SHEETS);
        Inside.press(panel, Wording.of("desktop").say("sheets-print"));
        return panel;
    }

    private static MainPanel damage(DeskOnFile file) {
        Backup backup = new Backup(Path.of("courses.db"), DeskOnFile.NOW, 0);
        String sentence = "The file could not be opened. It is damaged: page 14 holds nothing that belongs there.";
        return over(file, panel -> new DamageCard(sentence, Optional.of(backup), found -> {}, () -> {}, panel::close));
    }

    private static MainPanel told(DeskOnFile file) {
        return over(
                file,
                panel -> new ToldCard(
                        "The file can be opened again",
                        List.of(
                                "Saved: 1 course, 1 group, 8 students.",
                                "The damaged file is kept as courses.damaged.db."),
                        "Open it",
                        panel::close));
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
