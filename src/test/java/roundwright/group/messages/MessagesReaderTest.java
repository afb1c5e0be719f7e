package roundwright.group.messages;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How well the reader finds what invented messages say; {@code -Dmessages.show=true} lists what it gets wrong. */
class MessagesReaderTest {
    private static final boolean SHOW = Boolean.getBoolean("messages.show");

    static Stream<MessageTable> tables() {
        return Stream.of(
                MessageTable.ball(),
                MessageTable.group(),
                MessageTable.kitchen(),
                MessageTable.train(),
                MessageTable.tower(),
                MessageTable.hare(),
                MessageTable.evening(),
                MessageTable.village());
    }

    @ParameterizedTest
    @MethodSource("tables")
    void almostEveryReportIsFoundAndAlmostNoneInvented(MessageTable table) {
        int right = 0;
        int missed = 0;
        int invented = 0;
        for (MessageTable.Sample sample : table.samples()) {
            Set<String> found = table.read(sample.text());
            Set<String> common = new TreeSet<>(found);
            common.retainAll(sample.reports());
            right += common.size();
            missed += sample.reports().size() - common.size();
            invented += found.size() - common.size();
            if (SHOW && !found.equals(sample.reports())) {
                System.out.printf("%s%n    wanted %s%n    found  %s%n", sample.text(), sample.reports(), found);
            }
        }
        double f1 = 2.0 * right / (2 * right + missed + invented);
        String result = String.format(
                "%s: %d messages, %d reports, %d missed, %d invented, F1 %.3f",
                table.name(), table.samples().size(), right + missed, missed, invented, f1);
        System.out.println(result);
        assertTrue(f1 >= 0.97, result);
    }
}
