package roundwright.group.counts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DayCellTest {
    private record Case(String cell, boolean monthFirst, String day) {}

    static List<Case> cases() {
        return List.of(
                new Case("2027-03-16", false, "2027-03-16T12:00"),
                new Case("2027-03-16 18:05", false, "2027-03-16T18:05"),
                new Case("2027-03-16T18:05:33Z", false, "2027-03-16T18:05"),
                new Case("16/3/27", false, "2027-03-16T12:00"),
                new Case("3/4/2027", true, "2027-03-04T12:00"),
                new Case("3.4.2027", true, "2027-04-03T12:00"),
                new Case("16. 3. 2027, 9:30", false, "2027-03-16T09:30"),
                new Case("16 March 2027", false, "2027-03-16T12:00"),
                new Case("Tue 16 Mar 2027 at 19:00", false, "2027-03-16T19:00"),
                new Case("March 16th, 2027", false, "2027-03-16T12:00"),
                new Case("31/2/2027", false, ""),
                new Case("soon", false, ""),
                new Case("36", false, ""),
                new Case("99/99/9999", true, ""));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aDayIsReadAsItIsWritten(Case given) {
        assertEquals(
                given.day(),
                DayCell.read(given.cell(), given.monthFirst())
                        .map(Object::toString)
                        .orElse(""));
    }

    @ParameterizedTest
    @MethodSource("columns")
    void whichComesFirstShowsInTheWholeColumn(List<String> cells) {
        assertEquals(cells.contains("3/14/2027"), DayCell.monthFirst(cells.stream()));
    }

    static Stream<List<String>> columns() {
        return Stream.of(
                List.of("3/4/2027", "3/14/2027"), List.of("3/4/2027", "14/3/2027"), List.of("3/4/2027"), List.of());
    }
}
