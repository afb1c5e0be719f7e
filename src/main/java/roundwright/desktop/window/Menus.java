package roundwright.desktop.window;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.look.Glyph;
import roundwright.store.KeptCourse;
import roundwright.wording.Wording;
import roundwright.workbook.GroupView;

/** The two menus of the head: what to take in hand, and everything there is to do. */
final class Menus {
    private static final Wording WORDS = Wording.of("desktop");

    private final Desk desk;
    private final Deeds deeds;

    Menus(Desk desk, Deeds deeds) {
        this.desk = desk;
        this.deeds = deeds;
    }

    /** Courses and their groups, and how to get another. */
    void courses(JComponent below) {
        JPopupMenu menu = new JPopupMenu();
        for (KeptCourse course : desk.view().courses()) {
            List<GroupView> groups = desk.view().groups(course.id());
            if (groups.isEmpty()) {
                menu.add(item(course.name(), false, () -> desk.chooseCourse(course.id(), java.util.Optional.empty())));
            }
            for (GroupView group : groups) {
                boolean chosen = desk.choice().group().equals(java.util.Optional.of(group.id()));
                String words = WORDS.say(
                        "course-and-group", course.name(), group.group().name());
                menu.add(item(words, chosen, () -> desk.chooseGroup(group.id())));
            }
        }
        if (menu.getComponentCount() > 0) {
            menu.addSeparator();
        }
        add(menu, List.of(Deed.ADD_GROUP, Deed.ADD_STUDENTS));
        menu.addSeparator();
        add(menu, List.of(Deed.SAMPLE_COURSE, Deed.PASTE_PATTERN, Deed.OPEN_COURSE, Deed.SAVE_COURSE, Deed.SHEETS));
        menu.show(below, 0, below.getHeight());
    }

    /** Everything that can be done, in groups. */
    void everything(JComponent below) {
        JPopupMenu menu = new JPopupMenu();
        add(menu, List.of(Deed.UNDO, Deed.REDO));
        menu.addSeparator();
        add(
                menu,
                List.of(
                        Deed.SPLIT,
                        Deed.DATES,
                        Deed.PLAN_REST,
                        Deed.EDIT_PATTERN,
                        Deed.REGISTER,
                        Deed.PASTE_MESSAGES,
                        Deed.PASTE_COUNTS,
                        Deed.OPEN_COUNTS,
                        Deed.SAVE_COUNTS,
                        Deed.NOTE,
                        Deed.EDIT_STUDENT));
        menu.addSeparator();
        add(menu, List.of(Deed.BACKUPS, Deed.SHARE_COPY, Deed.EXPORT_STUDENT, Deed.ERASE_STUDENT));
        menu.addSeparator();
        add(menu, List.of(Deed.HIDE_NAMES, Deed.LIGHT_OR_DARK, Deed.LARGER, Deed.SMALLER, Deed.USUAL_SIZE));
        menu.addSeparator();
        add(menu, List.of(Deed.KEYS, Deed.ABOUT));
        menu.show(below, below.getWidth() - menu.getPreferredSize().width, below.getHeight());
    }

    private void add(JPopupMenu menu, List<Deed> wanted) {
        wanted.stream().filter(deeds::enabled).forEach(deed -> menu.add(deeds.menuItem(deed)));
    }

    private static JMenuItem item(String words, boolean chosen, Runnable does) {
        JMenuItem item = new JMenuItem(words, (chosen ? Glyph.DONE : Glyph.COURSE).icon());
        item.addActionListener(event -> does.run());
        return item;
    }
}
