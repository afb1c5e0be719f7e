package roundwright.mistakes.chain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import roundwright.mistakes.story.Rates;
import roundwright.mistakes.story.RoundStory;
import roundwright.mistakes.story.StartStory;
import roundwright.mistakes.story.Story;
import roundwright.mistakes.story.WrittenRound;
import roundwright.pattern.Part;
import roundwright.pattern.Pattern;
import roundwright.pattern.Round;
import roundwright.pattern.Steps;

/**
 * A whole pattern as beginners with these rates work it. What was worked out for a round is kept and shared by all students
 * and by all rounds that read alike. Not for several threads at once.
 */
public final class PatternStory {
    private final Rates rates;
    private final List<PartStory> parts = new ArrayList<>();
    private final Map<Lines, Story> known = new HashMap<>();

    /** A line with the lines about it: rounds with the same ones have the same story. */
    private record Lines(WrittenRound own, List<WrittenRound> around) {}

    public PatternStory(Pattern pattern, Rates rates) {
        this.rates = rates;
        for (Part part : pattern.parts()) {
            parts.add(story(part));
        }
    }

    public Rates rates() {
        return rates;
    }

    public List<PartStory> parts() {
        return parts;
    }

    public Optional<PartStory> part(String name) {
        return parts.stream().filter(part -> part.name().equals(name)).findFirst();
    }

    /** A round of the pattern, where it has it. */
    public Optional<WorkedRound> round(String part, int number) {
        return part(part).flatMap(in -> {
            OptionalInt place = in.place(number);
            return place.isPresent() ? Optional.of(in.rounds().get(place.getAsInt())) : Optional.empty();
        });
    }

    private PartStory story(Part part) {
        List<Round> rounds = part.rounds();
        Optional<PartStory> base = rounds.isEmpty() ? Optional.empty() : base(rounds.get(0));
        List<Optional<WrittenRound>> lines = IntStream.range(0, rounds.size())
                .mapToObj(place -> place == 0 && base.isEmpty()
                        ? Optional.<WrittenRound>empty()
                        : rounds.get(place).steps().map(WrittenRound::of))
                .toList();
        List<WorkedRound> worked = new ArrayList<>();
        for (int place = 0; place < rounds.size(); place++) {
            Round round = rounds.get(place);
            Optional<Story> story = place == 0 && base.isEmpty() ? start(round) : worked(lines, place);
            worked.add(new WorkedRound(part.name(), round.number(), round.count(), story, lines.get(place)));
        }
        return new PartStory(part.name(), worked, base);
    }

    /** The latest part before this one that ends with as many stitches as its first round uses; none where that uses none. */
    private Optional<PartStory> base(Round first) {
        int needs = first.steps().map(Steps::takes).orElse(0);
        int available = first.line().available().orElse(needs);
        return IntStream.iterate(parts.size() - 1, place -> place >= 0, place -> place - 1)
                .mapToObj(parts::get)
                .filter(part -> needs > 0 && endsWith(part, available))
                .findFirst();
    }

    private static boolean endsWith(PartStory part, int count) {
        return !part.rounds().isEmpty()
                && part.rounds().get(part.rounds().size() - 1).count().equals(OptionalInt.of(count));
    }

    private Optional<Story> start(Round round) {
        return round.count().isPresent()
                ? Optional.of(new StartStory(round.count().getAsInt(), rates))
                : Optional.empty();
    }

    private Optional<Story> worked(List<Optional<WrittenRound>> lines, int place) {
        List<WrittenRound> around = new ArrayList<>();
        if (place > 0) {
            lines.get(place - 1).ifPresent(around::add);
        }
        if (place + 1 < lines.size()) {
            lines.get(place + 1).ifPresent(around::add);
        }
        return lines.get(place)
                .map(own -> known.computeIfAbsent(new Lines(own, around), key -> RoundStory.of(own, around, rates)));
    }
}
