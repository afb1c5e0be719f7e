package roundwright.desktop.counts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.desktop.desk.Desk;
import roundwright.group.RoundPlace;
import roundwright.group.Student;
import roundwright.wording.Wording;
import roundwright.workbook.CountEdit;
import roundwright.workbook.NewCount;

/** Turns what was typed for the chosen student and round into reports. Where that cannot be done, says why and does nothing. */
final class CountEntry {
    private static final Wording WORDS = Wording.of("desktop");

    private final Desk desk;

    CountEntry(Desk desk) {
        this.desk = desk;
    }

    /** Reports what was said of the chosen round, or of it and the rounds after it; says whether it was done. */
    boolean enter(TypedCount.Said said) {
        Optional<Student> student = desk.student();
        Optional<RoundPlace> place = desk.place();
        if (student.isEmpty() || place.isEmpty()) {
            return false;
        }
        RoundPlace from = place.get();
        int to = said.to().orElse(from.round());
        if (to < from.round() || missing(from.part(), to)) {
            desk.tell(WORDS.say("range-wrong", from.part(), from.round(), to));
            return false;
        }
        return report(student.get(), places(from, to), said);
    }

    private boolean missing(String part, int round) {
        return desk.course()
                .flatMap(course -> course.round(new RoundPlace(part, round)))
                .isEmpty();
    }

    private OptionalInt pattern(RoundPlace place) {
        return desk.course().map(course -> course.expected(place)).orElse(OptionalInt.empty());
    }

    private List<RoundPlace> places(RoundPlace from, int to) {
        return desk.course().orElseThrow().places().stream()
                .filter(place -> place.part().equals(from.part()))
                .filter(place -> place.round() >= from.round() && place.round() <= to)
                .toList();
    }

    private boolean report(Student student, List<RoundPlace> places, TypedCount.Said said) {
        List<NewCount> counts = new ArrayList<>();
        for (RoundPlace place : places) {
            OptionalInt count = said.count(pattern(place));
            if (count.isEmpty()) {
                boolean known = pattern(place).isPresent();
                desk.tell(known ? WORDS.say("fewer-than-none") : WORDS.say("no-count-to-take", place.round()));
                return false;
            }
            counts.add(NewCount.of(student.id(), place.part(), place.round(), count.getAsInt()));
        }
        desk.group().ifPresent(group -> desk.apply(new CountEdit.ReportCounts(group.id(), counts)));
        return true;
    }

    /** Notes that the chosen round is being worked. */
    void unfinished(OptionalInt soFar) {
        chosen((student, place) -> NewCount.unfinished(student.id(), place.part(), place.round(), soFar));
    }

    /** Notes that the work was pulled back: the round is the last one left, or where none is given the one below the chosen. */
    void pulledBack(OptionalInt last) {
        chosen((student, place) -> NewCount.pulledBackTo(
                student.id(), place.part(), Math.min(place.round(), last.orElse(Math.max(0, place.round() - 1)))));
    }

    /** Takes back what was entered last for the chosen round: what was said before holds again. Says whether there was anything. */
    boolean takeBack() {
        Optional<Long> report = desk.student()
                .flatMap(student -> desk.place()
                        .flatMap(place -> desk.standing(student.id()).round(place.part(), place.round())))
                .flatMap(cell -> cell.current())
                .map(current -> current.sequence());
        report.ifPresent(sequence ->
                desk.group().ifPresent(group -> desk.apply(new CountEdit.TakeBack(group.id(), sequence))));
        return report.isPresent();
    }

    /** Makes a report of a student's round. */
    private interface Counting {
        NewCount of(Student student, RoundPlace place);
    }

    private void chosen(Counting counting) {
        desk.group()
                .ifPresent(group -> desk.student()
                        .ifPresent(student -> desk.place()
                                .ifPresent(place -> desk.apply(
                                        new CountEdit.ReportCounts(group.id(), counting.of(student, place))))));
    }
}
