package roundwright.group.messages;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How well the reader finds what invented messages say; {@code -Dmessages.show=true} lists what it gets wrong. */
class MessagesReaderTest {
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
        MessageScore score = MessageScore.of(table.name(), List.of(table));
        System.out.println(score);
        assertTrue(score.f1() >= 0.97, score::toString);
    }

    public static void main(String[] arguments) {
        String only = System.getProperty("messages.only");
        for (String which : arguments) {
            List<MessageTable> tables = which.equals("old")
                    ? tables().toList()
                    : which.equals("last") ? MessageTable.last() : MessageTable.writers(which.equals("shown"));
            MessageScore total = new MessageScore(which);
            tables.stream()
                    .filter(table -> only == null || table.name().startsWith(only))
                    .forEach(total::add);
            System.out.println(total);
        }
    }
}
