package roundwright.command;

import java.util.Arrays;

/** Finds the line, counted from 1, in which a place of a text stands. Lines end with LF, CR or both. */
final class LineNumbers {
    private final int[] starts;

    LineNumbers(String text) {
        int[] found = new int[text.length() + 1];
        int lines = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean ends = c == '\n' || c == '\r' && !text.startsWith("\n", i + 1);
            if (ends) {
                found[lines++] = i + 1;
            }
        }
        this.starts = Arrays.copyOf(found, lines);
    }

    int of(int place) {
        int at = Arrays.binarySearch(starts, place);
        return at >= 0 ? at + 1 : -at - 1;
    }
}
