package roundwright.group.messages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ChatReaderTest {
    private record Case(String text, String messages) {
        @Override
        public String toString() {
            return text.lines().findFirst().orElse("");
        }
    }

    static Stream<Case> cases() {
        return Stream.of(
                new Case("r5 30", "?: r5 30"),
                new Case("[Tue 19:02] Odalys Brandt: r5 30", "Odalys Brandt: r5 30"),
                new Case("[03/02/2026, 19:12:05] Bram: r5 30", "Bram@2026-02-03T19:12:05: r5 30"),
                new Case("[13.02.26, 19:12] Bram: r5", "Bram@2026-02-13T19:12: r5"),
                new Case(
                        "2/13/26, 7:15 pm - Zoë: r3\n2/3/26, 7:15 am - Zoë: r4",
                        "Zoë@2026-02-13T19:15: r3 | Zoë@2026-02-03T07:15: r4"),
                new Case("08/10/2025, 21:47 - Perpetua Quill: one\ntwo", "Perpetua Quill@2025-10-08T21:47: one two"),
                new Case("2026-02-10 20:01:44 - Bram: r3", "Bram@2026-02-10T20:01:44: r3"),
                new Case("2026-02-10T20:01 Bram: r3", "Bram@2026-02-10T20:01: r3"),
                new Case("Feb 10, 2026, 8:01 PM - Bram: r3", "Bram@2026-02-10T20:01: r3"),
                new Case("10 February 2026 20:01 - Bram: r3", "Bram@2026-02-10T20:01: r3"),
                new Case("Bram (19:12): r3", "Bram: r3"),
                new Case("Bram, 19:12\nr3", "Bram: r3"),
                new Case("<Bram> r3", "Bram: r3"),
                new Case("Bram: r3\nZoë: r4", "Bram: r3 | Zoë: r4"),
                new Case("- Bram: r3\n2. Zoë - r4", "Bram: r3 | Zoë: r4"),
                new Case(
                        "08/10/2025, 21:50 - Ngozi joined\n08/10/2025, 21:51 - Ngozi: r3",
                        "Ngozi@2025-10-08T21:51: r3"),
                new Case("> quoted\nr3", "?: > quoted r3"),
                new Case(
                        "From: Bram B <b@example.org>\nDate: 10 February 2026 20:01\n\nr3 18",
                        "Bram B@2026-02-10T20:01: r3 18"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theTextFallsInto(Case given) {
        List<Message> messages =
                ChatReader.read(given.text(), name -> List.of("Bram", "Zoë").contains(name));
        assertEquals(
                given.messages(),
                messages.stream().map(message -> shown(message, given.text())).collect(Collectors.joining(" | ")));
    }

    private static String shown(Message message, String text) {
        String words = message.body()
                .of(text)
                .replaceAll("(?m)^(From|Date):.*$", "")
                .strip()
                .replaceAll("\\s+", " ");
        return message.sender().orElse("?")
                + message.at().map(time -> "@" + time).orElse("") + ": " + words;
    }
}
