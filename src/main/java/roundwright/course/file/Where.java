package roundwright.course.file;

import java.util.List;
import java.util.Optional;
import roundwright.technique.FirstUses.Place;
import roundwright.wording.Wording;

/** Says where in the pattern something stands, and finds the round that an instruction goes with. */
final class Where {
    private static final Wording WORDS = Wording.of("course");

    private Where() {}

    /** "Tower 6", or "an instruction of the part Tower". */
    static String say(Place place) {
        return place.round()
                .map(round -> place.part() + " " + round)
                .orElseGet(() -> WORDS.say("instruction-of", place.part()));
    }

    /** The round itself; of an instruction, the round before it in its part, or else the one after. */
    static Optional<Place> roundOf(Place place, List<Place> places) {
        for (int order = place.order(); order >= place.order() - place.index(); order--) {
            if (places.get(order).round().isPresent()) {
                return Optional.of(places.get(order));
            }
        }
        return places.stream()
                .filter(other -> other.order() > place.order()
                        && other.part().equals(place.part())
                        && other.round().isPresent())
                .findFirst();
    }
}
