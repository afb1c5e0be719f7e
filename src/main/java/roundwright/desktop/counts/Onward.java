package roundwright.desktop.counts;

import java.util.Locale;

/** Where the choice goes on after a count was entered. */
enum Onward {
    /** To the next student; after the last to the first, in the next round. */
    DOWN,
    /** To the next round; after the last of the lesson to its first, of the next student. */
    RIGHT;

    static final String SETTING = "enter-goes";

    Onward other() {
        return this == DOWN ? RIGHT : DOWN;
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Onward of(String word) {
        return word.equals(RIGHT.word()) ? RIGHT : DOWN;
    }
}
