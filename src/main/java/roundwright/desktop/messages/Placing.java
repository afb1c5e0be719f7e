package roundwright.desktop.messages;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.desktop.messages.FoundCount.Way;
import roundwright.group.CountReport;
import roundwright.group.RoundPlace;
import roundwright.group.Student;
import roundwright.group.messages.Reading;
import roundwright.group.messages.Unplaced;
import roundwright.workbook.NewCount;

/** Gives what was read to students of the group and rounds of the course. */
record Placing(FoundCounts.Setting setting) {
    /** One for each round that a reading speaks of; none where the student or the rounds are not known. */
    List<FoundCount> of(Reading reading) {
        return student(reading.student()).stream()
                .flatMap(student -> reading.rounds().stream()
                        .map(round -> new RoundPlace(reading.part().orElse(setting.part()), round))
                        .filter(place -> setting.course().round(place).isPresent())
                        .map(place -> count(student, place, reading)))
                .toList();
    }

    /** Rounds still being worked, where student and round are known. */
    List<FoundCount> unfinished(Unplaced unplaced) {
        if (unplaced.reason() != Unplaced.Reason.UNFINISHED || unplaced.rounds().size() != 1) {
            return List.of();
        }
        RoundPlace place = new RoundPlace(setting.part(), unplaced.rounds().get(0));
        return student(unplaced.student())
                .filter(student -> setting.course().round(place).isPresent())
                .map(student -> new FoundCount(
                        student,
                        place,
                        unplaced.count(),
                        Way.UNFINISHED,
                        setting.course().expected(place),
                        unplaced.source(),
                        List.of(),
                        List.of(NewCount.unfinished(student.id(), place.part(), place.round(), unplaced.count()))))
                .stream()
                .toList();
    }

    private Optional<Student> student(Optional<String> name) {
        return name.map(written -> setting.students().stream()
                        .filter(one -> one.name().equals(written))
                        .findFirst())
                .orElse(setting.nameless());
    }

    private FoundCount count(Student student, RoundPlace place, Reading reading) {
        List<NewCount> filed = new ArrayList<>();
        if (reading.pulledBack()) {
            reading.before().stream()
                    .filter(earlier -> !earlier.pulledBack())
                    .reduce((first, second) -> second)
                    .ifPresent(earlier ->
                            filed.add(filed(student, place, CountReport.Kind.COUNTED, earlier.count(), earlier.at())));
        }
        CountReport.Kind kind = reading.pulledBack() ? CountReport.Kind.PULLED_BACK : CountReport.Kind.COUNTED;
        filed.add(filed(student, place, kind, reading.count(), reading.at()));
        return new FoundCount(
                student,
                place,
                OptionalInt.of(reading.count()),
                way(student, place, reading, kind),
                setting.course().expected(place),
                reading.source(),
                reading.before(),
                filed);
    }

    private static NewCount filed(
            Student student, RoundPlace place, CountReport.Kind kind, int count, Optional<LocalDateTime> at) {
        return new NewCount(
                student.id(),
                place.part(),
                place.round(),
                kind,
                OptionalInt.of(count),
                at.map(time -> time.atZone(ZoneId.systemDefault()).toInstant()),
                "");
    }

    private Way way(Student student, RoundPlace place, Reading reading, CountReport.Kind kind) {
        Optional<CountReport> last = setting.reports().apply(student.id()).stream()
                .filter(CountReport::stands)
                .filter(report -> report.part().equals(place.part()) && report.round() == place.round())
                .reduce((first, second) -> second);
        if (last.isPresent()
                && last.get().kind() == kind
                && last.get().count().equals(OptionalInt.of(reading.count()))) {
            return Way.THERE_ALREADY;
        }
        if (reading.doubtful()) {
            return Way.DOUBTFUL;
        }
        if (reading.inferred()) {
            return last.isPresent() ? Way.CONTRADICTED : Way.SAID_TO_BE_RIGHT;
        }
        return reading.pulledBack() ? Way.PULLED_BACK : Way.COUNTED;
    }
}
