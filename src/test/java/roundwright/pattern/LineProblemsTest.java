package roundwright.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.notation.Problem;
import roundwright.notation.Terms;

/** Numbers of rounds, readings that were assumed, and mends that later rounds go on from. */
class LineProblemsTest {
    private static final String TWELVE = "R1: 6 sc in MR (6)\nR2: inc x 6 (12)\n";

    /** @param said the keys of all problems of the text, each with the words it is about */
    private record Case(String text, String... said) {}

    private static Stream<Case> cases() {
        return Stream.of(
                new Case(TWELVE + "R3-5: sc around (12)\nR6: sc around (12)"),
                new Case(TWELVE + "R3-5: sc around (12)\nR5: sc around (12)\nR6: sc around (12)", "numbered-twice R5"),
                new Case(
                        TWELVE + "R4: sc around (12)\nR3-5: sc around (12)",
                        "number-missing R4",
                        "numbered-twice R3-5"),
                new Case(
                        TWELVE + "R3: sc around (12)\nR2: sc around (12)\nR3: sc around (12)\nR4: sc around (12)",
                        "numbered-twice R2"),
                new Case(TWELVE + "R1: 6 sc in MR (6)\nR2: inc x 6 (12)"),
                new Case(TWELVE + "Rnds 3 to 6 - 12 sc - 12\nRnd 7 - 12 sc - 12"),
                new Case(TWELVE + "Rnds 3-6 - 12 sc - 12\nRnd 7 - 12 sc - 12"),
                new Case(TWELVE + "R3-5: sc around (12)\nR8: sc around (12)", "number-missing R8"),
                new Case(TWELVE + "sc around (12)\nR4: sc around (12)"),
                new Case(
                        "Attach to the rim.\nR1: *3 sc, inc; rep from * 5 times",
                        "assumed *3 sc, inc; rep from * 5 times"),
                new Case(TWELVE + "R3: *sc, inc; rep from * 5 times"),
                new Case(TWELVE + "R3: *sc, inc; rep from * 5 times (18)"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void saysWhatIsToBeSaid(Case test) {
        List<String> said = read(test.text()).stream()
                .flatMap(line -> line.problems().stream()
                        .map(problem -> problem.key() + " " + problem.span().of(line.text())))
                .toList();
        assertEquals(
                List.of(test.said()),
                said.stream().map(word -> word.replaceAll("[: ]+$", "")).toList());
    }

    /** @param first the mend that is offered first for the third line */
    private record Mend(String text, String first) {}

    private static Stream<Mend> mends() {
        String wrong = TWELVE + "R3: sc 5, inc x 6\n";
        return Stream.of(
                new Mend(wrong + "R4: (2 sc, inc) x 6 (24)", "R3: sc 6, inc x 6"),
                new Mend(wrong + "Change to red.\nR4: (2 sc, inc) x 6 (24)", "R3: sc 6, inc x 6"),
                new Mend(wrong + "R4: sc around\nR5-7: sc around\nR8: (2 sc, inc) x 6 (24)", "R3: sc 6, inc x 6"),
                new Mend(wrong + "R4: sc around\nR5: sc around (19)", "R3: sc 5, inc x 7"),
                new Mend(wrong + "R4-5: (8 sc, inc) around\nR6: sc around (22)", "R3: sc 6, inc x 6"),
                new Mend(
                        TWELVE + "R3: (sc, inc) x 6 (16)\nStuff.\nR4: (2 sc, inc) x 6 (24)", "R3: (sc, inc) x 6 (18)"));
    }

    @ParameterizedTest
    @MethodSource("mends")
    void aMendThatLaterRoundsGoOnFromComesFirst(Mend test) {
        Line wrong = read(test.text()).get(2);
        List<String> offered = wrong.problems().stream()
                .map(Problem::suggestions)
                .flatMap(List::stream)
                .toList();
        assertEquals(Optional.of(test.first()), offered.stream().findFirst(), () -> wrong + " " + offered);
    }

    private static List<Line> read(String text) {
        return PatternReader.readBare(Optional.of(Terms.US), text).parts().stream()
                .flatMap(part -> part.lines().stream())
                .toList();
    }
}
