package roundwright.mistakes.story;

import java.util.Arrays;

/** Adds up chances by packed kinds. */
public final class Tally {
    private static final int FREE = -1;

    private int[] codes = new int[512];
    private double[] chances = new double[512];
    private int used;

    public Tally() {
        Arrays.fill(codes, FREE);
    }

    /** Adds to the chance of the kinds. */
    public void add(int code, double chance) {
        int place = place(code);
        if (codes[place] == FREE) {
            codes[place] = code;
            used++;
        }
        chances[place] += chance;
        if (4 * used > 3 * codes.length) {
            grow();
        }
    }

    private int place(int code) {
        int mask = codes.length - 1;
        int place = (code * 0x9E3779B9 >>> 12) & mask;
        while (codes[place] != FREE && codes[place] != code) {
            place = place + 1 & mask;
        }
        return place;
    }

    private void grow() {
        int[] oldCodes = codes;
        double[] oldChances = chances;
        codes = new int[2 * oldCodes.length];
        chances = new double[codes.length];
        Arrays.fill(codes, FREE);
        for (int old = 0; old < oldCodes.length; old++) {
            if (oldCodes[old] != FREE) {
                int place = place(oldCodes[old]);
                codes[place] = oldCodes[old];
                chances[place] = oldChances[old];
            }
        }
    }

    /** The packed kinds that were added, in no order. */
    public int[] codes() {
        int[] found = new int[used];
        int size = 0;
        for (int code : codes) {
            if (code != FREE) {
                found[size++] = code;
            }
        }
        return found;
    }

    /** The chances of {@link #codes}, in the same order. */
    public double[] chances() {
        double[] found = new double[used];
        int size = 0;
        for (int place = 0; place < codes.length; place++) {
            if (codes[place] != FREE) {
                found[size++] = chances[place];
            }
        }
        return found;
    }
}
