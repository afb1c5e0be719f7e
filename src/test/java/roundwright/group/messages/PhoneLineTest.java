package roundwright.group.messages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import roundwright.group.RoundPlace;

/** The line that a student's own page gives to send, {@code Ines: Tower round 9 36, round 10 36}, is read without loss. */
class PhoneLineTest {
    private static final MessageTable HARE = MessageTable.hare();
    private static final List<String> STUDENTS = MessageTable.group().students();

    @Test
    void everyCountOfALineIsReadBack() {
        long seed = Long.getLong("seed", 4);
        Random chance = new Random(seed);
        for (int run = 0; run < 1_000; run++) {
            String student = STUDENTS.get(chance.nextInt(STUDENTS.size()));
            Set<String> said = new TreeSet<>();
            String line = line(student, chance, said);
            Set<String> found = new TreeSet<>();
            for (Finding finding : new MessagesReader(HARE.expectations(), STUDENTS).read(line)) {
                Reading reading = (Reading) finding;
                reading.rounds()
                        .forEach(round -> found.add(
                                key(reading.student().orElse(""), reading.part().orElse(""), round, reading.count())));
            }
            assertEquals(said, found, "seed " + seed + ": " + line);
        }
    }

    private static String line(String student, Random chance, Set<String> said) {
        List<String> words = new ArrayList<>();
        String part = "";
        int from = chance.nextInt(HARE.expectations().places().size());
        int rounds = 1 + chance.nextInt(12);
        for (RoundPlace place :
                HARE.expectations().places().stream().skip(from).limit(rounds).toList()) {
            int count = Math.max(1, HARE.expectations().count(place).orElseThrow() + chance.nextInt(9) - 4);
            words.add((place.part().equals(part) ? "" : place.part() + " ") + "round " + place.round() + " " + count);
            part = place.part();
            said.add(key(student, part, place.round(), count));
        }
        return student + ": " + String.join(", ", words);
    }

    private static String key(String student, String part, int round, int count) {
        return student + " " + part + " " + round + "=" + count;
    }
}
