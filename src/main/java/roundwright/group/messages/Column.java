package roundwright.group.messages;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a column of a pasted table holds.
 *
 * @param round of {@link Kind#OF_ROUND}: the round whose counts stand below
 * @param student of {@link Kind#OF_STUDENT}: the student whose counts stand below
 */
record Column(Kind kind, int round, String student) {
    /** What the cells below a head are. */
    enum Kind {
        ROUND,
        COUNT,
        TARGET,
        NAME,
        PART,
        OF_ROUND,
        OF_STUDENT,
        OTHER
    }

    private static final Pattern ROUND = Pattern.compile("(?:round|rnd|rd|row|r)s?|round (?:no|nr|number)\\.?");
    private static final Pattern COUNT = Pattern.compile(
            "(?:my |i |the )?(?:counts?|stitch count|stitches|stitch|sts|st|got|have|had|counted|made|result|total)|mine|me|actual|number of (?:stitches|sts)|how many");
    private static final Pattern TARGET = Pattern.compile(
            "(?:the )?(?:pattern|should|should be|should have|target|expected|due|goal|book|sheet|plan|wanted|correct)");
    private static final Pattern NAME = Pattern.compile("name|names|student|students|who|person");
    private static final Pattern PART = Pattern.compile("part|piece|section");
    private static final Pattern OF_ROUND = Pattern.compile("(?:round|rnd|rd|row|r)\\.? ?(\\d{1,3})");
    private static final Pattern PERSON =
            Pattern.compile("\\p{Lu}[\\p{L}\\p{M}'’.-]{1,20}(?: \\p{Lu}[\\p{L}\\p{M}'’.-]{0,20})?");

    private static Column of(Kind kind) {
        return new Column(kind, 0, "");
    }

    /** Whether a head names rounds, or one round. */
    static boolean ofRounds(String head) {
        String folded = Folding.fold(head).strip();
        return ROUND.matcher(folded).matches() || OF_ROUND.matcher(folded).matches();
    }

    static Column headed(String head, Known known) {
        String folded = Folding.fold(head).strip();
        Matcher round = OF_ROUND.matcher(folded);
        if (round.matches() && known.has(Integer.parseInt(round.group(1)))) {
            return new Column(Kind.OF_ROUND, Integer.parseInt(round.group(1)), "");
        }
        if (ROUND.matcher(folded).matches()) {
            return of(Kind.ROUND);
        }
        if (COUNT.matcher(folded).matches()) {
            return of(Kind.COUNT);
        }
        if (TARGET.matcher(folded).matches()) {
            return of(Kind.TARGET);
        }
        if (NAME.matcher(folded).matches()) {
            return of(Kind.NAME);
        }
        return PART.matcher(folded).matches() ? of(Kind.PART) : person(head.strip(), known);
    }

    private static Column person(String head, Known known) {
        Optional<String> student = known.names().find(head);
        boolean somebody = known.names().knowsNobody()
                && PERSON.matcher(head).matches()
                && !Cues.saysSomething(Folding.fold(head))
                && !known.parts().names(head);
        return somebody || student.isPresent() ? new Column(Kind.OF_STUDENT, 0, student.orElse(head)) : of(Kind.OTHER);
    }
}
