package roundwright.group;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.group.CountReport.Kind;

class StandingTest {
    private static final Instant NOON = Instant.parse("2026-02-03T12:00:00Z");
    private static final StudentId INES = new StudentId(1);

    /**
     * @param reports such as {@code T3=18 T4?10 T3<}: Tower 3 counted, Tower 4 unfinished, pulled back to Tower 3; a leading minus is one taken back
     * @param states the first letters of the tower's states
     */
    private record Case(String name, String reports, String states, String position, String next) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Case> cases() {
        return Stream.of(
                new Case("nothing said", "", "------------", "-", "Tower 1"),
                new Case("all right so far", "T1=6 T2=12", "rr----------", "Tower 2", "Tower 3"),
                new Case("one over, one under", "T1=6 T2=13 T3=17", "rou---------", "Tower 3", "Tower 4"),
                new Case("a later report holds", "T1=6 T2=13 T2=12", "rr----------", "Tower 2", "Tower 3"),
                new Case("one that was taken back does not", "T1=6 T2=12 -T2=13", "rr----------", "Tower 2", "Tower 3"),
                new Case("a round nobody spoke of", "T1=6 T3=18", "r.r---------", "Tower 3", "Tower 4"),
                new Case("in the middle of a round", "T1=6 T2?8", "r?----------", "Tower 1", "Tower 2"),
                new Case("pulled back two rounds", "T1=6 T2=12 T3=17 T4=23 T2<", "rr<<--------", "Tower 2", "Tower 3"),
                new Case("and worked again", "T1=6 T2=12 T3=17 T2< T3=18", "rrr---------", "Tower 3", "Tower 4"),
                new Case("pulled back with a count", "T1=6 T2=13 T3=19 T2<12", "rr<---------", "Tower 2", "Tower 3"),
                new Case("pulled back to nothing", "T1=6 T2=12 T0<", "<<----------", "-", "Tower 1"),
                new Case(
                        "the tower pulled back under a lid that is done",
                        "T1=6 T2=12 L1=6 L2=12 L3=18 T1<",
                        "r<..........",
                        "Lid 3",
                        "Tower 2"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theReportsComeTo(Case given) {
        Standing standing = Standing.derivedFrom(TrialCourse.TOWER, reports(given.reports()));
        String states = standing.rounds().stream()
                .limit(12)
                .map(round -> letter(round.state()))
                .collect(Collectors.joining());
        assertEquals(given.states(), states);
        assertEquals(given.position(), place(standing.position()));
        assertEquals(given.next(), place(standing.next()));
    }

    @Test
    void everythingDoneLeavesNothingNext() {
        String all = TrialCourse.TOWER.pattern().parts().stream()
                .flatMap(part -> part.rounds().stream()
                        .map(round -> part.name().charAt(0) + "" + round.number() + "="
                                + round.count().orElseThrow()))
                .collect(Collectors.joining(" "));
        Standing standing = Standing.derivedFrom(TrialCourse.TOWER, reports(all));
        assertEquals(Optional.empty(), standing.next());
        assertEquals(15, standing.rightInARow());
    }

    @Test
    void historyKeepsEveryReportAndRoundsThatAreNotThereAreSetAside() {
        Standing standing = Standing.derivedFrom(TrialCourse.TOWER, reports("T1=5 -T1=7 T1=6 T40=6"));
        assertEquals(
                List.of(5, 7, 6),
                standing.round("Tower", 1).orElseThrow().history().stream()
                        .map(report -> report.count().orElseThrow())
                        .toList());
        assertEquals(1, standing.elsewhere().size());
        assertEquals(OptionalInt.of(6), standing.round("Tower", 1).orElseThrow().count());
    }

    @Test
    void theDifferenceIsToThePattern() {
        Standing standing = Standing.derivedFrom(TrialCourse.TOWER, reports("T1=4 T2=15 T3=18"));
        assertEquals(
                List.of(-2, 3, 0),
                standing.rounds().stream()
                        .limit(3)
                        .map(RoundStanding::difference)
                        .toList());
    }

    private static String letter(RoundStanding.State state) {
        return switch (state) {
            case NOT_YET -> "-";
            case NOT_REPORTED -> ".";
            case RIGHT -> "r";
            case OVER -> "o";
            case UNDER -> "u";
            case COUNTED -> "c";
            case UNFINISHED -> "?";
            case PULLED_BACK -> "<";
        };
    }

    private static String place(Optional<RoundStanding> round) {
        return round.map(found -> found.place().part() + " " + found.place().round())
                .orElse("-");
    }

    private static List<CountReport> reports(String written) {
        List<CountReport> reports = new ArrayList<>();
        for (String word : written.isEmpty() ? new String[0] : written.split(" ")) {
            boolean back = word.startsWith("-");
            reports.add(report(reports.size() + 1, back ? word.substring(1) : word)
                    .withdrawn(back ? Optional.of(NOON) : Optional.empty()));
        }
        return reports;
    }

    private static CountReport report(int sequence, String word) {
        String[] sides = word.substring(1).split("[=?<]", -1);
        Kind kind = word.contains("=") ? Kind.COUNTED : word.contains("?") ? Kind.UNFINISHED : Kind.PULLED_BACK;
        OptionalInt count = sides[1].isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(sides[1]));
        String part = word.charAt(0) == 'T' ? "Tower" : "Lid";
        return new CountReport(sequence, INES, part, Integer.parseInt(sides[0]), kind, count, NOON, "");
    }
}
