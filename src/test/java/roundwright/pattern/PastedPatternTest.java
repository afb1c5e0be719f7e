package roundwright.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PastedPatternTest {
    /** What is pasted, with the names of its parts and the number of lines of each. */
    record Case(String name, String text, List<String> parts, int before) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Case> cases() {
        return Stream.of(
                new Case("headings without a mark, a title, materials", """
                        Meadow Owl

                        You need: grey yarn, 3.5 mm hook.
                        Abbreviations (US): sc single crochet, inc 2 sc in one stitch.

                        BODY (grey)
                        Rnd 1: 6 sc in magic ring [6]
                        Rnd 2: inc x 6 [12]
                        Stuff.

                        WING (make 2, cream)
                        R1: 6 sc in MR (6)
                        R2: inc x6 (12)
                        Fasten off, leave a long tail.""", List.of("Body: 4", "Wing: 4"), 3),
                new Case(
                        "parts that are called rings, and a ring that is made",
                        """
                        Buoy (red)
                        Rnd 1: 6 sc in magic ring (6)
                        Rnd 2: inc x 6 (12)

                        Ring (white)
                        Rnd 1: ch 24, join with sl st to form a ring, sc in each ch (24)
                        Rnd 2: sc in each st (24)

                        White ring (make 2)
                        Rnd 1: 6 sc in the ring (6)
                        Rnd 2: inc x 6 (12)""",
                        List.of("Buoy: 3", "Ring: 3", "White ring: 3"),
                        0),
                new Case("a chain before the first round, below what is needed", """
                        This cowl is worked in one piece, from its rim on.

                        You need: 200 m of aran yarn, 5.5 mm hook.
                        Ch 72, join with sl st, being careful not to twist.
                        Rnd 1: ch 1, sc in each ch around, join.
                        Rnd 2: sc around""", List.of("Part 1: 3"), 2),
                new Case("a blank line after every round", """
                        Head

                        Rnd 1: 6 sc in magic ring (6)

                        Rnd 2: inc x 6 (12)

                        Rnd 3: sc in each st (12)

                        Fasten off.

                        Left ear

                        make 2

                        Rnd 1: 4 sc in magic ring (4)

                        Rnd 2: sc in each st (4)""", List.of("Head: 4", "Left ear: 3"), 0),
                new Case("no headings at all, numbers begin again", """
                        Round 1: 6 dc in a ring (6)
                        Round 2: 2 dc in each (12)
                        Fasten off.

                        Round 1: 5 dc in a ring (5)
                        Round 2: 2 dc in each (10)""", List.of("Part 1: 3", "Part 2: 2"), 0),
                new Case("headings with their marks, and one title", """
                        # Stone pot
                        ## Base
                        R1: 6 dc in magic ring (6)
                        R2: inc x 6 (12)
                        ## Wall
                        R3: dc in each st (12)
                        R4: dc in each st (12)""", List.of("Base: 2", "Wall: 2"), 1),
                new Case("one piece under its title", """
                        ** Little bell **
                        1. 6 sc in magic ring (6)
                        2. inc x 6 (12)
                        Place the clapper before round 3.
                        3. sc in each st (12)""", List.of("Little bell: 4"), 0),
                new Case("two parts of one name, with dashes and colons", """
                        Leg - make 1:
                        Rnd 1: 6 sc in MR (6)
                        Leg, the other one:
                        Rnd 1: 6 sc in MR (6)
                        Rnd 2: sc around (6)""", List.of("Leg: 2", "Leg 2: 3"), 0),
                new Case("rounds without numbers", """
                        The mouse

                        Nose
                        6 sc in magic ring (6)
                        inc in each st (12)

                        Tail
                        4 sc in magic ring (4)
                        sc in each st (4)""", List.of("Nose: 2", "Tail: 2"), 1),
                new Case("eyes before the body that has a title of its own", """
                        EYES (white, make two)
                        Rnd 1: 6 sc in MR (6)

                        Notes: work tightly.
                        BODY
                        With grey:
                        Rnd 1: 6 sc in MR (6)
                        Rnd 2: inc x 6 (12)""", List.of("Eyes: 3", "Body: 3"), 0),
                new Case("nothing to work", "I like wool.\n\nSo do I.", List.of(), 2),
                new Case("nothing", " \n \r\n", List.of(), 0));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aPastedPatternFallsIntoItsParts(Case one) {
        PastedPattern cut = PastedPattern.of(one.text());
        assertEquals(
                one.parts(),
                cut.parts().stream()
                        .map(part -> part.name() + ": " + part.lines().size())
                        .toList());
        assertEquals(one.before(), cut.before().size());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyLineIsKeptWithItsPlace(Case one) {
        PastedPattern cut = PastedPattern.of(one.text());
        Stream.concat(cut.before().stream(), cut.parts().stream().flatMap(part -> part.lines().stream()))
                .filter(line -> one.text().startsWith(line.text(), line.at()))
                .forEach(line -> assertEquals(
                        line.text(),
                        one.text().substring(line.at(), line.at() + line.text().length())));
    }

    @Test
    void longTextsAreCutInTime() {
        String text = "Body\n" + "Rnd 1: 6 sc in magic ring (6)\nRnd 2: inc x 6 (12)\nHead\n\n".repeat(2_000);
        PastedPattern cut = assertTimeoutPreemptively(Duration.ofSeconds(10), () -> PastedPattern.of(text));
        assertEquals(2_000, cut.parts().size());
    }
}
