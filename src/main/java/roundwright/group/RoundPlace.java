package roundwright.group;

/** A round's place in the pattern: {@code Tower 7}. */
public record RoundPlace(String part, int round) {}
