package roundwright.desktop.action;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.Locale;
import java.util.Optional;
import javax.swing.KeyStroke;
import roundwright.desktop.look.Glyph;
import roundwright.desktop.look.Keys;
import roundwright.wording.Wording;

/** One thing the window can be told to do: its words, its icon, its key. */
public enum Deed {
    PLAN(Glyph.PLAN, Key.menu(KeyEvent.VK_1)),
    COUNTS(Glyph.COUNTS, Key.menu(KeyEvent.VK_2)),
    STUCK(Glyph.STUCK, Key.menu(KeyEvent.VK_3)),
    NEXT(Glyph.NEXT, Key.menu(KeyEvent.VK_4)),
    FIND(Glyph.FIND, Key.menu(KeyEvent.VK_F)),
    UNDO(Glyph.UNDO, Key.menu(KeyEvent.VK_Z)),
    REDO(Glyph.REDO, Key.menu(KeyEvent.VK_Y)),
    SAMPLE_COURSE(Glyph.COURSE, Key.NONE),
    PASTE_PATTERN(Glyph.PASTE, Key.menu(KeyEvent.VK_N)),
    OPEN_COURSE(Glyph.OPEN, Key.menu(KeyEvent.VK_O)),
    EDIT_PATTERN(Glyph.EDIT, Key.menu(KeyEvent.VK_E)),
    SPLIT(Glyph.PLAN, Key.menu(KeyEvent.VK_L)),
    SHEETS(Glyph.PRINT, Key.menu(KeyEvent.VK_P)),
    STUDENT_SHEET(Glyph.PRINT, Key.NONE),
    STUDENT_WEB_PAGE(Glyph.SAVE, Key.NONE),
    SAVE_COURSE(Glyph.SAVE, Key.menu(KeyEvent.VK_S)),
    ADD_GROUP(Glyph.GROUP, Key.menu(KeyEvent.VK_G)),
    ADD_STUDENTS(Glyph.STUDENT, Key.menu(KeyEvent.VK_J)),
    EDIT_STUDENT(Glyph.EDIT, Key.plain(KeyEvent.VK_F2)),
    STUDENT_BEFORE(Glyph.LEFT, Key.menu(KeyEvent.VK_COMMA)),
    STUDENT_AFTER(Glyph.RIGHT, Key.menu(KeyEvent.VK_PERIOD)),
    REGISTER(Glyph.REGISTER, Key.menu(KeyEvent.VK_R)),
    PASTE_MESSAGES(Glyph.MESSAGES, Key.menu(KeyEvent.VK_M)),
    PASTE_COUNTS(Glyph.PASTE, Key.NONE),
    OPEN_COUNTS(Glyph.OPEN, Key.menuShift(KeyEvent.VK_O)),
    SAVE_COUNTS(Glyph.SAVE, Key.menuShift(KeyEvent.VK_S)),
    NOTE(Glyph.NOTE, Key.menu(KeyEvent.VK_T)),
    HIDE_NAMES(Glyph.HIDE, Key.menu(KeyEvent.VK_H)),
    LARGER(Glyph.LARGER, Key.menu(KeyEvent.VK_PLUS)),
    SMALLER(Glyph.SMALLER, Key.menu(KeyEvent.VK_MINUS)),
    USUAL_SIZE(Glyph.FIND, Key.menu(KeyEvent.VK_0)),
    LIGHT_OR_DARK(Glyph.DARK, Key.menu(KeyEvent.VK_D)),
    PLAN_REST(Glyph.NEXT, Key.menuShift(KeyEvent.VK_P)),
    DATES(Glyph.PLAN, Key.menuShift(KeyEvent.VK_D)),
    LESSON_EARLIER(Glyph.LEFT, Key.menuShift(KeyEvent.VK_LEFT)),
    LESSON_LATER(Glyph.RIGHT, Key.menuShift(KeyEvent.VK_RIGHT)),
    LESSON_HERE(Glyph.ADD, Key.menuShift(KeyEvent.VK_B)),
    JOIN_LESSONS(Glyph.COURSE, Key.menuShift(KeyEvent.VK_J)),
    LOCK_LESSON(Glyph.DONE, Key.menuShift(KeyEvent.VK_K)),
    RENAME_LESSON(Glyph.EDIT, Key.menuShift(KeyEvent.VK_N)),
    BACKUPS(Glyph.SAVE, Key.menuShift(KeyEvent.VK_A)),
    SHARE_COPY(Glyph.HIDE, Key.NONE),
    EXPORT_STUDENT(Glyph.SAVE, Key.NONE),
    ERASE_STUDENT(Glyph.REMOVE, Key.NONE),
    KEYS(Glyph.MORE, Key.plain(KeyEvent.VK_F1)),
    ABOUT(Glyph.COURSE, Key.NONE);

    private static final Wording WORDS = Wording.of("desktop");

    private final Glyph glyph;
    private final Key key;

    Deed(Glyph glyph, Key key) {
        this.glyph = glyph;
        this.key = key;
    }

    /** A key, with or without the system's menu key; which that is depends on the system and is asked late. */
    private record Key(int code, boolean menu, boolean shift) {
        static final Key NONE = new Key(KeyEvent.VK_UNDEFINED, false, false);

        static Key menu(int code) {
            return new Key(code, true, false);
        }

        static Key menuShift(int code) {
            return new Key(code, true, true);
        }

        static Key plain(int code) {
            return new Key(code, false, false);
        }

        Optional<KeyStroke> stroke() {
            if (code == KeyEvent.VK_UNDEFINED) {
                return Optional.empty();
            }
            int modifiers = (menu ? Keys.menuMask() : 0) | (shift ? InputEvent.SHIFT_DOWN_MASK : 0);
            return Optional.of(KeyStroke.getKeyStroke(code, modifiers));
        }
    }

    public Glyph glyph() {
        return glyph;
    }

    public Optional<KeyStroke> stroke() {
        return key.stroke();
    }

    /** What is written on its button. */
    public String words() {
        return WORDS.say("deed." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** The key as people write it: "Ctrl+1". */
    public Optional<String> keyWords() {
        return stroke().map(stroke -> {
            String with = InputEvent.getModifiersExText(stroke.getModifiers());
            String name = KeyEvent.getKeyText(stroke.getKeyCode());
            String plain = name.replace("Minus", "−").replace("Plus", "+");
            return with.isEmpty() ? plain : with + "+" + plain;
        });
    }
}
