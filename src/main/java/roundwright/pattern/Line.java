package roundwright.pattern;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Supplier;
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
    private final Lazy<List<Problem>> problems;
    private final Set<Feature> features;
    private final Lazy<List<Decision>> decisions;
    private final OptionalInt takes;
    private final OptionalInt makes;
    private final Lazy<Optional<Steps>> round;
    private final Lazy<String> words;
    private final Lazy<String> sum;

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
        this.problems = new Lazy<>(() -> List.copyOf(problems));
        this.features = Set.of();
        this.decisions = new Lazy<>(List::of);
        this.takes = round.map(steps -> OptionalInt.of(steps.takes())).orElse(OptionalInt.empty());
        this.makes = round.map(steps -> OptionalInt.of(steps.makes())).orElse(OptionalInt.empty());
        this.round = new Lazy<>(() -> round);
        this.words = new Lazy<>(() -> words);
        this.sum = new Lazy<>(() -> sum);
    }

    Line(Found found) {
        this.text = found.text;
        this.at = found.at;
        this.terms = found.terms;
        this.label = found.label;
        this.stated = found.stated;
        this.available = found.available;
        this.verdict = found.verdict;
        this.problems = new Lazy<>(() -> List.copyOf(found.problems.get()));
        this.features = Set.copyOf(found.features);
        this.decisions = new Lazy<>(found.decisions);
        this.takes = found.takes;
        this.makes = found.makes;
        this.round = new Lazy<>(found.round);
        this.words = new Lazy<>(() -> found.words.apply(this));
        this.sum = new Lazy<>(() -> found.sum.apply(this));
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
        return round.get();
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
        return problems.get();
    }

    /** What it has the hands do besides its stitches. */
    public Set<Feature> features() {
        return features;
    }

    /** How words that can be read in more than one way were read, and why. */
    public List<Decision> decisions() {
        return decisions.get();
    }

    /** The line in plain words for a beginner. */
    public String words() {
        return words.get();
    }

    /** The line's arithmetic in one sentence. */
    public String sum() {
        return sum.get();
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
        Supplier<List<Problem>> problems = List::of;
        Set<Feature> features = Set.of();
        Supplier<List<Decision>> decisions = List::of;
        Supplier<Optional<Steps>> round = Optional::empty;
        java.util.function.Function<Line, String> words = line -> "";
        java.util.function.Function<Line, String> sum = line -> "";
    }
}
