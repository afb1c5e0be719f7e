package roundwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IsoDatesTest {
    @Test
    void whatIsWrittenIsReadBackAsTheRuntimeWouldReadIt() {
        Random chance = new Random(5);
        for (int i = 0; i < 20_000; i++) {
            Instant time = Instant.ofEpochMilli(chance.nextLong(-70_000_000_000_000L, 250_000_000_000_000L));
            String text = IsoDates.text(i % 3 == 0 ? Instant.ofEpochSecond(time.getEpochSecond()) : time);
            assertEquals(Instant.parse(text), IsoDates.time(text), text);
            assertEquals(Instant.parse(text).toString(), text);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1969-12-31T23:59:59.999Z",
                "1970-01-01T00:00:00Z",
                "2000-02-29T12:00:00.001Z",
                "0000-01-01T00:00:00Z",
                "9999-12-31T23:59:59Z",
                "+10000-01-01T00:00:00Z",
                "-0001-12-31T23:59:59Z"
            })
    void theEdgesOfDaysAndYearsAreWrittenAsTheStandardDoes(String text) {
        assertEquals(text, IsoDates.text(Instant.parse(text)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2027-03-16T24:00:00Z",
                "2027-03-16T18:30:00.123456Z",
                "+12027-03-16T18:30:00Z",
                "2027-03-16T23:59:60Z"
            })
    void otherFormsOfTheStandardAreReadToo(String text) {
        assertEquals(Instant.parse(text), IsoDates.time(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "2027-02-30T18:30:00Z",
                "2027-03-16T18:3x:00Z",
                "2027-03-16 18:30:00Z",
                "2027-13-16T18:30:00Z"
            })
    void whatIsNoTimeIsRefused(String text) {
        assertThrows(DateTimeException.class, () -> IsoDates.time(text));
    }
}
