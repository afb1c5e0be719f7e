package roundwright.mistakes;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import roundwright.group.CountReport;
import roundwright.group.RoundPlace;
import roundwright.mistakes.Advice.Choice;
import roundwright.mistakes.Advice.LaterCount;
import roundwright.mistakes.Advice.Way;
import roundwright.mistakes.chain.Finding;
import roundwright.mistakes.story.WrittenRound;
import roundwright.pattern.Part;
import roundwright.pattern.Pattern;
import roundwright.pattern.Round;
import roundwright.pattern.Step;
import roundwright.wording.Wording;

/** Weighs what can be done about a round that is off, at a student's pace. */
public final class Adviser {
    private static final Wording WORDS = Wording.of("mistakes");

    /** Stitches a minute of a beginner after some lessons, where nothing better is known. */
    private static final double USUAL_PACE = 5;

    /** To pick the loop up and move the marker. */
    private static final double PICK_UP = 1;

    /** To find the place for one more increase or decrease. */
    private static final double PLACE_ONE = 1;

    private static final int MOST_PUT_RIGHT = 2;
    private static final int ROUNDS_BETWEEN = 4;
    private static final int NEAR_END = 2;
    private static final int LATER_SHOWN = 4;

    private final Pattern pattern;
    private final double pace;
    private final Map<Mend, Optional<String>> lines = new ConcurrentHashMap<>();

    /** A round that has to take up so many stitches too many below. */
    private record Mend(RoundPlace place, int over) {}

    /** @param pace stitches a minute of the student, where known */
    public Adviser(Pattern pattern, OptionalDouble pace) {
        this.pattern = pattern;
        this.pace = pace.isPresent() && pace.getAsDouble() > 0 ? pace.getAsDouble() : USUAL_PACE;
    }

    /**
     * What to do about the newest round of a student; empty where it is most likely right, or cannot be explained and has to
     * be counted again first.
     *
     * @param before the student's earlier reports, as they came
     */
    public Optional<Advice> of(Explanation explanation, List<Explanation> before) {
        Finding finding = explanation.soFar();
        Optional<Part> part = pattern.part(finding.part());
        if (!finding.explained() || explanation.written().isEmpty() || part.isEmpty()) {
            return Optional.empty();
        }
        int over = finding.likeliest() - explanation.written().getAsInt();
        if (over == 0) {
            return Optional.empty();
        }
        Off off = new Off(part.get(), finding, over, below(explanation, before));
        return Optional.of(new Advice(over, List.of(pullBack(off), putRight(off), leave(off))));
    }

    /** The newest word on each round below, by its number. */
    private static NavigableMap<Integer, Explanation> below(Explanation explanation, List<Explanation> before) {
        NavigableMap<Integer, Explanation> rounds = new TreeMap<>();
        for (Explanation earlier : before) {
            CountReport report = earlier.report();
            if (report.part().equals(explanation.report().part())
                    && report.round() < explanation.report().round()) {
                rounds.put(report.round(), earlier);
            }
        }
        return rounds;
    }

    /** A round of a part that has so many stitches too many. */
    private record Off(Part part, Finding finding, int over, NavigableMap<Integer, Explanation> below) {
        /** The number of the last round of the part whose count was right; 0 where there is none. */
        int lastRight() {
            return finding.lastRight()
                    .filter(place -> place.part().equals(part.name()))
                    .map(RoundPlace::round)
                    .orElse(0);
        }

        /** Whether one of the last rounds took up a difference already. */
        boolean recentlyPutRight() {
            return below.tailMap(finding.round() - ROUNDS_BETWEEN, false).entrySet().stream()
                    .anyMatch(round -> right(round.getValue())
                            && below.containsKey(round.getKey() - 1)
                            && !right(below.get(round.getKey() - 1)));
        }

        private static boolean right(Explanation explanation) {
            return explanation
                    .written()
                    .equals(OptionalInt.of(explanation.soFar().likeliest()));
        }

        List<Round> later() {
            return part.rounds().stream()
                    .filter(round -> round.number() > finding.round())
                    .toList();
        }
    }

    private Choice pullBack(Off off) {
        int stays = off.lastRight();
        int stitches = off.part().rounds().stream()
                .filter(round -> round.number() > stays
                        && round.number() <= off.finding().round())
                .mapToInt(round -> round.count().orElse(0))
                .sum();
        String words =
                stays == 0 ? WORDS.say("advice-start-again", stitches) : WORDS.say("advice-pull-back", stays, stitches);
        return new Choice(Way.PULL_BACK, true, stays, PICK_UP + stitches / pace, Optional.empty(), words, List.of());
    }

