package roundwright.course.calendar;

import java.nio.charset.StandardCharsets;

/** Folds the lines of a calendar file as RFC 5545 asks: at most 75 octets of UTF-8 a line, no character cut in two. */
final class Folding {
    private static final int LONGEST = 75;
    private static final String LINE_END = "\r\n";

    private Folding() {}

    static String fold(String text) {
        StringBuilder folded = new StringBuilder(text.length() + text.length() / 32);
        text.lines().forEach(line -> foldLine(line, folded));
        return folded.toString();
    }

    private static void foldLine(String line, StringBuilder folded) {
        int octets = 0;
        for (int at = 0; at < line.length(); at = line.offsetByCodePoints(at, 1)) {
            String character = Character.toString(line.codePointAt(at));
            int length = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + length > LONGEST) {
                folded.append(LINE_END).append(' ');
                octets = 1;
            }
            folded.append(character);
            octets += length;
        }
        folded.append(LINE_END);
    }
}
