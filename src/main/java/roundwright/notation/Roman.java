package roundwright.notation;

/** Roman numerals of round labels: "Round IV". */
final class Roman {
    private static final String LETTERS = "ivxl";
    private static final int[] VALUES = {1, 5, 10, 50};

    private Roman() {}

    /** The value of the letters (in lower case) from {@code start} to {@code end}; 0 where they are no numeral. */
    static int value(char[] text, int start, int end) {
        int sum = 0;
        int before = 0;
        for (int i = end - 1; i >= start; i--) {
            int letter = LETTERS.indexOf(text[i]);
            if (letter < 0 || end - start > 8) {
                return 0;
            }
            int value = VALUES[letter];
            sum += value < before ? -value : value;
            before = Math.max(before, value);
        }
        return sum;
    }
}
