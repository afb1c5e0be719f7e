package roundwright.desktop.window;

import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.tables.BlockPaste;
import roundwright.desktop.tables.ExportCard;
import roundwright.desktop.tables.TableFiles;

/** What the window does about tables of counts. */
final class TableDeeds {
    private TableDeeds() {}

    static void bind(Desk desk, Deeds deeds, Asking asking, Frame frame) {
        TableFiles files = new TableFiles(desk, asking, frame.longWork());
        deeds.on(Deed.OPEN_COUNTS, () -> frame.chooseTable().ifPresent(files::open));
        deeds.on(Deed.PASTE_COUNTS, new BlockPaste(desk, asking, files)::fromClipboard);
        deeds.on(
                Deed.SAVE_COUNTS,
                () -> asking.ask(new ExportCard(desk, asking, frame.longWork(), frame::chooseTarget)));
        desk.listen(matters -> enable(desk, deeds));
        enable(desk, deeds);
    }

    private static void enable(Desk desk, Deeds deeds) {
        boolean group = desk.course().isPresent() && desk.group().isPresent();
        deeds.enable(Deed.OPEN_COUNTS, group);
        deeds.enable(
                Deed.PASTE_COUNTS,
                group && desk.student().isPresent() && desk.place().isPresent());
        deeds.enable(Deed.SAVE_COUNTS, group && !desk.students().isEmpty());
    }
}
