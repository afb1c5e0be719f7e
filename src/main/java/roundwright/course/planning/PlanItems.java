package roundwright.course.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import roundwright.notation.Terms;
import roundwright.pattern.Line;
import roundwright.pattern.Part;
import roundwright.pattern.PartItem;
import roundwright.pattern.Pattern;
import roundwright.pattern.Round;
import roundwright.pattern.Verdict;
import roundwright.technique.FirstUses;
import roundwright.technique.FirstUses.Missing;
import roundwright.technique.FirstUses.Place;
import roundwright.wording.Wording;

/**
 * What there is to do in a pattern, in working order, and how long it takes.
 *
 * <p>An instruction that takes no time ("Change to red.") is no item; what it brings for the first time is taught with the item
 * that follows it in its part, or with the part's last. A round that could not be read takes the time of the stitches that it
 * states, or else of the round below.
 *
 * @param items the rounds, and the instructions that take time
 * @param remarks what had to be planned around, and what to practise beforehand because the pattern skips it
 */
public record PlanItems(List<PlanItem> items, List<PlanRemark> remarks) {
    private static final Wording WORDS = Wording.of("course");

    /** Stitches a minute where a course does not say: beginners after some four lessons make five to eight. */
    public static final double USUAL_PACE = 6;

    /** Minutes a round for counting it and moving the marker up. */
    public static final double COUNTING_MINUTES = 0.75;

    public PlanItems {
        items = List.copyOf(items);
        remarks = List.copyOf(remarks);
    }

    /**
     * The items of a pattern.
     *
     * @param uses the pattern, and where each technique comes first in it
     * @param pace stitches a minute
     */
    public static PlanItems of(FirstUses uses, double pace) {
        List<Work> works = new Walk(uses).works();
        List<PlanRemark> remarks = new ArrayList<>(unread(uses.pattern()));
        uses.missing()
                .forEach(missing -> remarks.add(practise(missing, uses.pattern().terms())));
        return new PlanItems(items(works, pace), remarks);
    }

    /** What to practise beforehand, where a pattern skips what leads up to a technique. */
    private static PlanRemark practise(Missing missing, Terms terms) {
        Place place = missing.use().place();
        String where = place.round().map(round -> place.part() + " " + round).orElse(place.part());
        List<String> before = missing.before().stream()
                .map(technique -> technique.name(terms))
                .toList();
        return new PlanRemark(
                OptionalInt.empty(),
                WORDS.say("plan-practise-before", missing.use().technique().name(terms), where, Wording.list(before)));
    }

    private static List<PlanItem> items(List<Work> works, double pace) {
        List<PlanItem> items = new ArrayList<>();
        int range = 0;
        int count = 0;
        for (int i = 0; i < works.size(); i++) {
            Work work = works.get(i);
            Optional<Work> next = Optional.of(i + 1)
                    .filter(at -> at < works.size())
                    .map(works::get)
                    .filter(other -> other.part().equals(work.part()));
            range += i > 0 && works.get(i - 1).line() == work.line() ? 0 : 1;
            count = work.round().isPresent() ? work.stitches() : count;
            items.add(work.item(pace, range, next, count));
        }
        return items;
    }

    private static List<PlanRemark> unread(Pattern pattern) {
        List<PlanRemark> remarks = new ArrayList<>();
        for (Part part : pattern.parts()) {
            for (Line line : part.lines()) {
                if (line.verdict() == Verdict.NOT_UNDERSTOOD) {
                    String text = line.label().isPresent()
                            ? WORDS.say(
                                    "plan-unread-round",
                                    part.name(),
                                    line.text().strip())
                            : WORDS.say(
                                    "plan-unread-line", part.name(), line.text().strip());
                    remarks.add(new PlanRemark(OptionalInt.empty(), text));
                }
            }
        }
        return remarks;
    }

    /** Goes through the pattern item by item. */
    private static final class Walk {
        private final FirstUses uses;
        private final List<Work> works = new ArrayList<>();
        private final List<Place> waiting = new ArrayList<>();
        private String part = "";
        private boolean partHasWork;
        private OptionalInt countBelow = OptionalInt.empty();

        Walk(FirstUses uses) {
            this.uses = uses;
        }

        List<Work> works() {
            List<Place> places = uses.places();
            for (int i = 0; i < places.size(); i++) {
                Place place = places.get(i);
                if (!place.part().equals(part)) {
                    beginPart(place.part());
                }
                boolean lastOfLine = i + 1 == places.size()
                        || places.get(i + 1).item().line() != place.item().line();
                visit(place, lastOfLine);
            }
            teachWithLast();
            return works;
        }

        private void beginPart(String name) {
            if (partHasWork) {
                teachWithLast();
            }
            part = name;
            partHasWork = false;
            countBelow = OptionalInt.empty();
        }

        private void visit(Place place, boolean lastOfLine) {
            Set<Task> tasks = lastOfLine ? tasks(place.item()) : Set.of();
            waiting.add(place);
            if (place.item() instanceof Round || !tasks.isEmpty()) {
                Work work = new Work(place, tasks, countBelow);
                waiting.forEach(at -> work.teach(uses, at));
                waiting.clear();
                works.add(work);
                partHasWork = true;
                if (place.item() instanceof Round) {
                    countBelow = OptionalInt.of(work.stitches());
                }
            }
        }

        /** "Pull tight" in a part's first round closes the ring, not the piece. */
        private Set<Task> tasks(PartItem item) {
            boolean start = item instanceof Round && countBelow.isEmpty();
            return start ? Set.of() : Task.of(uses.usesOf(item.line()));
        }

        private void teachWithLast() {
            if (!works.isEmpty()) {
                waiting.forEach(at -> works.get(works.size() - 1).teach(uses, at));
                waiting.clear();
            }
        }
    }
}
