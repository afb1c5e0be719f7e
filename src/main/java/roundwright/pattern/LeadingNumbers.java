package roundwright.pattern;

/** Sees whether the lines of a part begin with running numbers and no mark after them: "1 MR, 6 dc", "2 inc x 6". */
final class LeadingNumbers {
    private static final int ENOUGH = 3;

    private LeadingNumbers() {}

    static boolean runOn(PartText part) {
        int run = 0;
        int last = 0;
        for (SourceLine line : part.lines()) {
            int number = leading(line.text());
            if (number > 0 && number == last + 1) {
                run++;
            }
            last = number > 0 ? lastOfRange(line.text(), number) : last;
        }
        return run >= ENOUGH;
    }

    /** The number that the line begins with, where a blank and then a letter or a bracket comes after it; else 0. */
    private static int leading(String text) {
        int end = digits(text, 0);
        int next = end;
        if (end > 0 && end < text.length() && text.charAt(end) == '-') {
            next = digits(text, end + 1);
        }
        boolean spaced = end > 0 && end < 4 && next < text.length() && text.charAt(next) == ' ';
        return spaced ? Integer.parseInt(text.substring(0, end)) : 0;
    }

    private static int lastOfRange(String text, int first) {
        int end = digits(text, 0);
        int next = end < text.length() && text.charAt(end) == '-' ? digits(text, end + 1) : end;
        return next > end + 1 && next - end < 5 ? Integer.parseInt(text.substring(end + 1, next)) : first;
    }

    private static int digits(String text, int from) {
        int i = from;
        while (i < text.length() && text.charAt(i) >= '0' && text.charAt(i) <= '9') {
            i++;
        }
        return i;
    }
}
