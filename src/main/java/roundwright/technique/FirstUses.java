package roundwright.technique;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundwright.pattern.Line;
import roundwright.pattern.Part;
import roundwright.pattern.PartItem;
import roundwright.pattern.Pattern;
import roundwright.pattern.Round;

/**
 * Where each technique comes first in a pattern, found from the pattern itself.
 *
 * <p>A technique that a line writes comes first at the first such line. Groundwork comes first there too, or on its {@link Occasion},
 * or earlier where something else needs it. Items are numbered through the whole pattern, in working order, from 0.
 */
public final class FirstUses {
    /**
     * A thing to do, and its place in the pattern.
     *
     * @param order number of the item in the whole pattern, from 0
     * @param part name of its part
     * @param index number of the item in its part, from 0
     */
    public record Place(int order, String part, int index, PartItem item) {
        /** The round's number; empty for an instruction. */
        public Optional<Integer> round() {
            return item instanceof Round round ? Optional.of(round.number()) : Optional.empty();
        }
    }

    /** A technique, and where it comes first. */
    public record Use(Technique technique, Place place) {}

    /** A technique that needs others which the pattern does not use before it: to be practised beforehand. */
    public record Missing(Use use, List<Technique> before) {}

    /** Beginning a part in a colour is no change of colour. */
    private static final String COLOUR_CHANGE = "colour-change";

    private final Pattern pattern;
    private final Techniques techniques;
    private final List<Place> places;
    private final Map<Line, List<String>> written = new IdentityHashMap<>();
    private final Map<String, Place> first = new LinkedHashMap<>();
    private final Map<Integer, List<Use>> byOrder = new HashMap<>();

    private FirstUses(Pattern pattern, Techniques techniques) {
        this.pattern = pattern;
        this.techniques = techniques;
        this.places = places(pattern);
        Occasions occasions = new Occasions(techniques);
        for (Place place : places) {
            Line line = place.item().line();
            boolean sameLine =
                    place.index() > 0 && places.get(place.order() - 1).item().line() == line;
            for (String id : sameLine ? List.<String>of() : written.computeIfAbsent(line, techniques::uses)) {
                if (!id.equals(COLOUR_CHANGE) || occasions.workBelow(place)) {
                    first.putIfAbsent(id, place);
                }
            }
            for (String id : occasions.at(place)) {
                first.putIfAbsent(id, place);
            }
        }
        groundwork();
        for (Use use : inTeachingOrder()) {
            byOrder.computeIfAbsent(use.place().order(), order -> new ArrayList<>())
                    .add(use);
        }
    }

    /** The first uses in a pattern of the techniques of the catalogue and of the course. */
    public static FirstUses of(Pattern pattern, Techniques techniques) {
        return new FirstUses(pattern, techniques);
    }

    private static List<Place> places(Pattern pattern) {
        List<Place> places = new ArrayList<>();
        for (Part part : pattern.parts()) {
            for (int index = 0; index < part.items().size(); index++) {
                places.add(new Place(
                        places.size(), part.name(), index, part.items().get(index)));
            }
        }
        return places;
    }

    /** Groundwork is shown no later than what needs it; a fixed point, since groundwork needs groundwork. */
    private void groundwork() {
        boolean moved = true;
        while (moved) {
            moved = false;
            for (String id : List.copyOf(first.keySet())) {
                for (String need : techniques.get(id).orElseThrow().needs().all()) {
                    moved |= bringForward(need, first.get(id));
                }
            }
        }
    }

    private boolean bringForward(String need, Place place) {
        boolean groundwork = techniques.get(need).map(Technique::groundwork).orElse(false);
        Place known = first.get(need);
        if (groundwork && (known == null || known.order() > place.order())) {
            first.put(need, place);
            return true;
        }
        return false;
    }

    public Pattern pattern() {
        return pattern;
    }

    /** The techniques that were looked for. */
    public Techniques techniques() {
        return techniques;
    }

    /** Ids of the techniques that a line of the pattern uses, in teaching order. */
    public List<String> usesOf(Line line) {
        List<String> known = written.get(line);
        return known == null ? techniques.uses(line) : known;
    }

    /** Everything to do, in working order. */
    public List<Place> places() {
        return places;
    }

    /** Every technique used, in working order and within one place in teaching order. */
    public List<Use> all() {
        return inTeachingOrder().stream()
                .sorted(Comparator.comparingInt(use -> use.place().order()))
                .toList();
    }

    private List<Use> inTeachingOrder() {
        return techniques.all().stream()
                .filter(technique -> first.containsKey(technique.id()))
                .map(technique -> new Use(technique, first.get(technique.id())))
                .toList();
    }

    /** Where a technique comes first; empty where the pattern does not use it. */
    public Optional<Place> of(String technique) {
        return Optional.ofNullable(first.get(technique));
    }

    /** All that comes first at an item, groundwork too, in teaching order: what has to be taught there. */
    public List<Use> at(int order) {
        return byOrder.getOrDefault(order, List.of());
    }

    /** What comes first at an item and counts as new: techniques that are not groundwork. */
    public List<Technique> newAt(int order) {
        return at(order).stream()
                .map(Use::technique)
                .filter(technique -> !technique.groundwork())
                .toList();
    }

    /** Minutes of teaching at an item: of all that comes first there, groundwork too. */
    public double teachingMinutes(int order) {
        return at(order).stream().mapToDouble(use -> use.technique().minutes()).sum();
    }

    /** Techniques that the pattern uses before anything has led up to them, with what to practise beforehand. */
    public List<Missing> missing() {
        List<Missing> missing = new ArrayList<>();
        for (Use use : all()) {
            List<Technique> before = new ArrayList<>();
            for (String need : use.technique().needs().all()) {
                if (!known(need, use.place())) {
                    techniques.get(need).ifPresent(before::add);
                }
            }
            List<String> oneOf = use.technique().needs().oneOf();
            if (!oneOf.isEmpty() && oneOf.stream().noneMatch(need -> known(need, use.place()))) {
                techniques.get(oneOf.get(0)).ifPresent(before::add);
            }
            if (!before.isEmpty()) {
                missing.add(new Missing(use, before));
            }
        }
        return missing;
    }

    private boolean known(String id, Place place) {
        return of(id).filter(known -> known.order() <= place.order()).isPresent();
    }
}
