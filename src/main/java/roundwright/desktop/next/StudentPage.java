package roundwright.desktop.next;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.desktop.chart.ChartSubject;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.RoundPlace;
import roundwright.group.RoundStanding;
import roundwright.group.Standing;
import roundwright.group.Student;
import roundwright.mistakes.help.Mastery;
import roundwright.notation.Terms;
import roundwright.pattern.Round;
import roundwright.technique.Technique;
import roundwright.wording.Wording;

/**
 * What a student's page says.
 *
 * @param name the student's name
 * @param title what comes next, in large type
 * @param where where they are
 * @param how how what is new goes, a step a sentence; empty where nothing is new
 * @param round the round to work; empty when the piece is finished
 * @param chart its chart, for the student's hand; empty where the line could not be read
 * @param counts the count before and after
 * @param watch what often happens with what is new; empty where nothing is known
 * @param way every technique of the course, in order
 */
record StudentPage(
        String name,
        String title,
        String where,
        List<String> how,
        Optional<Round> round,
        Optional<ChartSubject> chart,
        String counts,
        String watch,
        List<TechniqueStep> way) {
    private static final Wording WORDS = Wording.of("desktop");

    static StudentPage of(TechniqueWay way, Student student, Standing standing, List<Mastery> mastery) {
        OpenCourse course = way.course();
        Optional<RoundPlace> place = standing.next().map(RoundStanding::place);
        List<Technique> fresh = way.newIn(place);
        boolean left = student.leftHanded();
        Terms terms = course.terms();
        List<String> how =
                fresh.stream().flatMap(each -> each.how(terms, left).stream()).toList();
        return new StudentPage(
                student.name(),
                title(place, fresh, terms),
                place.map(found -> where(found, standing, course)).orElse(""),
                how,
                place.flatMap(course::round),
                place.flatMap(found -> chart(course, found, left)),
                place.map(found -> counts(course, found)).orElse(""),
                watch(fresh, terms, left),
                way.of(standing, mastery));
    }

    private static Optional<ChartSubject> chart(OpenCourse course, RoundPlace place, boolean left) {
        String title = WORDS.say("part-round", place.part(), place.round());
        return course.round(place)
                .flatMap(Round::steps)
                .map(steps -> new ChartSubject(title, steps, course.terms(), course.chart(place, left)));
    }

    private static String title(Optional<RoundPlace> place, List<Technique> fresh, Terms terms) {
        if (place.isEmpty()) {
            return WORDS.say("next-finished");
        }
        if (fresh.isEmpty()) {
            return WORDS.say("next-round", place.get().part(), place.get().round());
        }
        return WORDS.say(
                "next-technique",
                Wording.list(fresh.stream().map(each -> each.name(terms)).toList()));
    }

    private static String where(RoundPlace place, Standing standing, OpenCourse course) {
        String here = WORDS.say("next-where", place.part(), place.round());
        boolean open = standing.round(place.part(), place.round())
                .filter(round -> round.state() == RoundStanding.State.UNFINISHED)
                .isPresent();
        String soon = comingUp(place, course);
        return (open ? WORDS.say("next-where-open", place.part(), place.round()) : here)
                + (soon.isEmpty() ? "" : " " + soon);
    }

    /** What is new after this round, where nothing is new in it. */
    private static String comingUp(RoundPlace place, OpenCourse course) {
        int now = course.order(place);
        List<String> said = new ArrayList<>();
        course.newByPlace().forEach((other, techniques) -> {
            if (said.isEmpty()
                    && course.order(other) > now
                    && course.newIn(place).isEmpty()) {
                said.add(WORDS.say("next-coming", techniques.get(0).name(course.terms()), other.part(), other.round()));
            }
        });
        return String.join("", said);
    }

    private static String counts(OpenCourse course, RoundPlace place) {
        OptionalInt after = course.expected(place);
        OptionalInt before =
                course.round(place).map(round -> round.line().available()).orElse(OptionalInt.empty());
        int order = course.order(place);
        boolean samePart = order > 0 && course.places().get(order - 1).part().equals(place.part());
        OptionalInt below = samePart ? course.expected(course.places().get(order - 1)) : before;
        if (after.isEmpty()) {
            return "";
        }
        return below.isPresent()
                ? WORDS.say("next-counts", below.getAsInt(), after.getAsInt())
                : WORDS.say("next-count", after.getAsInt());
    }

    private static String watch(List<Technique> fresh, Terms terms, boolean left) {
        return fresh.stream()
                .flatMap(each -> each.wrong(terms, left).stream())
                .findFirst()
                .map(wrong -> WORDS.say("next-watch", wrong))
                .orElse("");
    }
}
