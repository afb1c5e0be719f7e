package roundwright.store;

import java.util.Locale;

/** How the constants of an enum are written in the file: {@code CAUGHT_UP} as {@code caught-up}. */
final class Words {
    private Words() {}

    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static <E extends Enum<E>> E read(Class<E> type, String word) {
        return Enum.valueOf(type, word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
