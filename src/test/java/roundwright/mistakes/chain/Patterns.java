package roundwright.mistakes.chain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.notation.Terms;
import roundwright.pattern.Line;
import roundwright.pattern.Part;
import roundwright.pattern.Pattern;
import roundwright.pattern.Round;
import roundwright.pattern.Steps;
import roundwright.pattern.Verdict;

/** Makes patterns from steps for tests. */
public final class Patterns {
    private Patterns() {}

    /** A pattern of one part: a ring of so many stitches, then the rounds. */
    public static Pattern of(String part, int ring, List<Steps> rounds) {
        return new Pattern(Terms.UK, List.of(part(part, ring, rounds)));
    }

    public static Part part(String name, int ring, List<Steps> rounds) {
        List<Round> all = new ArrayList<>();
        all.add(round(1, Optional.empty(), ring, OptionalInt.empty()));
        return filled(name, rounds, all);
    }

    /** A part that starts on another part's last round of so many stitches. */
    public static Part onto(String name, int available, List<Steps> rounds) {
        List<Round> all = new ArrayList<>();
        all.add(round(1, Optional.of(rounds.get(0)), rounds.get(0).makes(), OptionalInt.of(available)));
        return filled(name, rounds.subList(1, rounds.size()), all);
    }

    private static Part filled(String name, List<Steps> rounds, List<Round> all) {
        for (Steps steps : rounds) {
            int below = all.get(all.size() - 1).count().getAsInt();
            all.add(round(all.size() + 1, Optional.of(steps), steps.makes(), OptionalInt.of(below)));
        }
        return new Part(name, all.stream().map(Round::line).toList(), new ArrayList<>(all));
    }

    private static Round round(int number, Optional<Steps> steps, int count, OptionalInt below) {
        Line line = new Line(
                "",
                0,
                Terms.UK,
                Optional.of(new Line.Label(number, number)),
                steps,
                OptionalInt.of(count),
                below,
                Verdict.ADDS_UP,
                List.of(),
                "",
                "");
        return new Round(number, line, steps, OptionalInt.of(count));
    }
}
