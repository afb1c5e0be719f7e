package roundwright.desktop.counts;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is being typed into a count, as far as it has come. {@code 36} is a count, {@code +2} two more than the pattern says,
 * {@code -1} one fewer; {@code 36-12} the same for each round up to round 12, {@code >12} as the pattern says up to round 12.
 */
record TypedCount(String text) {
    static final TypedCount NOTHING = new TypedCount("");

    private static final Pattern BEGUN = Pattern.compile("[+-]?\\d{0,4}|[+-]?\\d{1,4}-\\d{0,3}|>\\d{0,3}|[.,]");
    private static final Pattern WHOLE =
            Pattern.compile("(?<sign>[+-]?)(?<amount>\\d{1,4})(?:-(?<to>\\d{1,3}))?|>(?<rightTo>\\d{1,3})");

    /** What is reported. */
    enum Kind {
        /** The number is the count. */
        COUNT,
        /** The number is how many more than the pattern says; below zero, fewer. */
        DIFFERENCE,
        AS_PATTERN
    }

    /**
     * What was typed, read.
     *
     * @param to the last round that it is said of; empty where it is said of one
     */
    record Said(Kind kind, int number, OptionalInt to) {
        /** The count it comes to where the pattern says so many; empty where that is not known and needed, or comes to less than nothing. */
        OptionalInt count(OptionalInt pattern) {
            if (kind == Kind.COUNT) {
                return OptionalInt.of(number);
            }
            return pattern.isPresent() && pattern.getAsInt() + number >= 0
                    ? OptionalInt.of(pattern.getAsInt() + number)
                    : OptionalInt.empty();
        }
    }

    /** With one sign more; unchanged where the sign has no meaning there. */
    TypedCount with(char sign) {
        String more = text + sign;
        return BEGUN.matcher(more).matches() ? new TypedCount(more) : this;
    }

    TypedCount rubbedOut() {
        return text.isEmpty() ? this : new TypedCount(text.substring(0, text.length() - 1));
    }

    boolean nothing() {
        return text.isEmpty();
    }

    /** Whether a stroke of this key would be the second of two that mean "as the pattern says". */
    boolean secondStroke(char sign) {
        return text.length() == 1 && text.charAt(0) == sign && (sign == '.' || sign == ',');
    }

    /** The plain number, where only one was typed. */
    OptionalInt number() {
        return said().filter(said -> said.kind() == Kind.COUNT && said.to().isEmpty())
                .map(said -> OptionalInt.of(said.number()))
                .orElse(OptionalInt.empty());
    }

    /** What it says; empty where it is not whole yet. */
    Optional<Said> said() {
        Matcher whole = WHOLE.matcher(text);
        if (!whole.matches()) {
            return Optional.empty();
        }
        if (whole.group("rightTo") != null) {
            return Optional.of(new Said(Kind.AS_PATTERN, 0, OptionalInt.of(Integer.parseInt(whole.group("rightTo")))));
        }
        int amount = Integer.parseInt(whole.group("amount"));
        String sign = whole.group("sign");
        OptionalInt to =
                whole.group("to") == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(whole.group("to")));
        return Optional.of(
                new Said(sign.isEmpty() ? Kind.COUNT : Kind.DIFFERENCE, sign.equals("-") ? -amount : amount, to));
    }
}
