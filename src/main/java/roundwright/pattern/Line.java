package roundwright.pattern;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import roundwright.notation.Feature;
import roundwright.notation.Problem;
import roundwright.notation.Terms;

/** One written line of a pattern, read and checked against the round below it. */
public final class Line {
    private final String text;
    private final int at;
    private final Terms terms;
    private final Optional<Label> label;
    private final OptionalInt stated;
    private final OptionalInt available;
    private final Verdict verdict;
    private final Set<Feature> features;
    private final OptionalInt takes;
    private final OptionalInt makes;
    private final LineAccount account;

    // what was asked for once; two threads may both work it out, and get equal values
    private volatile List<Problem> problems;
    private volatile List<Decision> decisions;
    private volatile Optional<Steps> round;
    private volatile String words;
    private volatile String sum;

    /** A line whose steps, words and sum are at hand. */
    public Line(
            String text,
            int at,
            Terms terms,
            Optional<Label> label,
            Optional<Steps> round,
            OptionalInt stated,
            OptionalInt available,
            Verdict verdict,
            List<Problem> problems,
            String words,
            String sum) {
        this.text = text;
        this.at = at;
        this.terms = terms;
        this.label = label;
        this.stated = stated;
        this.available = available;
        this.verdict = verdict;
        this.features = Set.of();
        this.takes = round.isPresent() ? OptionalInt.of(round.get().takes()) : OptionalInt.empty();
        this.makes = round.isPresent() ? OptionalInt.of(round.get().makes()) : OptionalInt.empty();
        this.account = () -> problems;
        this.round = round;
        this.words = words;
        this.sum = sum;
    }

    Line(Found found) {
        this.text = found.text;
        this.at = found.at;
        this.terms = found.terms;
        this.label = found.label;
        this.stated = found.stated;
        this.available = found.available;
        this.verdict = found.verdict;
        this.features = Collections.unmodifiableSet(found.features);
        this.takes = found.takes;
        this.makes = found.makes;
        this.account = found.account;
    }

    /** First and last round number of a line; the same for a single round. */
    public record Label(int first, int last) {
        public Label {
            if (first < 0 || last < first) {
                throw new IllegalArgumentException("no rounds from " + first + " to " + last);
            }
        }

        public int rounds() {
            return last - first + 1;
        }
    }

    /** The line as written. */
    public String text() {
        return text;
    }

    /** Offset of the line's first character in the text it came from (a file, or the lines of a part). */
    public int at() {
        return at;
    }

    /** The terms it was read in. */
    public Terms terms() {
        return terms;
    }

    /** The round numbers it is for, where it says them. */
    public Optional<Label> label() {
        return label;
    }

    /** What it has the hands do, where it is a stitch instruction that was understood whole; of a range, the last round. */
    public Optional<Steps> round() {
        Optional<Steps> known = round;
        if (known == null) {
            known = account.round();
            round = known;
        }
        return known;
    }

    /** Stitches of the round below that it uses; empty where it has no stitches or was not understood. */
    public OptionalInt takes() {
        return takes;
    }

    /** Stitches that the round has when it is done; empty where it has none or was not understood. */
    public OptionalInt makes() {
        return makes;
    }

    /** The count it states for the round (the last round, of a range). */
    public OptionalInt stated() {
        return stated;
    }

    /** Stitches the round below offers; empty at a part's start or where unknown. */
    public OptionalInt available() {
        return available;
    }

    /** What the sums say. */
    public Verdict verdict() {
        return verdict;
    }

    /** What a person should know of, with spans in {@link #text}; a suggestion is the whole line to write instead. */
    public List<Problem> problems() {
        List<Problem> known = problems;
        if (known == null) {
            known = List.copyOf(account.problems());
            problems = known;
        }
        return known;
    }

    /** What it has the hands do besides its stitches. */
    public Set<Feature> features() {
        return features;
    }

    /** How words that can be read in more than one way were read, and why. */
    public List<Decision> decisions() {
        List<Decision> known = decisions;
        if (known == null) {
            known = account.decisions();
            decisions = known;
        }
        return known;
    }

    /** The line in plain words for a beginner. */
    public String words() {
        String known = words;
        if (known == null) {
            known = account.words(this);
            words = known;
        }
        return known;
    }

    /** The line's arithmetic in one sentence. */
    public String sum() {
        String known = sum;
        if (known == null) {
            known = account.sum(this);
            sum = known;
        }
        return known;
    }

    /** The count to reach: what is stated, else what the steps make. */
    public OptionalInt count() {
        return stated.isPresent() ? stated : makes;
    }

    @Override
    public String toString() {
        return text + " [" + verdict.word() + "]";
    }

    /** What was found out about a line, handed over when it is whole. */
    static final class Found {
        String text = "";
        int at;
        Terms terms = Terms.UK;
        Optional<Label> label = Optional.empty();
        OptionalInt takes = OptionalInt.empty();
        OptionalInt makes = OptionalInt.empty();
        OptionalInt stated = OptionalInt.empty();
        OptionalInt available = OptionalInt.empty();
        Verdict verdict = Verdict.INSTRUCTION;
        Set<Feature> features = Set.of();
        LineAccount account = List::of;
    }
}
