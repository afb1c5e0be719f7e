package roundwright.course.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import roundwright.course.RoundRange;
import roundwright.notation.Span;
import roundwright.notation.Terms;
import roundwright.technique.FirstUses;
import roundwright.technique.FirstUses.Missing;
import roundwright.technique.FirstUses.Place;
import roundwright.technique.FirstUses.Use;
import roundwright.technique.Technique;
import roundwright.technique.Techniques;
import roundwright.wording.Wording;

/**
 * Checks the lessons' techniques against those that the pattern uses. A technique that no lesson names is introduced where the pattern
 * first uses it; that is remarked on only where the lessons name what they teach, and this one is left out.
 */
final class TechniqueChecks {
    /** New techniques that a first session, and a later one, can hold. Source: the trade's one new movement or two small ones a session. */
    private static final int MOST_NEW_AT_FIRST = 3;

    private static final int MOST_NEW = 2;

    private final List<PlacedLesson> lessons;
    private final FirstUses uses;
    private final Techniques techniques;
    private final Terms terms;
    private final Problems problems;
    private final Map<String, Integer> introduced = new HashMap<>();

    TechniqueChecks(List<PlacedLesson> lessons, FirstUses uses, Problems problems) {
        this.lessons = lessons;
        this.uses = uses;
        this.techniques = uses.techniques();
        this.terms = uses.pattern().terms();
        this.problems = problems;
    }

    void check() {
        lessons.forEach(this::introduce);
        uses.missing().forEach(this::missing);
        lessons.forEach(this::tooMany);
        lessons.forEach(this::untaught);
    }

    /** A lesson that needs what no lesson teaches, of a course that says what its lessons teach. */
    private void untaught(PlacedLesson lesson) {
        int number = lesson.lesson().number();
        List<String> untaught = introduced.isEmpty()
                ? List.of()
                : uses.all().stream()
                        .filter(use -> !introduced.containsKey(use.technique().id()))
                        .filter(use -> !use.technique().groundwork())
                        .filter(use -> lessonOf(use.place())
                                .filter(needed -> needed == number)
                                .isPresent())
                        .map(use -> use.technique().name(terms))
                        .toList();
        if (!untaught.isEmpty()) {
            problems.remark("untaught", lesson.roundsSpan(), number, untaught.size(), Wording.list(untaught));
        }
    }

    private void introduce(PlacedLesson lesson) {
        int number = lesson.lesson().number();
        for (PlacedTechnique named : lesson.introduced()) {
            Technique technique = techniques.get(named.id()).orElseThrow();
            Integer before = introduced.putIfAbsent(named.id(), number);
            if (before != null) {
                problems.remark("introduced-twice", named.span(), technique.name(terms), before);
            } else {
                introduced(technique, named.span(), number);
            }
        }
    }

    private void introduced(Technique technique, Span at, int number) {
        Optional<Place> place = uses.of(technique.id());
        if (place.isEmpty()) {
            if (!technique.groundwork() && !leadsUp(technique)) {
                problems.warning("introduced-never-used", at, technique.name(terms), number);
            }
            return;
        }
        List<Integer> used = lessonsOf(place.get());
        String where = Where.say(place.get());
        if (!used.isEmpty() && used.get(used.size() - 1) < number) {
            problems.warning("used-before-introduced", at, technique.name(terms), where, used.get(0), number);
        } else if (!used.isEmpty() && used.get(0) > number && !technique.groundwork()) {
            problems.remark("introduced-early", at, technique.name(terms), number, where, used.get(0));
        }
    }

    /** Whether something that the pattern uses needs it: then it is worth a lesson though no line writes it. */
    private boolean leadsUp(Technique technique) {
        return uses.all().stream()
                .map(use -> use.technique().needs())
                .anyMatch(needs ->
                        needs.all().contains(technique.id()) || needs.oneOf().contains(technique.id()));
    }

    /** The first and the last lesson in which an item can be done; of a round they are one. */
    private List<Integer> lessonsOf(Place place) {
        Stream<Integer> worked =
                Where.rounds(place, uses.places()).stream().flatMap(round -> lessonOfRound(round).stream());
        Stream<Integer> end = Where.afterAllRounds(place, uses.places())
                ? Stream.of(lessons.get(lessons.size() - 1).lesson().number())
                : Stream.empty();
        return Stream.concat(worked, end).toList();
    }

    private Optional<Integer> lessonOfRound(Place round) {
        return lessons.stream()
                .filter(lesson -> Stream.concat(lesson.lesson().rounds().stream(), lesson.lesson().homework().stream())
                        .anyMatch(range -> contains(range, round)))
                .map(lesson -> lesson.lesson().number())
                .findFirst();
    }

    /** The lesson that a technique which no lesson names falls to: an instruction after homework is done in the next class. */
    private Optional<Integer> lessonOf(Place place) {
        return Where.rounds(place, uses.places()).stream()
                .filter(round -> place.round().isPresent() || round.order() > place.order() || inClass(round))
                .findFirst()
                .flatMap(this::lessonOfRound);
    }

    private boolean inClass(Place round) {
        return lessons.stream()
                .flatMap(lesson -> lesson.lesson().rounds().stream())
                .anyMatch(range -> contains(range, round));
    }

    private static boolean contains(RoundRange range, Place place) {
        return place.round()
                .filter(round -> range.contains(place.part(), round))
                .isPresent();
    }

    /** What the pattern skips is said where the lesson is, unless an earlier lesson teaches it anyway. */
    private void missing(Missing missing) {
        Optional<Integer> number = lessonOf(missing.use().place());
        List<String> before = missing.before().stream()
                .filter(technique ->
                        number.isEmpty() || introduced.getOrDefault(technique.id(), Integer.MAX_VALUE) > number.get())
                .map(technique -> technique.name(terms))
                .toList();
        if (!before.isEmpty() && number.isPresent()) {
            problems.remark(
                    "prerequisite-missing",
                    lesson(number.get()).roundsSpan(),
                    missing.use().technique().name(terms),
                    Where.say(missing.use().place()),
                    Wording.list(before));
        }
    }

    private PlacedLesson lesson(int number) {
        return lessons.stream()
                .filter(lesson -> lesson.lesson().number() == number)
                .findFirst()
                .orElseThrow();
    }

    private void tooMany(PlacedLesson lesson) {
        int number = lesson.lesson().number();
        boolean first = lesson == lessons.get(0);
        Set<String> fresh = new LinkedHashSet<>();
        for (Use use : uses.all()) {
            boolean named = introduced.containsKey(use.technique().id());
            boolean here = named
                    ? introduced.get(use.technique().id()) == number
                    : lessonOf(use.place()).filter(used -> used == number).isPresent();
            if (here && !use.technique().groundwork()) {
                fresh.add(use.technique().name(terms));
            }
        }
        int most = first ? MOST_NEW_AT_FIRST : MOST_NEW;
        if (fresh.size() > most) {
            problems.remark(
                    "too-many-new",
                    lesson.section()
                            .setting("new")
                            .map(setting -> setting.entry().written().span())
                            .orElse(lesson.section().heading()),
                    number,
                    fresh.size(),
                    Wording.list(new ArrayList<>(fresh)),
                    most);
        }
    }
}
