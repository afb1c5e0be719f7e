package roundwright.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundwright.course.Course;
import roundwright.course.CourseSettings;
import roundwright.course.Lesson;
import roundwright.course.RoundRange;
import roundwright.course.file.CourseFile;
import roundwright.course.file.FileProblem;
import roundwright.course.file.PartPlace;
import roundwright.course.file.Places;
import roundwright.pattern.Outline;
import roundwright.pattern.Part;
import roundwright.pattern.Tension;
import roundwright.pattern.Yarn;
import roundwright.pattern.check.PatternChecks;
import roundwright.technique.FirstUses.Use;
import roundwright.technique.Techniques;

/**
 * A course file as a value for JSON.
 *
 * <pre>
 * {"file":"harbour-light.md","name":"Harbour light","terms":"UK",
 *  "settings":{"hook":"4 mm","yarn":"…","tension":{"stitches":18,"rounds":20},"session":90,"pace":7},
 *  "parts":[{"name":"Tower","line":18,"rounds":[{"line":22,"text":"Rnd 1: …", … as in rounds --json}],
 *            "yarn":23.6,"outline":[{"round":1,"radius":5.3,"height":0.0,"ruffles":false}]}],
 *  "lessons":[{"number":1,"name":"Into the ring","rounds":[{"part":"Tower","first":1,"last":3}],"homework":[…],
 *              "new":["magic-ring"],"minutes":null,"words":[{"key":"bring","value":"…"}]}],
 *  "techniques":[{"id":"magic-ring","name":"magic ring","minutes":12,"groundwork":false,"part":"Tower","round":1,"line":22}],
 *  "problems":[{"line":3,"column":5,"from":40,"to":52,"message":"…","suggestion":null,"severity":"error"}]}
 * </pre>
 *
 * <p>{@code yarn} is in metres, with a margin and a tail; radius and height of the outline in millimetres; both are null without a tension.
 * Lines and columns are from 1; {@code from} and {@code to} of the file's problems are offsets in the whole file, in UTF-16 units. A suggestion
 * is what to write instead of the whole line. Techniques are in the order of their first uses; {@code round} is null where an instruction uses it first.
 */
final class CheckJson {
    private final CourseFile file;
    private final Places places;
    private final PatternChecks checks;
    private final Techniques techniques;

    private CheckJson(CourseFile file) {
        this.file = file;
        this.places = Places.of(file.text());
        this.checks = PatternChecks.of(file.course().pattern());
        this.techniques = file.course().techniques();
    }

    static Map<String, Object> of(String name, CourseFile file) {
        return new CheckJson(file).object(name);
    }

    private Map<String, Object> object(String name) {
        Course course = file.course();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", name);
        json.put("name", course.name());
        json.put("terms", course.pattern().terms());
        json.put("settings", settings(course.settings()));
        json.put("parts", parts());
        json.put("lessons", course.lessons().stream().map(CheckJson::lesson).toList());
        json.put("techniques", techniques());
        json.put("problems", file.problems().stream().map(CheckJson::problem).toList());
        return json;
    }

    private static Map<String, Object> settings(CourseSettings settings) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("hook", settings.hook());
        json.put("yarn", settings.yarn());
        json.put(
                "tension",
                settings.tension().map(tension -> Map.of("stitches", tension.stitches(), "rounds", tension.rounds())));
        json.put("session", settings.sessionMinutes());
        json.put("pace", settings.pace());
        return json;
    }

    private List<Map<String, Object>> parts() {
        List<Map<String, Object>> parts = new ArrayList<>();
        for (int index = 0; index < file.parts().size(); index++) {
            parts.add(part(
                    file.parts().get(index), file.course().pattern().parts().get(index)));
        }
        return parts;
    }

    private Map<String, Object> part(PartPlace place, Part part) {
        List<Map<String, Object>> lines = new ArrayList<>();
        for (int index = 0; index < part.lines().size(); index++) {
            Map<String, Object> line = new LinkedHashMap<>();
            line.put("line", places.line(place.lines().get(index).at()));
            line.putAll(LineJson.of(part.lines().get(index), techniques, checks));
            lines.add(line);
        }
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("name", part.name());
        json.put("line", places.line(place.section().heading().start()));
        json.put("rounds", lines);
        Optional<Tension> tension = file.course()
                .settings()
                .tension()
                .map(given -> Tension.toTenCentimetres(given.stitches(), given.rounds()));
        json.put("yarn", tension.map(stitch -> rounded(Yarn.metres(part, stitch))));
        json.put("outline", tension.map(stitch -> outline(part, stitch)));
        return json;
    }

    private static List<Map<String, Object>> outline(Part part, Tension tension) {
        List<Outline.Ring> rings = Outline.of(part, tension);
        List<Map<String, Object>> outline = new ArrayList<>();
        for (int index = 0; index < rings.size(); index++) {
            Map<String, Object> ring = new LinkedHashMap<>();
            ring.put("round", part.rounds().get(index).number());
            ring.put("radius", rounded(rings.get(index).radius()));
            ring.put("height", rounded(rings.get(index).height()));
            ring.put("ruffles", rings.get(index).ruffles());
            outline.add(ring);
        }
        return outline;
    }

    private static double rounded(double value) {
        return Math.round(value * 10) / 10.0;
    }

    private static Map<String, Object> lesson(Lesson lesson) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("number", lesson.number());
        json.put("name", lesson.name());
        json.put("rounds", lesson.rounds().stream().map(CheckJson::range).toList());
        json.put("homework", lesson.homework().stream().map(CheckJson::range).toList());
        json.put("new", lesson.introduces());
        json.put("minutes", lesson.minutes());
        json.put(
                "words",
                lesson.words().stream()
                        .map(entry -> Map.of("key", entry.key(), "value", entry.value()))
                        .toList());
        return json;
    }

    private static Map<String, Object> range(RoundRange range) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("part", range.part());
        json.put("first", range.first());
        json.put("last", range.last());
        return json;
    }

    private List<Map<String, Object>> techniques() {
        return file.course().uses().all().stream().map(this::use).toList();
    }

    private Map<String, Object> use(Use use) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", use.technique().id());
        json.put("name", use.technique().name(file.course().pattern().terms()));
        json.put("minutes", use.technique().minutes());
        json.put("groundwork", use.technique().groundwork());
        json.put("part", use.place().part());
        json.put("round", use.place().round());
        json.put("line", places.line(use.place().item().line().at()));
        return json;
    }

    private static Map<String, Object> problem(FileProblem problem) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("line", problem.line());
        json.put("column", problem.column());
        json.putAll(LineJson.of(problem.problem()));
        return json;
    }
}
