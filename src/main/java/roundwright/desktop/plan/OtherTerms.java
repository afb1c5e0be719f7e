package roundwright.desktop.plan;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.RoundPlace;
import roundwright.notation.Terms;
import roundwright.notation.Turner;
import roundwright.pattern.Line;
import roundwright.pattern.Part;
import roundwright.pattern.Pattern;
import roundwright.pattern.PatternReader;
import roundwright.pattern.Round;

/** Rounds of a course in the terms that it is not written in: to be looked at; its text stays as it is. */
final class OtherTerms {
    private final OpenCourse course;
    private final Terms terms;
    private final Map<String, Pattern> turned = new HashMap<>();

    OtherTerms(OpenCourse course) {
        this.course = course;
        this.terms = course.terms().other();
    }

    OpenCourse course() {
        return course;
    }

    Terms terms() {
        return terms;
    }

    /** A round with its line turned and read anew; empty where it cannot be found there. */
    Optional<Round> round(RoundPlace place) {
        return course.course()
                .pattern()
                .part(place.part())
                .flatMap(part -> turned.computeIfAbsent(place.part(), absent -> turn(part)).parts().stream()
                        .flatMap(found -> found.round(place.round()).stream())
                        .findFirst());
    }

    private Pattern turn(Part part) {
        String text = part.lines().stream()
                .map(Line::text)
                .map(line -> Turner.turn(line, course.terms(), terms))
                .collect(Collectors.joining("\n"));
        return PatternReader.readBare(Optional.of(terms), text);
    }
}
