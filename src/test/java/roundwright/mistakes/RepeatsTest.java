package roundwright.mistakes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RepeatsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3 dc,inc,3 dc,inc,dc | (3 dc, inc) x 2, dc",
                "dc,dec,dc | dc, dec, dc",
                "a,b,a,b,a,b,c,a,b | (a, b) x 3, c, a, b",
                "a,b,c,a,b,c | (a, b, c) x 2",
                "a | a"
            })
    void whatRepeatsIsWrittenOnce(String words, String folded) {
        assertEquals(folded, String.join(", ", Repeats.folded(List.of(words.split(",")))));
    }
}
