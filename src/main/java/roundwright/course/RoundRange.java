package roundwright.course;

/** Rounds {@code first … last} of a part, both ends included: {@code Tower 4-6}. */
public record RoundRange(String part, int first, int last) {
    public RoundRange {
        if (first < 0 || last < first) {
            throw new IllegalArgumentException("no rounds from " + first + " to " + last + " of " + part);
        }
    }

    public boolean contains(String otherPart, int round) {
        return part.equals(otherPart) && first <= round && round <= last;
    }
}
