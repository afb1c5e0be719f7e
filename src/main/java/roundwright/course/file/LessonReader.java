package roundwright.course.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import roundwright.course.Lesson;
import roundwright.course.RoundRange;
import roundwright.notation.Severity;
import roundwright.notation.Terms;
import roundwright.pattern.Part;
import roundwright.technique.Technique;
import roundwright.technique.Techniques;

/** Reads a lesson out of its section. */
final class LessonReader {
    /** No homework names more stretches. */
    private static final int MOST_STRETCHES = 100;

    private final List<Part> parts;
    private final List<Pattern> named;
    private final Techniques techniques;
    private final Terms terms;
    private final Problems problems;

    LessonReader(List<Part> parts, Techniques techniques, Terms terms, Problems problems) {
        this.parts = parts;
        this.named = parts.stream().map(LessonReader::named).toList();
        this.techniques = techniques;
        this.terms = terms;
        this.problems = problems;
    }

    /** The lesson, and where in the file it says what it says. */
    PlacedLesson read(Section section, int number) {
        Keys.LESSON.check(section, problems);
        List<RoundRange> rounds = new ArrayList<>();
        for (Written value : Values.of(section, "rounds")) {
            rounds.addAll(References.read(value, parts, problems));
        }
        List<PlacedTechnique> introduced = introduced(section);
        Lesson lesson = new Lesson(
                number,
                section.title().text(),
                rounds,
                homework(section),
                introduced.stream().map(PlacedTechnique::id).distinct().toList(),
                minutes(section),
                words(section));
        return new PlacedLesson(lesson, section, introduced);
    }

    private static List<Lesson.Entry> words(Section section) {
        Stream<Lesson.Entry> locked = Values.of(section, Lesson.LOCKED).stream()
                .limit(1)
                .map(value -> new Lesson.Entry(Lesson.LOCKED, value.text()));
        Stream<Lesson.Entry> said = SettingsReader.words(section, Keys.LESSON).stream()
                .filter(entry -> !entry.key().equals("new"));
        return Stream.concat(locked, said).toList();
    }

    private Optional<Integer> minutes(Section section) {
        Optional<Written> value = Values.of(section, "minutes").stream().findFirst();
        if (value.isEmpty()) {
            return Optional.empty();
        }
        OptionalInt minutes = Amounts.minutes(value.get().text());
        if (minutes.isEmpty()) {
            problems.error("session-unreadable", value.get().span(), value.get().text());
            return Optional.empty();
        }
        return Optional.of(minutes.getAsInt());
    }

    private List<PlacedTechnique> introduced(Section section) {
        List<PlacedTechnique> introduced = new ArrayList<>();
        for (Written value : Values.of(section, "new")) {
            value.split().stream()
                    .flatMap(name -> names(name).stream())
                    .forEach(name -> technique(name).ifPresent(introduced::add));
        }
        return introduced;
    }

    /** "Increase and decrease" are two, "holding hook and yarn" is one. */
    private List<Written> names(Written written) {
        int and = written.text().indexOf(" and ");
        if (and < 0 || techniques.find(written.text(), terms).isPresent()) {
            return List.of(written);
        }
        return List.of(
                written.part(0, and), written.part(and + 5, written.text().length()));
    }

    private Optional<PlacedTechnique> technique(Written name) {
        String plain = name.text().replaceFirst("\\.$", "");
        if (plain.isBlank() || plain.equalsIgnoreCase("nothing") || plain.equalsIgnoreCase("none")) {
            return Optional.empty();
        }
        Optional<Technique> technique = techniques.find(plain, terms);
        if (technique.isEmpty()) {
            Optional<String> near = techniques.suggest(plain, terms);
            problems.mendable(
                    Severity.ERROR,
                    near.isPresent() ? "unknown-technique-near" : "unknown-technique",
                    name.span(),
                    near,
                    plain,
                    near.orElse(""));
        }
        return technique.map(known -> new PlacedTechnique(known.id(), name.span()));
    }

    /** Homework is said in words; the rounds in it are those that stand behind a part's name. */
    private List<RoundRange> homework(Section section) {
        List<RoundRange> rounds = new ArrayList<>();
        for (Written value : Values.of(section, "homework")) {
            for (Pattern part : named) {
                Matcher matcher = part.matcher(value.text());
                while (matcher.find() && rounds.size() < MOST_STRETCHES) {
                    Written stretch = value.part(matcher.start(), matcher.end());
                    rounds.addAll(References.read(stretch, parts, problems));
                }
            }
        }
        return rounds;
    }

    private static Pattern named(Part part) {
        return Pattern.compile(
                "(?<![\\p{L}\\d])" + Pattern.quote(part.name())
                        + "\\s+(?:rounds?\\s+|rnds?\\s+)?\\d{1,6}(?:\\s*(?:-|–|to)\\s*\\d{1,6})?(?!\\d)",
                Pattern.CASE_INSENSITIVE);
    }
}
