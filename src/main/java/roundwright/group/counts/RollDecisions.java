package roundwright.group.counts;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import roundwright.group.RoundPlace;
import roundwright.group.messages.Folding;

/**
 * What a person decided of a table: who is meant by a name, which round by one that the pattern lacks. What is not decided is left
 * out when the table is read.
 *
 * @param students by the name as written
 * @param parts by the name as written
 * @param places by the place as written
 * @param usualPart the part that is meant where none is named
 * @param course the course whose rows are wanted, in a table of several
 */
public record RollDecisions(
        Map<String, String> students,
        Map<String, String> parts,
        Map<RoundPlace, RoundPlace> places,
        Optional<String> usualPart,
        Optional<String> course) {
    public static final RollDecisions NONE =
            new RollDecisions(Map.of(), Map.of(), Map.of(), Optional.empty(), Optional.empty());

    public RollDecisions {
        students = folded(students);
        parts = folded(parts);
        places = Map.copyOf(places);
    }

    private static Map<String, String> folded(Map<String, String> names) {
        Map<String, String> folded = new HashMap<>();
        names.forEach((written, meant) -> folded.put(Folding.fold(written).strip(), meant));
        return Map.copyOf(folded);
    }

    Optional<String> student(String written) {
        return Optional.ofNullable(students.get(Folding.fold(written).strip()));
    }

    Optional<String> part(String written) {
        return Optional.ofNullable(parts.get(Folding.fold(written).strip()));
    }

    Optional<RoundPlace> place(RoundPlace place) {
        return Optional.ofNullable(places.get(place));
    }
}
