package roundwright.desktop.next;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundwright.course.Lesson;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.RoundPlace;
import roundwright.group.RoundStanding;
import roundwright.group.Standing;
import roundwright.mistakes.help.Mastery;
import roundwright.pattern.Round;
import roundwright.technique.Technique;

/** A student's way through the techniques of a course, in the order in which they come. */
final class TechniqueWay {
    private static final int ROUNDS_TO_BE_SURE = 2;
    private static final double TIMES_THE_USUAL = 3;

    private final OpenCourse course;
    private final Map<RoundPlace, List<String>> uses = new HashMap<>();

    TechniqueWay(OpenCourse course) {
        this.course = course;
        for (RoundPlace place : course.places()) {
            course.round(place)
                    .map(Round::line)
                    .ifPresent(line -> uses.put(place, course.uses().usesOf(line)));
        }
    }

    OpenCourse course() {
        return course;
    }

    /** Every technique of the course that counts as new somewhere, in the order in which they come. */
    List<TechniqueStep> of(Standing standing, List<Mastery> mastery) {
        int now = standing.next()
                .map(next -> course.order(next.place()))
                .orElse(course.places().size());
        List<TechniqueStep> steps = new ArrayList<>();
        boolean[] nextTaken = {false};
        course.newByPlace().forEach((place, techniques) -> {
            int order = course.order(place);
            boolean next = order >= now && !nextTaken[0];
            nextTaken[0] |= next;
            for (Technique technique : techniques) {
                steps.add(new TechniqueStep(
                        technique, state(technique, order >= now, next, standing, mastery), lesson(place)));
            }
        });
        return steps;
    }

    private int lesson(RoundPlace place) {
        return course.lessonOf(place).map(Lesson::number).orElse(0);
    }

    private TechniqueStep.State state(
            Technique technique, boolean ahead, boolean next, Standing standing, List<Mastery> mastery) {
        if (ahead) {
            return next ? TechniqueStep.State.NEXT : TechniqueStep.State.LATER;
        }
        List<Mastery> judged = mastery.stream()
                .filter(each -> each.technique().equals(technique.id()))
                .toList();
        boolean sure =
                judged.isEmpty() ? sure(technique, standing) : judged.stream().allMatch(TechniqueWay::sure);
        return sure ? TechniqueStep.State.SURE : TechniqueStep.State.NEARLY;
    }

    /** Sure: in all likelihood it goes wrong no more than a few times as often as a beginner's usually does. */
    private static boolean sure(Mastery mastery) {
        return 1 - mastery.low() <= TIMES_THE_USUAL * mastery.kind().startingRate();
    }

    /** For a technique whose mistakes no count shows. Sure: the last rounds with it were reported and did not bring a difference that was not there below. */
    private boolean sure(Technique technique, Standing standing) {
        List<Boolean> clean = new ArrayList<>();
        int below = 0;
        for (RoundStanding round : standing.rounds()) {
            if (round.state().done()) {
                if (uses.getOrDefault(round.place(), List.of()).contains(technique.id())) {
                    clean.add(round.difference() == below || round.difference() == 0);
                }
                below = round.difference();
            }
        }
        boolean once = usedIn(technique) < ROUNDS_TO_BE_SURE;
        int wanted = once ? 1 : ROUNDS_TO_BE_SURE;
        boolean unseen = clean.isEmpty();
        return unseen
                ? usedIn(technique) == 0
                : clean.size() >= wanted
                        && clean.subList(clean.size() - wanted, clean.size()).stream()
                                .allMatch(Boolean::booleanValue);
    }

    private long usedIn(Technique technique) {
        return uses.values().stream()
                .filter(ids -> ids.contains(technique.id()))
                .count();
    }

    /** The techniques that are new in a round. */
    List<Technique> newIn(Optional<RoundPlace> place) {
        return place.map(course::newIn).orElse(List.of());
    }
}
