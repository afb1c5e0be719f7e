package roundwright.mistakes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.random.RandomGenerator;
import roundwright.group.RoundPlace;
import roundwright.mistakes.chain.PartStory;
import roundwright.mistakes.chain.PatternStory;
import roundwright.mistakes.chain.WorkedRound;
import roundwright.mistakes.story.Beginner;
import roundwright.mistakes.story.Rates;
import roundwright.mistakes.story.WrittenRound;
import roundwright.pattern.Pattern;

/** An invented student who works a pattern by the story, for trying things out and for measuring. */
public final class Trial {
    private final PatternStory story;
    private final Beginner hands;
    private final Map<RoundPlace, Integer> made = new HashMap<>();

    public Trial(Pattern pattern, Rates rates, RandomGenerator chance) {
        this.story = new PatternStory(pattern, rates);
        this.hands = new Beginner(rates, chance);
    }

    /**
     * Works a round on what this student last made of the round below; empty where the pattern has no such round or its line
     * was not understood.
     */
    public Optional<Beginner.Worked> work(RoundPlace place) {
        Optional<Beginner.Worked> worked = story.part(place.part()).flatMap(part -> {
            OptionalInt index = part.place(place.round());
            return index.isPresent() ? work(part, index.getAsInt()) : Optional.empty();
        });
        worked.ifPresent(done -> made.put(place, done.made()));
        return worked;
    }

    private Optional<Beginner.Worked> work(PartStory part, int index) {
        WorkedRound round = part.rounds().get(index);
        if (round.story().isEmpty()) {
            return Optional.empty();
        }
        if (round.line().isEmpty()) {
            return Optional.of(hands.start(round.count().orElseThrow()));
        }
        List<WrittenRound> around = new ArrayList<>();
        if (index > 0) {
            part.rounds().get(index - 1).line().ifPresent(around::add);
        }
        if (index + 1 < part.rounds().size()) {
            part.rounds().get(index + 1).line().ifPresent(around::add);
        }
        return Optional.of(hands.work(round.line().get(), around, below(part, index)));
    }

    private int below(PartStory part, int index) {
        if (index > 0) {
            return count(part.rounds().get(index - 1));
        }
        List<WorkedRound> base = part.base().orElseThrow().rounds();
        return count(base.get(base.size() - 1));
    }

    private int count(WorkedRound round) {
        Integer own = made.get(new RoundPlace(round.part(), round.number()));
        return own != null ? own : round.count().orElse(0);
    }

    /** Has the round made right, as with a teacher's help. */
    public void correct(RoundPlace place) {
        made.remove(place);
    }

    /** What the student says of so many stitches. */
    public int report(int stitches) {
        return hands.report(stitches);
    }
}
