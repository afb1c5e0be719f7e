package roundwright.group.counts;

import java.util.List;
import java.util.Optional;
import roundwright.group.Expectations;
import roundwright.group.RoundPlace;
import roundwright.group.messages.NameFinder;

/** Whom and what a table can speak of: the students of the group, the parts and rounds of the pattern. */
public final class Roll {
    private final Expectations expectations;
    private final NameFinder students;
    private final NameFinder parts;
    private final List<String> partNames;

    public Roll(Expectations expectations, List<String> students) {
        this.expectations = expectations;
        this.students = new NameFinder(students);
        this.partNames =
                expectations.places().stream().map(RoundPlace::part).distinct().toList();
        this.parts = new NameFinder(partNames);
    }

    Optional<String> student(String written) {
        return students.find(written);
    }

    Optional<String> part(String written) {
        return parts.find(written);
    }

    /** The only part of a pattern that has one. */
    Optional<String> onlyPart() {
        return partNames.size() == 1 ? Optional.of(partNames.get(0)) : Optional.empty();
    }

    List<String> parts() {
        return partNames;
    }

    boolean has(String part, int round) {
        return expectations.round(new RoundPlace(part, round)).isPresent();
    }
}
