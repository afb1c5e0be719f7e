package roundwright.mistakes.story;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What went wrong in one round: a multiset of kinds, packed so that millions of them can be added up.
 *
 * <p>The four slips have four bits each (a slip is followed up to fifteen times a round), the way of reading three, and the
 * other five one each. {@code new Kinds(0)} is a round in which nothing went wrong.
 */
public record Kinds(int code) {
    /** Nothing went wrong. */
    public static final Kinds NONE = new Kinds(0);

    /** Slips of one kind that a code can hold. */
    static final int MOST_SLIPS = 15;

    private static final int READING_SHIFT = 16;
    private static final int FLAG_SHIFT = 19;

    /** The code of one mistake. Codes of different kinds, and of slips up to fifteen, can be added. */
    static int code(Kind kind) {
        int place = kind.ordinal();
        if (place < Kind.REPEAT_SHORT.ordinal()) {
            return 1 << 4 * place;
        }
        return place < Kind.WRONG_LINE.ordinal()
                ? place - Kind.REPEAT_SHORT.ordinal() + 1 << READING_SHIFT
                : 1 << FLAG_SHIFT + place - Kind.WRONG_LINE.ordinal();
    }

    public static Kinds of(Kind... kinds) {
        int code = 0;
        for (Kind kind : kinds) {
            code += code(kind);
        }
        return new Kinds(code);
    }

    /** How often a mistake of the kind happened. */
    public int count(Kind kind) {
        int place = kind.ordinal();
        if (place < Kind.REPEAT_SHORT.ordinal()) {
            return code >> 4 * place & MOST_SLIPS;
        }
        if (place < Kind.WRONG_LINE.ordinal()) {
            return (code >> READING_SHIFT & 7) == place - Kind.REPEAT_SHORT.ordinal() + 1 ? 1 : 0;
        }
        return code >> FLAG_SHIFT + place - Kind.WRONG_LINE.ordinal() & 1;
    }

    public boolean has(Kind kind) {
        return count(kind) > 0;
    }

    public boolean none() {
        return code == 0;
    }

    /** The same without one kind. */
    public Kinds without(Kind kind) {
        return new Kinds(code - count(kind) * code(kind));
    }

    /** Every mistake, sorted by its word, repeated where it happened more than once. */
    public List<Kind> list() {
        List<Kind> list = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            for (int times = count(kind); times > 0; times--) {
                list.add(kind);
            }
        }
        list.sort(Comparator.comparing(Kind::word));
        return list;
    }

    @Override
    public String toString() {
        return list().stream().map(Kind::word).collect(Collectors.joining(" + ", "[", "]"));
    }
}
