package roundwright.course.preparation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundwright.course.Course;
import roundwright.course.planning.ItemWords;
import roundwright.course.planning.Plan;
import roundwright.course.planning.PlanItem;
import roundwright.course.planning.PlannedLesson;
import roundwright.course.preparation.PrepLine.Kind;
import roundwright.pattern.Instruction;
import roundwright.pattern.Part;
import roundwright.pattern.PartItem;
import roundwright.pattern.Round;
import roundwright.technique.Techniques;
import roundwright.wording.Wording;

/** What a teacher gets ready for a course as planned, and for each lesson of it. */
public final class Preparation {
    private static final Wording WORDS = Wording.of("course");

    /** A longer session needs a break for the hands. */
    private static final double BREAK_AFTER_MINUTES = 45;

    private final Course course;
    private final Plan plan;
    private final Techniques techniques;
    private final Optional<YarnUse> yarn;

    private Preparation(Course course, Plan plan) {
        this.course = course;
        this.plan = plan;
        this.techniques = course.techniques();
        this.yarn = YarnUse.of(course);
    }

    /** The preparation of a course by a plan of the whole of it. */
    public static Preparation of(Course course, Plan plan) {
        return new Preparation(course, plan);
    }

    /** For the whole course, for each person: what to buy, and the cautions that hold all along. */
    public List<PrepLine> wholeCourse() {
        List<PrepLine> lines = new ArrayList<>();
        yarn.ifPresent(use -> addYarn(lines, use.metres()));
        course.settings().yarn().ifPresent(text -> lines.add(material("yarn", text)));
        course.settings().hook().ifPresent(text -> lines.add(material("hook", text)));
        Set<String> used = used(plan.items());
        for (Notion notion : Notion.values()) {
            if (notion.neededFor(used)) {
                lines.add(new PrepLine(Kind.MATERIAL, WORDS.say("prepare." + notion.word())));
            }
        }
        for (String caution : List.of("caution-fibres", "caution-people")) {
            lines.add(new PrepLine(Kind.CAUTION, WORDS.say("prepare." + caution)));
        }
        return lines;
    }

    /** For one lesson of the plan. */
    public List<PrepLine> lesson(PlannedLesson lesson) {
        List<PlanItem> items = plan.inClass(lesson);
        Set<String> used = used(items);
        List<PrepLine> lines = new ArrayList<>();
        yarn.ifPresent(use -> addYarn(lines, use.metres((part, round) -> has(items, part, round))));
        for (Notion notion : Notion.values()) {
            if (notion.neededFor(used)) {
                lines.add(new PrepLine(Kind.MATERIAL, WORDS.say("prepare." + notion.word())));
            }
        }
        addSamples(lesson, lines);
        addOrder(used, lines);
        addCautions(lesson, used, lines);
        return lines;
    }

    private static boolean has(List<PlanItem> items, String part, int round) {
        return items.stream()
                .anyMatch(item -> item.part().equals(part)
                        && item.round().isPresent()
                        && item.round().getAsInt() == round);
    }

    private static void addYarn(List<PrepLine> lines, Map<String, Double> metres) {
        metres.forEach((colour, length) -> lines.add(material("metres", Math.ceil(length), colour)));
    }

    private static PrepLine material(String key, Object... arguments) {
        return new PrepLine(
                Kind.MATERIAL, WORDS.say("prepare.material-" + key, arguments).replaceAll(" +", " "));
    }

    private void addSamples(PlannedLesson lesson, List<PrepLine> lines) {
        for (String id : lesson.introduces()) {
            String name = techniques
                    .get(id)
                    .map(technique -> technique.name(course.pattern().terms()))
                    .orElse(id);
            lines.add(new PrepLine(Kind.SAMPLE, WORDS.say("prepare.sample-technique", name)));
        }
        if (lesson.introduces().contains("magic-ring")) {
            lines.add(new PrepLine(Kind.SAMPLE, WORDS.say("prepare.sample-rings")));
        }
        int from = lesson.stretch().from();
        if (from > 0) {
            lines.add(new PrepLine(
                    Kind.SAMPLE,
                    WORDS.say(
                            "prepare.sample-start", ItemWords.name(plan.items().get(from - 1)))));
        }
    }

    /** What cannot be done any more once something else is done. */
    private static void addOrder(Set<String> used, List<PrepLine> lines) {
        boolean stuffs = used.contains("stuffing");
        if (stuffs && used.contains("placing-features")) {
            lines.add(new PrepLine(Kind.ORDER, WORDS.say("prepare.order-place")));
        }
        if (stuffs && used.contains("sewing-on")) {
            lines.add(new PrepLine(Kind.ORDER, WORDS.say("prepare.order-sew")));
        }
        if (stuffs) {
            lines.add(new PrepLine(Kind.ORDER, WORDS.say("prepare.order-stuff")));
        }
        if (used.contains("stitch-marker") || used.contains("spiral-rounds")) {
            lines.add(new PrepLine(Kind.ORDER, WORDS.say("prepare.order-marker")));
        }
    }

    private void addCautions(PlannedLesson lesson, Set<String> used, List<PrepLine> lines) {
        List<String> keys = new ArrayList<>();
        if (used.contains("placing-features")) {
            keys.add("caution-small-parts");
        }
        if (Notion.NEEDLE.neededFor(used)) {
            keys.add("caution-needles");
        }
        if (lesson.number() == 1 || Notion.SCISSORS.neededFor(used)) {
            keys.add("caution-scissors");
        }
        if (lesson.minutes().total() > BREAK_AFTER_MINUTES) {
            keys.add("caution-hands");
        }
        keys.forEach(key -> lines.add(new PrepLine(Kind.CAUTION, WORDS.say("prepare." + key))));
    }

    /** Ids of techniques that some items use or bring for the first time. */
    private Set<String> used(List<PlanItem> items) {
        Set<String> used = items.stream()
                .flatMap(item ->
                        Stream.concat(item.introduces().stream(), lines(item).flatMap(this::uses)))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (items.stream().anyMatch(item -> item.round().isPresent())) {
            used.add("stitch-marker");
        }
        return used;
    }

    private Stream<String> uses(PartItem item) {
        return course.uses().usesOf(item.line()).stream();
    }

    private Stream<PartItem> lines(PlanItem item) {
        Optional<Part> part = course.pattern().part(item.part());
        return part.stream().flatMap(one -> one.items().stream()).filter(candidate -> is(candidate, item));
    }

    private static boolean is(PartItem candidate, PlanItem item) {
        if (candidate instanceof Round round) {
            return item.round().isPresent() && item.round().getAsInt() == round.number();
        }
        return candidate instanceof Instruction instruction
                && item.instruction()
                        .equals(Optional.of(instruction.line().text().strip()));
    }
}
