package roundwright.group.messages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How well the reader finds what invented messages say; {@code -Dmessages.show=true} lists what it gets wrong. */
class MessagesReaderTest {
    static Stream<MessageTable> tables() {
        Stream<MessageTable> first = Stream.of(
                MessageTable.ball(),
                MessageTable.group(),
                MessageTable.kitchen(),
                MessageTable.train(),
                MessageTable.tower(),
                MessageTable.hare(),
                MessageTable.evening(),
                MessageTable.village());
        return Stream.concat(first, MessageTable.others().stream());
    }

    @ParameterizedTest
    @MethodSource("tables")
    void almostEveryReportIsFoundAndAlmostNoneInvented(MessageTable table) {
        MessageScore score = MessageScore.of(table.name(), List.of(table));
        System.out.println(score);
        assertTrue(score.f1() >= 0.96, score::toString);
        assertTrue(score.invented() <= 2, score::toString);
    }

    private static List<Finding> read(String text) {
        return MessageTable.group().read(text);
    }

    @Test
    void whatWasCountedBeforePullingBackIsKept() {
        Reading reading =
                (Reading) read("Bram: r12 was 37, then 30 after I pulled back").get(0);

        assertEquals(30, reading.count());
        assertTrue(reading.pulledBack());
        assertEquals(List.of(37), reading.before().stream().map(Earlier::count).toList());
    }

    @Test
    void whatALaterMessagePutsRightIsKept() {
        Reading reading = (Reading)
                read("Bram: r12 29\nZoë: r12 30\nBram: oh wait no, 30").get(1);

        assertEquals(30, reading.count());
        assertEquals(List.of(29), reading.before().stream().map(Earlier::count).toList());
    }

    @Test
    void aCountWithinAQuestionIsShownAndNotRead() {
        List<Finding> findings = read("do I count the loop on the hook? if yes 19 if no 18 (round 3)");

        assertEquals(1, findings.size());
        assertEquals(Unplaced.Reason.ASKED, ((Unplaced) findings.get(0)).reason());
        assertEquals(List.of(3), ((Unplaced) findings.get(0)).rounds());
    }

    @Test
    void whatIsOnlySaidToBeRightIsMarkedSo() {
        List<Reading> readings = read("Bram: all right up to round 3, round 4 is 25").stream()
                .map(Reading.class::cast)
                .toList();

        assertEquals(
                List.of(6, 12, 18, 25),
                readings.stream().map(Reading::count).sorted().toList());
        assertEquals(3, readings.stream().filter(Reading::inferred).count());
    }

    @Test
    void bothOfTwoCountsThatMayBeMeantAreShown() {
        List<Finding> findings = read("Bram: r7 41 or 42");

        assertEquals(2, findings.size());
        assertTrue(findings.stream().allMatch(finding -> ((Reading) finding).doubtful()));
    }

    @Test
    void aRoundStillBeingWorkedKeepsWhereItStopped() {
        Unplaced unplaced =
                (Unplaced) read("Bram: r6 36, still on r7, 20 so far").get(1);

        assertEquals(Unplaced.Reason.UNFINISHED, unplaced.reason());
        assertEquals(List.of(7), unplaced.rounds());
        assertEquals(20, unplaced.count().orElseThrow());
    }
}
