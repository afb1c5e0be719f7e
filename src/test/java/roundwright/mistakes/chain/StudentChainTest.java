package roundwright.mistakes.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.group.CountReport;
import roundwright.group.StudentId;
import roundwright.mistakes.story.Kind;
import roundwright.mistakes.story.Rates;
import roundwright.mistakes.story.Written;
import roundwright.notation.Terms;
import roundwright.pattern.Pattern;
import roundwright.pattern.Steps;

/** A student's chain against every way through the rounds, and what happens to it when work is pulled back or counts corrected. */
class StudentChainTest {
    private static final double EXACT = 0.001;
    private static final List<Steps> ROUNDS = List.of(
            Written.round("iiii"), Written.round("", "pi", 4, ""), Written.plain(12), Written.round("", "pd", 4, ""));

    /** Counts of the first rounds; -1 where none was reported; answers belong to the last round. */
    private record Case(String name, int[] counts, Map<String, String> answers) {
        List<AllWays.Sight> sights(int rounds) {
            List<AllWays.Sight> sights = new ArrayList<>();
            for (int round = 0; round < rounds; round++) {
                OptionalInt count = counts[round] < 0 ? OptionalInt.empty() : OptionalInt.of(counts[round]);
                sights.add(new AllWays.Sight(count, round == counts.length - 1 ? answers : Map.of()));
            }
            return sights;
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private static List<Case> students() {
        return List.of(
                new Case("all right", new int[] {4, 8, 12, 12, 8}, Map.of()),
                new Case("one over, kept", new int[] {4, 8, 13, 13, 9}, Map.of()),
                new Case("a miscount", new int[] {4, 8, 11, 12, 8}, Map.of()),
                new Case("one short of a ring", new int[] {3, 6, 9, 9}, Map.of()),
                new Case("far off", new int[] {4, 8, 10, 13}, Map.of()),
                new Case("a count missing", new int[] {4, 8, -1, 13, 9}, Map.of()),
                new Case("two missing", new int[] {4, -1, -1, 11}, Map.of()),
                new Case("a gap was seen", new int[] {4, 8, 11}, Map.of("look-for-a-gap", "yes")),
                new Case(
                        "recounted, and fewer increases",
                        new int[] {4, 8, 11, 11},
                        Map.of("recount", "same", "count-the-shapings", "fewer")),
                new Case("a pair though right", new int[] {4, 8, 12, 12, 8}, Map.of("look-for-a-pair", "yes")));
    }

    private static CountReport report(long sequence, int round, CountReport.Kind kind, int count) {
        OptionalInt said = count < 0 ? OptionalInt.empty() : OptionalInt.of(count);
        return new CountReport(sequence, new StudentId(1), "Cap", round, kind, said, Instant.EPOCH, "");
    }

    private static CountReport counted(long sequence, int round, int count) {
        return report(sequence, round, CountReport.Kind.COUNTED, count);
    }

    private static StudentChain chain() {
        return new StudentChain(new PatternStory(Patterns.of("Cap", 4, ROUNDS), Rates.STORY));
    }

    @ParameterizedTest
    @MethodSource("students")
    void everyReportIsExplainedAsEveryWayThroughSays(Case student) {
        StudentChain chain = chain();
        double before = 1;
        for (int round = 1; round <= student.counts().length; round++) {
            if (student.counts()[round - 1] < 0) {
                continue;
            }
            CountReport report = counted(round, round, student.counts()[round - 1]);
            boolean last = round == student.counts().length;
            Finding found =
                    chain.add(last ? report.checked(student.answers()) : report).orElseThrow();
            AllWays all = new AllWays(4, ROUNDS, Rates.STORY, student.sights(round), round);
            compare(student + ", round " + round, all, found);
            if (student.answers().isEmpty()) {
                assertEquals(-Math.log(all.total / before), found.surprise(), 0.002, student + ", round " + round);
            }
            before = all.total;
        }
        Map<Long, Finding> after = chain.afterAll();
        int rounds = student.counts().length;
        for (long round : after.keySet()) {
            AllWays all = new AllWays(4, ROUNDS, Rates.STORY, student.sights(rounds), (int) round);
            compareCauses(student + ", afterwards, round " + round, all, after.get(round));
        }
    }

    private static void compare(String name, AllWays all, Finding found) {
        compareCauses(name, all, found);
        all.began.forEach((round, chance) -> {
            if (round > 0) {
                double said = found.began().stream()
                        .filter(began -> began.round() == round)
                        .mapToDouble(Began::probability)
                        .sum();
                assertEquals(chance, said, EXACT, name + ", began in " + round);
            }
        });
    }

    private static void compareCauses(String name, AllWays all, Finding found) {
        all.kinds.forEach((kinds, chance) -> {
            double said = found.causes().stream()
                    .filter(cause -> cause.kinds().list().stream()
                            .map(Kind::word)
                            .toList()
                            .equals(kinds))
                    .mapToDouble(Finding.Cause::probability)
                    .sum();
            assertEquals(chance, said, EXACT, name + ": " + kinds);
        });
        all.counts.forEach(
                (count, chance) -> assertEquals(chance, found.chance(count), EXACT, name + " truly has " + count));
    }

    @Test
    void anAbsurdCountIsNotForcedOntoAKindAndTheChainStartsAnewFromIt() {
        StudentChain chain = chain();
        chain.add(counted(1, 1, 4));
        Finding absurd = chain.add(counted(2, 2, 40)).orElseThrow();
        assertFalse(absurd.explained());
        assertEquals(List.of(), absurd.causes());
        assertEquals(40, absurd.likeliest());
        Finding next = chain.add(counted(3, 3, 44)).orElseThrow();
        assertTrue(next.explained());
        assertEquals(44, next.likeliest());
        assertTrue(chain.afterAll().get(1L).explained());
    }

    @Test
    void whatWasPulledBackIsWorkedAnewFromTheLastRoundLeft() {
        StudentChain chain = chain();
        chain.add(counted(1, 1, 4));
        chain.add(counted(2, 2, 8));
        chain.add(counted(3, 3, 15));
        chain.add(report(4, 2, CountReport.Kind.PULLED_BACK, -1));
        Finding anew = chain.add(counted(5, 3, 12)).orElseThrow();
        assertTrue(anew.causes().get(0).kinds().none());
        assertTrue(anew.causes().get(0).probability() > 0.9, anew.causes().toString());
    }

    /** A round on 7 stitches makes 10 or 11; that it was worked twice to 10 tells against 8 stitches below. */
    @Test
    void whatWasPulledBackStillSpeaksOnTheRoundsBelow() {
        StudentChain once = chain();
        StudentChain twice = chain();
        for (StudentChain chain : List.of(once, twice)) {
            chain.add(counted(1, 1, 4));
            chain.add(counted(2, 2, 7));
            chain.add(counted(3, 3, 10));
        }
        twice.add(report(4, 2, CountReport.Kind.PULLED_BACK, -1));
        twice.add(counted(5, 3, 10));
        double seenOnce = once.afterAll().get(2L).chance(7);
        double seenTwice = twice.afterAll().get(2L).chance(7);
        assertTrue(seenTwice > seenOnce, seenOnce + " then " + seenTwice);
    }

    @Test
    void aCorrectedCountStandsInPlaceOfTheEarlierOne() {
        StudentChain corrected = chain();
        int[] counts = {4, 8, 11, 12};
        for (int round = 1; round <= 4; round++) {
            corrected.add(counted(round, round, counts[round - 1]));
        }
        Finding late = corrected.add(counted(5, 3, 12)).orElseThrow();
        AllWays all =
                new AllWays(4, ROUNDS, Rates.STORY, new Case("", new int[] {4, 8, 12, 12}, Map.of()).sights(4), 3);
        compareCauses("corrected", all, late);
        assertEquals(late, corrected.afterAll().get(5L));
    }

    @Test
    void aCountThatWasMissingMayComeLate() {
        StudentChain chain = chain();
        chain.add(counted(1, 1, 4));
        chain.add(counted(2, 4, 13));
        chain.add(counted(3, 3, 12));
        Finding late = chain.add(counted(4, 2, 8)).orElseThrow();
        AllWays all =
                new AllWays(4, ROUNDS, Rates.STORY, new Case("", new int[] {4, 8, 12, 13}, Map.of()).sights(4), 2);
        compareCauses("late", all, late);
    }

    /** A brim on the cap's last round: nine stitches there are no mistake of the brim where the cap ended with nine. */
    @Test
    void aPartThatStartsOnAnotherTakesOverItsTrueCount() {
        Pattern pattern = new Pattern(
                Terms.UK,
                List.of(
                        Patterns.part("Cap", 4, ROUNDS),
                        Patterns.onto("Brim", 8, List.of(Written.plain(8), Written.round("", "pi", 4, "")))));
        StudentChain chain = new StudentChain(new PatternStory(pattern, Rates.STORY));
        int[] counts = {4, 8, 12, 12, 9};
        for (int round = 1; round <= counts.length; round++) {
            chain.add(counted(round, round, counts[round - 1]));
        }
        Finding brim = chain.add(new CountReport(
                        6, new StudentId(1), "Brim", 1, CountReport.Kind.COUNTED, OptionalInt.of(9), Instant.EPOCH, ""))
                .orElseThrow();
        assertTrue(brim.causes().get(0).kinds().none());
        assertEquals("Cap", brim.likeliestBegan().orElseThrow().part());
        assertEquals(9, brim.expected().getAsInt());
    }

    @Test
    void reportsThatSayNothingAreLeftOut() {
        StudentChain chain = chain();
        assertTrue(chain.add(report(1, 1, CountReport.Kind.UNFINISHED, 3)).isEmpty());
        assertTrue(chain.add(counted(2, 99, 3)).isEmpty());
        assertTrue(chain.add(counted(3, 1, 4).withdrawn(java.util.Optional.of(Instant.EPOCH)))
                .isEmpty());
        assertTrue(chain.add(new CountReport(
                        4,
                        new StudentId(1),
                        "Nowhere",
                        1,
                        CountReport.Kind.COUNTED,
                        OptionalInt.of(1),
                        Instant.EPOCH,
                        ""))
                .isEmpty());
        assertTrue(chain.add(report(5, 0, CountReport.Kind.PULLED_BACK, -1)).isEmpty());
    }
}
