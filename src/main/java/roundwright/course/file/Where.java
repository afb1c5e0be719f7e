package roundwright.course.file;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

    /**
     * The round itself; of an instruction, the round before it in its part and the round after it in the pattern, as far as there are such: it may be
     * done with either, or at any time between.
     */
    static List<Place> rounds(Place place, List<Place> places) {
        if (place.round().isPresent()) {
            return List.of(place);
        }
        Optional<Place> before = places.subList(place.order() - place.index(), place.order()).stream()
                .filter(other -> other.round().isPresent())
                .reduce((earlier, later) -> later);
        Optional<Place> after = places.subList(place.order() + 1, places.size()).stream()
                .filter(other -> other.round().isPresent())
                .findFirst();
        return Stream.concat(before.stream(), after.stream()).toList();
    }

    /** Whether nothing is left to work after it. */
    static boolean afterAllRounds(Place place, List<Place> places) {
        return places.subList(place.order(), places.size()).stream()
                .allMatch(other -> other.round().isEmpty());
    }
}
