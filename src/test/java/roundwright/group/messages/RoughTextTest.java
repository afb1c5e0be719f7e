package roundwright.group.messages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is pasted, reading ends soon, throws nothing, and stays inside the text. */
class RoughTextTest {
    private static final MessageTable GROUP = MessageTable.group();

    private record Case(String name, String text) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Case> longTexts() {
        return Stream.of(
                new Case(
                        "a chat of twenty thousand lines",
                        "[03/02/2026, 19:12:05] Bram: r9 42 and r10 is 36\n".repeat(20_000)),
                new Case("a list of twenty thousand lines", "Bram 5 30\n".repeat(20_000)),
                new Case("lines without a name", "r9 42, then 41 after I pulled back\n".repeat(20_000)),
                new Case("one endless line", "r9 42 ".repeat(20_000)),
                new Case("one endless word", "r".repeat(1_000_000)),
                new Case("one endless number", "9".repeat(1_000_000)),
                new Case("brackets", "(".repeat(100_000) + "dc, inc) x 6"),
                new Case("colons", ":".repeat(100_000)),
                new Case("spaces", " ".repeat(1_000_000)),
                new Case("quotes", "> r9 42\n".repeat(20_000)),
                new Case("times", "19:02 ".repeat(20_000)),
                new Case("heads of tables", "round,count\n".repeat(20_000)),
                new Case("lines of tabs", ("r\t" + "36\t".repeat(40) + "\n").repeat(1_000)),
                new Case("accents", ("e" + "\u0301".repeat(100) + " ").repeat(5_000)),
                new Case("right to left", "\u05e9\u05d5\u05e8\u05d4 5 30\u200f R5 30 ".repeat(10_000)),
                new Case("halves of characters", "\ud83e".repeat(100_000)),
                new Case(
                        "bytes",
                        new Random(7)
                                .ints(100_000, 0, 256)
                                .mapToObj(Character::toString)
                                .collect(Collectors.joining())),
                new Case("numbers", "6 12 18 24 ".repeat(50_000)),
                new Case("and", "and ".repeat(20_000)));
    }

    @ParameterizedTest
    @MethodSource("longTexts")
    void aLongTextIsReadInTime(Case given) {
        assertTimeoutPreemptively(Duration.ofSeconds(15), () -> read(given.text()));
    }

    @Test
    void everyBeginningAndEndOfEveryMessageCanBeRead() {
        for (MessageTable.Sample sample : GROUP.samples()) {
            String text = sample.text();
            for (int at = 0; at <= text.length(); at += 3) {
                read(text.substring(0, at));
                read(text.substring(at));
            }
        }
    }

    @Test
    void rubbishCanBeRead() {
        long seed = Long.getLong("seed", 1);
        Random chance = new Random(seed);
        List<String> pieces = List.of(
                "r",
                "5",
                "round ",
                "36",
                "\n",
                ":",
                " ",
                "Bram",
                "[",
                "12/02/26",
                "19:02",
                "(",
                ")",
                "two ",
                "short ",
                "pulled back ",
                "\u0000",
                "\ud83d",
                "🧶",
                "é",
                "-",
                "same ",
                "until ",
                "99999999999",
                "all ",
                ".",
                "?",
                "> ",
                "not ",
                "½",
                "٣");
        for (int run = 0; run < 2_000; run++) {
            String text = IntStream.range(0, 1 + chance.nextInt(40))
                    .mapToObj(piece -> pieces.get(chance.nextInt(pieces.size())))
                    .collect(Collectors.joining());
            try {
                read(text);
            } catch (RuntimeException failure) {
                throw new AssertionError("seed " + seed + ": " + text, failure);
            }
        }
    }

    @Test
    void whatWasReadIsFoundAgainAtItsPlace() {
        String text = "Bram: hello, r9 is 42 and\nZoë: mine is 2 short";
        List<Finding> findings = new MessagesReader(GROUP.expectations(), GROUP.students()).read(text);
        assertEquals("r9 is 42", findings.get(0).source().of(text));
    }

    private static void read(String text) {
        for (Finding finding : new MessagesReader(GROUP.expectations(), GROUP.students()).read(text)) {
            assertTrue(finding.source().end() <= text.length());
            assertTrue(!(finding instanceof Reading reading) || reading.confidence() >= 0 && reading.confidence() <= 1);
        }
    }
}
