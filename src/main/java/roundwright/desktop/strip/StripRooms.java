package roundwright.desktop.strip;

import roundwright.desktop.look.Space;

/**
 * How the height of the strip is shared out, in pixels: flags above, the piece, brackets and names of the lessons below. With
 * little height the names go first, then the words of the flags.
 *
 * @param flagRows rows of words above the piece: 2, 1 or 0
 * @param lessonNames whether the lessons' names have room
 * @param body height left for the piece
 */
record StripRooms(int flagRows, boolean lessonNames, int top, int body, int bracket) {
    private static final int PAD = 8;
    private static final int FLAG_ROW = 17;
    private static final int FLAG_ONLY = 12;
    private static final int STEM = 6;
    private static final int BRACKET = 12;
    private static final int NUMBER = 17;
    private static final int NAME = 16;

    static StripRooms of(int height) {
        double points = height / (double) Space.points(100) * 100;
        int rows = points >= 150 ? 2 : points >= 120 ? 1 : 0;
        boolean names = points >= 135;
        int top = rows == 0 ? FLAG_ONLY + STEM : PAD + rows * FLAG_ROW + STEM;
        int below = BRACKET + NUMBER + (names ? NAME : 0) + PAD / 2;
        int body = Math.max(12, (int) points - top - below);
        return new StripRooms(rows, names, Space.points(top), Space.points(body), Space.points(top + body + 5));
    }

    /** Baseline of a flag's words in a row from 0. */
    double flagBaseline(int row) {
        return Space.points(PAD + FLAG_ROW * row + 11);
    }

    double flagTop(int row) {
        return Space.points((flagRows == 0 ? PAD / 2.0 : PAD) + FLAG_ROW * row + 1.5);
    }

    double numberBaseline() {
        return bracket + Space.points(BRACKET + 8);
    }

    double nameBaseline() {
        return bracket + Space.points(BRACKET + 8 + NAME);
    }
}
