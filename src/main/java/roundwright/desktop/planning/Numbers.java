package roundwright.desktop.planning;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import javax.swing.JTextField;

/** Numbers as people type them into a field. */
final class Numbers {
    private Numbers() {}

    /** 7 for seven, 6.5 for six and a half. */
    static String shortest(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
    }

    /** A whole number from least to most; empty for anything else. */
    static OptionalInt whole(JTextField field, int least, int most) {
        String text = field.getText().strip();
        if (!text.matches("\\d{1,4}")) {
            return OptionalInt.empty();
        }
        int number = Integer.parseInt(text);
        return number >= least && number <= most ? OptionalInt.of(number) : OptionalInt.empty();
    }

    /** A number with at most two places behind the point, or the comma. */
    static OptionalDouble decimal(JTextField field, double least, double most) {
        String text = field.getText().strip().replace(',', '.');
        if (!text.matches("\\d{1,3}([.]\\d{1,2})?")) {
            return OptionalDouble.empty();
        }
        double number = Double.parseDouble(text);
        return number >= least && number <= most ? OptionalDouble.of(number) : OptionalDouble.empty();
    }
}
