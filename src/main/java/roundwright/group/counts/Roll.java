package roundwright.group.counts;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import roundwright.group.Expectations;
import roundwright.group.RoundPlace;
import roundwright.group.messages.Folding;
import roundwright.group.messages.NameFinder;
import roundwright.pattern.Round;

/**
 * Whom and what a table can speak of: the students of the group, the parts and rounds of the pattern, checks and their answers; and
 * what was decided of names and rounds that are not among them. Never changes: each {@code with…} gives another.
 */
public final class Roll {
    /** So many times the pattern's largest count, and a count is a slip of the keys. */
    private static final int ABSURD = 10;

    private final Expectations expectations;
    private final Optional<NameFinder> students;
    private final Map<String, String> parts = new HashMap<>();
    private final List<String> partNames;
    private final int most;
    private final RollDecisions decisions;
    private final Map<String, List<String>> checks;

    private Roll(
            Expectations expectations,
            Optional<NameFinder> students,
            RollDecisions decisions,
            Map<String, List<String>> checks) {
        this.expectations = expectations;
        this.students = students;
        this.decisions = decisions;
        this.checks = checks;
        this.partNames =
                expectations.places().stream().map(RoundPlace::part).distinct().toList();
        partNames.forEach(part -> parts.putIfAbsent(folded(part), part));
        int largest = expectations.places().stream()
                .flatMapToInt(place -> expectations.count(place).stream())
                .max()
                .orElse(0);
        this.most = ABSURD * Math.max(largest, ABSURD);
    }

    /** A group's students; names in the table are held against theirs. */
    public Roll(Expectations expectations, List<String> students) {
        this(expectations, Optional.of(new NameFinder(students)), RollDecisions.NONE, Map.of());
    }

    /** Whoever is named: every name is a student, as it is written. */
    public static Roll ofAnybody(Expectations expectations) {
        return new Roll(expectations, Optional.empty(), RollDecisions.NONE, Map.of());
    }

    /** The same with what a person has decided. */
    public Roll with(RollDecisions decided) {
        return new Roll(expectations, students, decided, checks);
    }

    /** The same with the checks that can be answered, and how. */
    public Roll withChecks(Map<String, List<String>> answers) {
        return new Roll(expectations, students, decisions, Map.copyOf(answers));
    }

    /** The student a written name means. */
    Optional<String> student(String written) {
        if (written.isBlank()) {
            return Optional.empty();
        }
        Optional<String> decided = decisions.student(written);
        return decided.or(() -> students.isEmpty() ? Optional.of(written) : listed(written));
    }

    /** The student of the group that a written name means: nobody where any name will do. */
    Optional<String> listed(String written) {
        return written.isBlank()
                ? Optional.empty()
                : students.flatMap(group -> group.find(written)).filter(name -> sameNumbers(written, name));
    }

    /** A letter may be a slip; of two who are told apart by a number neither is taken for the other. */
    private static boolean sameNumbers(String written, String name) {
        return written.replaceAll("\\D", "").equals(name.replaceAll("\\D", ""));
    }

    /** The part that a written name means. */
    Optional<String> part(String written) {
        return written.isBlank()
                ? Optional.empty()
                : decisions.part(written).or(() -> Optional.ofNullable(parts.get(folded(written))));
    }

    private static String folded(String name) {
        return Folding.fold(name).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }

    /** The part that is meant where none is named. */
    Optional<String> usualPart() {
        return partNames.size() == 1 ? Optional.of(partNames.get(0)) : decisions.usualPart();
    }

    List<String> parts() {
        return partNames;
    }

    /** The round that a part and a number mean; empty where there is none. */
    Optional<RoundPlace> place(String part, int round) {
        RoundPlace place = new RoundPlace(part, round);
        return expectations.round(place).isPresent() ? Optional.of(place) : decisions.place(place);
    }

    /** First and last number of a part's rounds; nothing where it has none. */
    int[] rounds(String part) {
        return IntStream.concat(
                        numbers(part).limit(1),
                        numbers(part).skip(Math.max(0, numbers(part).count() - 1)))
                .toArray();
    }

    private IntStream numbers(String part) {
        return expectations.places().stream()
                .filter(place -> place.part().equals(part))
                .mapToInt(RoundPlace::round);
    }

    OptionalInt count(RoundPlace place) {
        return expectations.round(place).map(Round::count).orElse(OptionalInt.empty());
    }

    /** Whether a count is so large that it cannot be meant. */
    boolean absurd(int count) {
        return count > most;
    }

    /** Whether rows of a course of that name are meant; all are where no course was said to be the one. */
    boolean ofCourse(String written) {
        return written.isBlank()
                || decisions.course().isEmpty()
                || folded(decisions.course().get()).equals(folded(written));
    }

    boolean answers(String check, String answer) {
        return checks.getOrDefault(check, List.of()).contains(answer);
    }
}