    private Choice putRight(Off off) {
        Optional<Round> next = off.later().stream().findFirst();
        Optional<String> line = next.flatMap(round -> mendingLine(off.part().name(), round, off.over()));
        int amount = Math.abs(off.over());
        int inRound = next.map(Round::number).orElse(off.finding().round());
        Optional<String> against = againstPuttingRight(off, line);
        String words = against.orElseGet(() -> off.over() > 0
                ? WORDS.say("advice-put-right-over", inRound, amount, Sentences.number(amount))
                : WORDS.say("advice-put-right-short", inRound, amount, Sentences.number(amount)));
        return new Choice(
                Way.PUT_RIGHT,
                against.isEmpty(),
                inRound,
                PLACE_ONE * amount,
                against.isEmpty() ? line : Optional.empty(),
                words,
                List.of());
    }

    private Optional<String> mendingLine(String part, Round round, int over) {
        return Math.abs(over) > MOST_PUT_RIGHT
                ? Optional.empty()
                : lines.computeIfAbsent(
                        new Mend(new RoundPlace(part, round.number()), over),
                        mend -> new Mending(pattern.terms(), round).line(over));
    }

    private static Optional<String> againstPuttingRight(Off off, Optional<String> line) {
        int amount = Math.abs(off.over());
        if (amount > MOST_PUT_RIGHT) {
            return Optional.of(WORDS.say("not-put-right-too-many", amount));
        }
        if (off.later().isEmpty()) {
            return Optional.of(WORDS.say("not-put-right-last-round"));
        }
        if (off.recentlyPutRight()) {
            return Optional.of(WORDS.say("not-put-right-again"));
        }
        return line.isPresent() ? places(off) : Optional.of(WORDS.say("not-put-right-no-line"));
    }

    /** Whether something later stands on certain stitches, so that one more or less would move it. */
    private static Optional<String> places(Off off) {
        return off.later().stream()
                .filter(round -> round.steps().stream()
                        .flatMap(steps -> steps.list().stream())
                        .anyMatch(Adviser::hasItsPlace))
                .findFirst()
                .map(round -> WORDS.say("not-put-right-places", round.number()));
    }

    private static boolean hasItsPlace(Step step) {
        return step.action() == Step.Action.CHAIN
                || step.action() == Step.Action.SKIP
                || step.action() == Step.Action.GROUP
                || step.loop() == Step.Loop.SPACE
                || step.loop() == Step.Loop.FRONT_POST
                || step.loop() == Step.Loop.BACK_POST;
    }

    private Choice leave(Off off) {
        boolean nearEnd = off.later().size() <= NEAR_END;
        Optional<String> against = Math.abs(off.over()) > 1
                ? Optional.of(WORDS.say("not-left-too-many", Math.abs(off.over())))
                : !nearEnd
                        ? Optional.of(
                                WORDS.say("not-left-far-from-end", off.later().size()))
                        : hidden(off.part()) ? Optional.empty() : Optional.of(WORDS.say("not-left-in-sight"));
        return new Choice(
                Way.LEAVE,
                against.isEmpty(),
                off.finding().round(),
                0,
                Optional.empty(),
                against.orElseGet(() -> WORDS.say("advice-leave")),
                laterCounts(off));
    }

    /** Whether the part's end is closed or sewn on, as its last instructions say. */
    private static boolean hidden(Part part) {
        List<String> words = List.of(WORDS.say("words-for-hiding").split(" "));
        return part.lines().stream()
                .skip(Math.max(0, part.lines().size() - 3))
                .map(line -> line.text().toLowerCase(Locale.ROOT))
                .anyMatch(text -> words.stream().anyMatch(text::contains));
    }

    /** What the next rounds come to where nothing is done about it. */
    private static List<LaterCount> laterCounts(Off off) {
        List<LaterCount> later = new ArrayList<>();
        OptionalInt count = OptionalInt.of(off.finding().likeliest());
        for (Round round : off.later()) {
            if (count.isEmpty() || round.steps().isEmpty() || later.size() == LATER_SHOWN) {
                break;
            }
            count = OptionalInt.of(WrittenRound.of(round.steps().get()).workedOn(count.getAsInt()));
            later.add(new LaterCount(round.number(), count.getAsInt()));
        }
        return later;
    }
}
