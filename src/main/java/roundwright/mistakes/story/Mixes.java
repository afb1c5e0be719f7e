package roundwright.mistakes.story;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Every multiset of at most {@code most} slips of {@code sorts} sorts, numbered by growing size; number 0 is the empty one.
 *
 * <p>With 2 sorts and at most 2 slips: 0 = {}, 1 = {a}, 2 = {b}, 3 = {a, a}, 4 = {a, b}, 5 = {b, b}.
 */
final class Mixes {
    private static final Map<List<Integer>, Mixes> KNOWN = new ConcurrentHashMap<>();

    private final int sorts;
    private final int[] next;
    private final int[] last;
    private final int[] before;

    private Mixes(int sorts, int most) {
        this.sorts = sorts;
        List<int[]> mixes = new ArrayList<>();
        Map<List<Integer>, Integer> numbers = new HashMap<>();
        List<int[]> origins = new ArrayList<>();
        add(new int[sorts], new int[] {-1, -1}, mixes, numbers, origins);
        for (int number = 0; number < mixes.size(); number++) {
            for (int sort = 0; sort < sorts && size(mixes.get(number)) < most; sort++) {
                int[] more = mixes.get(number).clone();
                more[sort]++;
                add(more, new int[] {number, sort}, mixes, numbers, origins);
            }
        }
        this.next = nexts(mixes, numbers);
        this.before = origins.stream().mapToInt(origin -> origin[0]).toArray();
        this.last = origins.stream().mapToInt(origin -> origin[1]).toArray();
    }

    /** The numbering for so many sorts and so many slips; made once. */
    static Mixes of(int sorts, int most) {
        return KNOWN.computeIfAbsent(List.of(sorts, most), key -> new Mixes(sorts, most));
    }

    private static int size(int[] mix) {
        int size = 0;
        for (int count : mix) {
            size += count;
        }
        return size;
    }

    private static List<Integer> key(int[] mix) {
        List<Integer> key = new ArrayList<>();
        for (int count : mix) {
            key.add(count);
        }
        return key;
    }

    private static void add(
            int[] mix, int[] origin, List<int[]> mixes, Map<List<Integer>, Integer> numbers, List<int[]> origins) {
        if (numbers.putIfAbsent(key(mix), mixes.size()) == null) {
            mixes.add(mix);
            origins.add(origin);
        }
    }

    private int[] nexts(List<int[]> mixes, Map<List<Integer>, Integer> numbers) {
        int[] found = new int[mixes.size() * sorts];
        for (int number = 0; number < mixes.size(); number++) {
            for (int sort = 0; sort < sorts; sort++) {
                int[] more = mixes.get(number).clone();
                more[sort]++;
                found[number * sorts + sort] = numbers.getOrDefault(key(more), -1);
            }
        }
        return found;
    }

    int size() {
        return before.length;
    }

    /** The mix with one slip of the sort more, or -1 where that is more than are followed. */
    int with(int mix, int sort) {
        return next[mix * sorts + sort];
    }

    /** A mix with one slip less; number 0 has none before it. */
    int before(int mix) {
        return before[mix];
    }

    /** The sort of the slip that {@link #before} lacks. */
    int last(int mix) {
        return last[mix];
    }
}
