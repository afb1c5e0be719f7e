package roundwright.group.counts;

import java.util.List;
import roundwright.wording.Wording;

/** A file with a table in it: a text with separators, or a spreadsheet. What it is shows in its first bytes, whatever it is called. */
public final class TableFile {
    private static final Wording WORDS = Wording.of("group");

    /** No table of counts comes near; more is not read. In bytes. */
    public static final int LARGEST = 64 << 20;

    private static final int LOOKED_AT = 4_000;

    /** A text may have a stray sign or two; a picture has nothing else. One in so many. */
    private static final int STRAY = 50;

    private TableFile() {}

    /** The tables of a file: one of a text, one for each sheet of a spreadsheet that is not empty. */
    public static List<Table> read(byte[] file) throws NotATable {
        if (file.length > LARGEST) {
            throw new NotATable(WORDS.say("table.file-too-large", LARGEST >> 20));
        }
        if (begins(file, 'P', 'K', 3, 4)) {
            return Spreadsheet.read(file);
        }
        if (begins(file, 0xd0, 0xcf, 0x11, 0xe0)) {
            throw new NotATable(WORDS.say("table.locked"));
        }
        String text = TableText.of(file);
        if (begins(file, '%', 'P', 'D', 'F') || noText(text)) {
            throw new NotATable(WORDS.say("table.no-text"));
        }
        return List.of(Table.of(text));
    }

    private static boolean begins(byte[] file, int... start) {
        for (int at = 0; at < start.length; at++) {
            if (at >= file.length || (file[at] & 0xff) != start[at]) {
                return false;
            }
        }
        return true;
    }

    private static boolean noText(String text) {
        String start = text.substring(0, Math.min(text.length(), LOOKED_AT));
        long strange = start.chars()
                .filter(sign -> Character.isISOControl(sign) && !Character.isWhitespace(sign) || sign == 0xfffd)
                .count();
        return strange * STRAY > start.length();
    }
}
