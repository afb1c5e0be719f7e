package roundwright.technique;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import roundwright.notation.Stitch;
import roundwright.pattern.Line;
import roundwright.pattern.Step;
import roundwright.pattern.Step.Action;

/** Finds the techniques of one line: from its steps, and from its words where no stitch shows them. */
final class LineUses {
    private static final Pattern RING = Pattern.compile("\\b(?:mr|mc|magic|adjustable)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern FROM_CHAINS = Pattern.compile("\\b\\d*ch(?:ain)?s?\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern DENIED = Pattern.compile("(?:\\bnot|n't|n’t|\\bwithout|\\bnever)\\s+(?:yet\\s+)?$");
    private static final Map<Stitch, String> GROUPS = Map.of(Stitch.PUFF, "puff-stitch", Stitch.V_STITCH, "shell");

    private final List<String> order;
    private final Map<String, Pattern> found = new LinkedHashMap<>();

    LineUses(Collection<Technique> techniques) {
        order = techniques.stream().map(Technique::id).toList();
        for (Technique technique : techniques) {
            technique
                    .found()
                    .ifPresent(words -> found.put(
                            technique.id(), Pattern.compile(words, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)));
        }
    }

    /** Ids in teaching order. */
    List<String> of(Line line) {
        Set<String> used = new TreeSet<>();
        line.round().ifPresent(steps -> steps.list().forEach(step -> step(step, line, used)));
        line.round().ifPresent(steps -> joins(steps.list(), used));
        words(line.text(), used);
        return order.stream().filter(used::contains).toList();
    }

    private void step(Step step, Line line, Set<String> used) {
        if (step.action() != Action.SKIP && step.action() != Action.JOIN) {
            stitch(step.stitch(), used);
        }
        switch (step.action()) {
            case INCREASE -> used.add("increase");
            case DECREASE -> used.add("decrease");
            case INVISIBLE_DECREASE -> used.add("invisible-decrease");
            case INTO_RING -> start(step, line.text(), used);
            case PLAIN, SKIP, CHAIN, JOIN, GROUP -> {}
        }
        loop(step, used);
    }

    private void stitch(Stitch stitch, Set<String> used) {
        switch (stitch) {
            case OTHER -> {}
            case TRIPLE_TREBLE, QUADRUPLE_TREBLE -> used.add("double-treble");
            default ->
                used.add(GROUPS.getOrDefault(
                        stitch, stitch.name().toLowerCase(Locale.ROOT).replace('_', '-')));
        }
    }

    /** A stitch into a ring is the magic ring unless the line says that the ring, or the start, is of chains. */
    private static void start(Step step, String text, Set<String> used) {
        if (step.loop() == Step.Loop.SPACE) {
            return;
        }
        boolean chains = FROM_CHAINS.matcher(text).find() && !RING.matcher(text).find();
        used.add(chains ? "chain-start" : "magic-ring");
    }

    private static void loop(Step step, Set<String> used) {
        switch (step.loop()) {
            case FRONT -> {
                if (step.action() != Action.INVISIBLE_DECREASE) {
                    used.add("front-loop-only");
                }
            }
            case BACK -> used.add("back-loop-only");
            case THIRD -> used.add("third-loop");
            case FRONT_POST, BACK_POST -> used.add("post-stitch");
            case BOTH, SPACE -> {}
        }
    }

    /** A join after the round's stitches closes a round; one before them closes a ring of chains. */
    private static void joins(List<Step> steps, Set<String> used) {
        boolean stitches = false;
        for (Step step : steps) {
            if (step.action() == Action.JOIN) {
                used.add("slip-stitch");
                if (stitches) {
                    used.add("joined-rounds");
                }
            }
            stitches |= step.makes() > 0 && step.action() != Action.CHAIN;
        }
    }

    private void words(String text, Set<String> used) {
        found.forEach((id, words) -> {
            var matcher = words.matcher(text);
            while (matcher.find()) {
                if (!DENIED.matcher(text.substring(0, matcher.start())).find()) {
                    used.add(id);
                }
            }
        });
    }
}
