package roundwright.course.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.course.RoundRange;
import roundwright.notation.Severity;
import roundwright.notation.Span;
import roundwright.pattern.Part;
import roundwright.pattern.Round;
import roundwright.technique.DidYouMean;

/**
 * Reads the rounds that a lesson names: {@code Tower 4-6, Lantern 1}. A stretch without a part's name is of the part named last, or of the only
 * part; a part's name alone is the whole part.
 */
final class References {
    private static final Pattern STRETCH = Pattern.compile(
            "^(.*?)\\s*(?:\\b(?:rounds?|rnds?\\.?|rds?\\.?|r))?\\s*(?<!\\d)(\\d{1,6})(?:\\s*(?:-|–|—|\\bto\\b)\\s*(\\d{1,6}))?\\.?$",
            Pattern.CASE_INSENSITIVE);

    /** No one writes a stretch of more characters. */
    private static final int LONGEST = 200;

    /** No lesson names more stretches. */
    private static final int MOST = 500;

    private final List<Part> parts;
    private final Problems problems;
    private final List<RoundRange> ranges = new ArrayList<>();
    private Optional<Part> current;

    private References(List<Part> parts, Problems problems) {
        this.parts = parts;
        this.problems = problems;
        this.current = parts.size() == 1 ? Optional.of(parts.get(0)) : Optional.empty();
    }

    /** The stretches that a value names, in its order; what cannot be read is reported and left out. */
    static List<RoundRange> read(Written value, List<Part> parts, Problems problems) {
        References references = new References(parts, problems);
        value.split().stream().limit(MOST).forEach(references::stretch);
        return references.ranges;
    }

    private void stretch(Written written) {
        if (written.isBlank() || written.text().equalsIgnoreCase("none")) {
            return;
        }
        if (written.text().length() > LONGEST) {
            unreadable(written.part(0, LONGEST));
            return;
        }
        Optional<Part> whole = part(written.text());
        if (whole.isPresent()) {
            current = whole;
            whole(whole.get(), written);
            return;
        }
        int and = written.text().indexOf(" and ");
        Matcher matcher = STRETCH.matcher(written.text());
        if (and > 0 && !(matcher.matches() && part(matcher.group(1)).isPresent())) {
            stretch(written.part(0, and));
            stretch(written.part(and + 5, written.text().length()));
        } else if (matcher.matches()) {
            numbered(written, matcher);
        } else {
            unreadable(written);
        }
    }

    private void unreadable(Written written) {
        Optional<String> near = DidYouMean.of(written.text(), names());
        if (near.isPresent()) {
            problems.mendable(Severity.ERROR, "unknown-part-near", written.span(), near, written.text(), near.get());
        } else {
            String example = parts.isEmpty() ? "Tower" : parts.get(0).name();
            problems.error("rounds-unreadable", written.span(), written.text(), example);
        }
    }

    private void numbered(Written written, Matcher matcher) {
        if (!matcher.group(1).isEmpty()) {
            current = part(matcher.group(1));
            if (current.isEmpty()) {
                unknownPart(written.part(0, matcher.end(1)));
            }
        } else if (current.isEmpty()) {
            problems.error("no-part-named", written.span(), written.text(), String.join(", ", names()));
        }
        if (current.isPresent()) {
            int first = Integer.parseInt(matcher.group(2));
            int last = matcher.group(3) == null ? first : Integer.parseInt(matcher.group(3));
            Written numbers = written.part(matcher.start(2), written.text().length());
            range(current.get(), first, last, numbers);
        }
    }

    private void unknownPart(Written name) {
        Optional<String> near = DidYouMean.of(name.text(), names());
        problems.mendable(
                Severity.ERROR,
                near.isPresent() ? "unknown-part-near" : "unknown-part",
                name.span(),
                near,
                name.text(),
                near.orElse(String.join(", ", names())));
    }

    private void range(Part part, int first, int last, Written numbers) {
        if (last < first) {
            problems.mendable(
                    Severity.ERROR, "range-backwards", numbers.span(), Optional.of(last + "-" + first), first, last);
            range(part, last, first, numbers);
            return;
        }
        List<Integer> there = part.rounds().stream()
                .map(Round::number)
                .filter(number -> first <= number && number <= last)
                .toList();
        if (there.isEmpty()
                || there.stream().noneMatch(number -> number == first)
                || there.stream().noneMatch(number -> number == last)) {
            unknownRound(part, numbers.span(), numbers.text());
        }
        if (!there.isEmpty()) {
            int lowest = there.stream().mapToInt(Integer::intValue).min().getAsInt();
            int highest = there.stream().mapToInt(Integer::intValue).max().getAsInt();
            ranges.add(new RoundRange(part.name(), lowest, highest));
        }
    }

    private void unknownRound(Part part, Span at, String written) {
        if (part.rounds().isEmpty()) {
            problems.error("part-without-rounds", at, written, part.name());
            return;
        }
        int lowest = part.rounds().stream().mapToInt(Round::number).min().getAsInt();
        int highest = part.rounds().stream().mapToInt(Round::number).max().getAsInt();
        problems.error("unknown-round", at, written, part.name(), lowest, highest);
    }

    private void whole(Part part, Written written) {
        if (part.rounds().isEmpty()) {
            problems.error("part-without-rounds", written.span(), written.text(), part.name());
            return;
        }
        int lowest = part.rounds().stream().mapToInt(Round::number).min().getAsInt();
        int highest = part.rounds().stream().mapToInt(Round::number).max().getAsInt();
        ranges.add(new RoundRange(part.name(), lowest, highest));
    }

    private Optional<Part> part(String name) {
        return parts.stream()
                .filter(part -> part.name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }

    private List<String> names() {
        return parts.stream().map(Part::name).toList();
    }
}
