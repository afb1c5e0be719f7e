package roundwright.desktop.counts;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Names;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.CountReport;
import roundwright.group.RoundPlace;
import roundwright.group.RoundStanding;
import roundwright.group.Standing;
import roundwright.group.Student;
import roundwright.wording.Dates;
import roundwright.wording.Wording;

/**
 * What can be said of the chosen count from the reports alone.
 *
 * @param headline who, which round, which count
 * @param cell how it stands
 * @param below what the counts below it say
 * @param line the round as it is written; empty where the pattern has no such line
 * @param history everything that was reported of this round, oldest first; empty where there was only what stands
 * @param note the teacher's own words; may be empty
 */
public record CountDetail(
        String headline, RoundStanding cell, String below, String line, List<String> history, String note) {
    private static final Wording WORDS = Wording.of("desktop");
    private static final DateTimeFormatter WHEN = Dates.as("EEE d MMM, HH:mm").withZone(ZoneId.systemDefault());

    public CountDetail {
        history = List.copyOf(history);
    }

    /** Of the count that is chosen on the desk; empty where none is. */
    public static Optional<CountDetail> of(Desk desk) {
        return desk.course()
                .flatMap(course -> desk.student()
                        .flatMap(student -> desk.place().flatMap(place -> of(desk, course, student, place))));
    }

    private static Optional<CountDetail> of(Desk desk, OpenCourse course, Student student, RoundPlace place) {
        Standing standing = desk.standing(student.id());
        return standing.round(place.part(), place.round())
                .map(cell -> new CountDetail(
                        headline(Names.of(student, desk), cell),
                        cell,
                        below(standing, cell),
                        course.round(place).map(round -> round.line().text()).orElse(""),
                        history(cell),
                        desk.group()
                                .flatMap(group -> group.note(student.id(), place.part(), place.round()))
                                .orElse("")));
    }

    private static String headline(String name, RoundStanding cell) {
        RoundPlace place = cell.place();
        if (cell.state().off()) {
            return WORDS.say(
                    "detail-off",
                    name,
                    place.round(),
                    cell.count().getAsInt(),
                    cell.expected().getAsInt());
        }
        return WORDS.say("detail-head", name, place.round(), CountWords.of(cell));
    }

    /** What stands below in the same part: where it first went wrong, or how often it was right. */
    private static String below(Standing standing, RoundStanding cell) {
        List<RoundStanding> under = standing.rounds().stream()
                .filter(other -> other.place().part().equals(cell.place().part())
                        && other.place().round() < cell.place().round()
                        && other.state().done())
                .toList();
        Optional<RoundStanding> wrong =
                under.stream().filter(other -> other.state().off()).findFirst();
        if (under.isEmpty()) {
            return WORDS.say("below-nothing");
        }
        return wrong.map(first -> WORDS.say(
                        "below-wrong",
                        first.place().round(),
                        first.count().getAsInt(),
                        first.expected().getAsInt()))
                .orElseGet(() -> WORDS.say("below-right", under.size()));
    }

    private static List<String> history(RoundStanding cell) {
        if (cell.history().size() < 2 && cell.history().stream().allMatch(CountReport::stands)) {
            return List.of();
        }
        List<String> said = new ArrayList<>();
        cell.history().forEach(report -> said.add(said(report)));
        return said;
    }

    private static String said(CountReport report) {
        String when = WHEN.format(report.at());
        int count = report.count().orElse(0);
        String what = switch (report.kind()) {
            case COUNTED -> WORDS.say("stitches", count);
            case UNFINISHED -> WORDS.say("cell-unfinished");
            case PULLED_BACK -> WORDS.say("history-pulled-back");
        };
        return report.stands() ? WORDS.say("history-said", when, what) : WORDS.say("history-taken-back", when, what);
    }
}
