package roundwright.technique;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.notation.Feature;
import roundwright.notation.Stitch;
import roundwright.pattern.Line;
import roundwright.pattern.Step;
import roundwright.pattern.Step.Action;

/** Finds the techniques of one line: from its steps, from what else it asks for, and by the names of a course's own techniques. */
final class LineUses {
    private static final Map<Stitch, String> OTHER_NAMES = Map.of(
            Stitch.PUFF, "puff-stitch",
            Stitch.V_STITCH, "shell",
            Stitch.TRIPLE_TREBLE, "double-treble",
            Stitch.QUADRUPLE_TREBLE, "double-treble");
    /** "Do not stuff yet" uses no stuffing. */
    private static final Pattern DENIED =
            Pattern.compile("(?i)(?:\\bnot|n['’]t|\\bwithout|\\bnever|\\bbefore)\\s+(?:yet\\s+)?$");

    private static final Pattern MATERIALS = Pattern.compile(
            "(?i)^\\W*(?:materials?|supplies|you (?:will )?need|what you need|notions|tools|abbreviations)\\b");
    private static final Pattern JOIN =
            Pattern.compile("(?i)\\b(?:join(?! (?:it|yarn|the yarn|new|in any)\\b)|ss|sl\\.? ?st|slip stitch)\\b");

    private static final Map<Feature, List<String>> FEATURES = new EnumMap<>(Map.ofEntries(
            Map.entry(Feature.MAGIC_RING, List.of("magic-ring")),
            Map.entry(Feature.CHAIN_START, List.of("chain-start", "chain")),
            Map.entry(Feature.RING_OF_CHAINS, List.of("chain-start", "chain", "slip-stitch")),
            Map.entry(Feature.FOUNDATION_CHAIN, List.of("chain")),
            Map.entry(Feature.OVAL, List.of("oval-start", "chain")),
            Map.entry(Feature.STARTING_CHAIN, List.of("chain")),
            Map.entry(Feature.JOINED, List.of("slip-stitch", "joined-rounds"))));

    /** Two and three in one stitch are increases; more, of a tall stitch, are a fan. */
    private static final int FEWEST_IN_A_SHELL = 4;

    private final List<String> order;
    private final Map<String, Pattern> named = new LinkedHashMap<>();

    LineUses(Collection<Technique> techniques) {
        order = techniques.stream().map(Technique::id).toList();
        for (Technique technique : techniques) {
            technique
                    .found()
                    .ifPresent(words -> named.put(
                            technique.id(), Pattern.compile(words, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)));
        }
    }

    /** Ids in teaching order. */
    List<String> of(Line line) {
        Set<String> used = new TreeSet<>();
        line.round().ifPresent(steps -> steps.list().forEach(step -> step(step, used)));
        line.features().forEach(feature -> used.addAll(FEATURES.getOrDefault(feature, List.of())));
        if (!MATERIALS.matcher(line.text()).find()) {
            words(line.text(), used);
        }
        settle(line, used);
        return order.stream().filter(used::contains).toList();
    }

    private static final Set<Feature> CHAINS =
            EnumSet.of(Feature.CHAIN_START, Feature.RING_OF_CHAINS, Feature.FOUNDATION_CHAIN, Feature.OVAL);

    /** A ring that is pulled tight is no last round; a line without stitches joins a round only where it says so. */
    private static void settle(Line line, Set<String> used) {
        if (startsInRing(line)) {
            used.add("magic-ring");
            used.remove("closing-the-last-round");
        }
        if (line.round().isEmpty() && line.features().contains(Feature.RING_OF_CHAINS)) {
            used.remove("joined-rounds");
        } else if (line.round().isEmpty() && !JOIN.matcher(line.text()).find()) {
            used.removeAll(List.of("joined-rounds", "slip-stitch"));
        }
    }

    /** A ring that is not said to be of chains is the closing one. */
    private static boolean startsInRing(Line line) {
        return Collections.disjoint(line.features(), CHAINS)
                && line.round()
                        .map(steps -> steps.list().stream()
                                .anyMatch(step -> step.action() == Action.INTO_RING && step.loop() != Step.Loop.SPACE))
                        .orElse(false);
    }

    private void words(String text, Set<String> used) {
        named.forEach((id, words) -> {
            Matcher matcher = words.matcher(text);
            while (matcher.find()) {
                if (!DENIED.matcher(text).region(0, matcher.start()).find()) {
                    used.add(id);
                }
            }
        });
    }

    private static void step(Step step, Set<String> used) {
        boolean stitch = step.action() != Action.SKIP && step.action() != Action.JOIN && step.stitch() != Stitch.OTHER;
        if (stitch) {
            used.add(OTHER_NAMES.getOrDefault(
                    step.stitch(), step.stitch().name().toLowerCase(Locale.ROOT).replace('_', '-')));
        }
        switch (step.action()) {
            case INCREASE -> used.add(fan(step) ? "shell" : "increase");
            case DECREASE -> used.add("decrease");
            case INVISIBLE_DECREASE -> used.add("invisible-decrease");
            case JOIN -> used.add("slip-stitch");
            case PLAIN, SKIP, CHAIN, GROUP, INTO_RING -> {}
        }
        loop(step, used);
    }

    private static boolean fan(Step step) {
        return step.makes() >= FEWEST_IN_A_SHELL
                && step.stitch().height() > Stitch.DOUBLE_CROCHET.height()
                && step.loop() != Step.Loop.SPACE;
    }

    private static void loop(Step step, Set<String> used) {
        switch (step.loop()) {
            case FRONT -> used.add("front-loop-only");
            case BACK -> used.add("back-loop-only");
            case THIRD -> used.add("third-loop");
            case FRONT_POST, BACK_POST -> used.add("post-stitch");
            case BOTH, SPACE -> {}
        }
    }
}
