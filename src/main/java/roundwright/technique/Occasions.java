package roundwright.technique;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import roundwright.notation.Feature;
import roundwright.pattern.Round;
import roundwright.pattern.Steps;
import roundwright.technique.FirstUses.Place;

/** Goes through a pattern from item to item and says which groundwork the item's occasion asks for. */
final class Occasions {
    private static final Pattern REPEATS = Pattern.compile(
            "(?i)[x×*]\\s?\\d|\\d\\s?[x×]|\\btimes\\b|\\brep(?:eat)?\\b|\\btwice\\b|[(\\[{][^()\\[\\]{}]{1,80},[^()\\[\\]{}]{1,80}[)\\]}]");

    private final Map<Occasion, List<String>> groundwork = new EnumMap<>(Occasion.class);
    private Optional<Place> below = Optional.empty();

    /** How many rounds of one line have come in a row: the third of a range is like the second. */
    private int run;

    Occasions(Techniques techniques) {
        for (Technique technique : techniques.all()) {
            technique
                    .comesWith()
                    .ifPresent(occasion -> groundwork
                            .computeIfAbsent(occasion, each -> new ArrayList<>())
                            .add(technique.id()));
        }
    }

    /** Whether a round of the item's part has been worked before it. */
    boolean workBelow(Place place) {
        return below.filter(other -> other.part().equals(place.part())).isPresent();
    }

    /** Ids of the groundwork that an item asks for; items have to be given in working order. */
    List<String> at(Place place) {
        if (!(place.item() instanceof Round round)) {
            return List.of();
        }
        run = below.filter(other -> other.item().line() == round.line()).isPresent() ? run + 1 : 1;
        if (run > 2) {
            below = Optional.of(place);
            return List.of();
        }
        Optional<Round> under =
                below.filter(other -> other.part().equals(place.part())).map(other -> (Round) other.item());
        below = Optional.of(place);
        return occasions(round, under).stream()
                .flatMap(occasion -> groundwork.getOrDefault(occasion, List.of()).stream())
                .toList();
    }

    private static Set<Occasion> occasions(Round round, Optional<Round> under) {
        Set<Occasion> occasions = EnumSet.of(Occasion.FIRST_ROUND);
        if (round.steps().map(steps -> steps.block().isPresent()).orElse(false)
                || REPEATS.matcher(round.line().text()).find()) {
            occasions.add(Occasion.REPEAT);
        }
        if (under.isPresent()) {
            occasions.add(Occasion.SECOND_ROUND);
            if (inSpiral(round) && inSpiral(under.get())) {
                occasions.add(Occasion.SPIRAL_ROUND);
            }
            if (round.steps().filter(Occasions::even).isPresent()) {
                occasions.add(Occasion.EVEN_ROUND);
            }
        }
        return occasions;
    }

    private static boolean inSpiral(Round round) {
        return !round.line().features().contains(Feature.JOINED)
                && !round.line().features().contains(Feature.TURNED);
    }

    private static boolean even(Steps steps) {
        return steps.takes() > 0 && steps.takes() == steps.makes() && !steps.shapes();
    }
}
