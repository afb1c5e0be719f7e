package roundwright.desktop.planning;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.course.Lesson;
import roundwright.course.planning.WrittenLessons;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.RoundPlace;

/**
 * The lesson in hand: that of the chosen round, or a lesson without rounds that was pointed at. Lessons are counted from 0, as the
 * course file has them.
 */
public final class ChosenLesson {
    private final Desk desk;
    private Optional<Lesson> pointed = Optional.empty();
    private Optional<RoundPlace> pointedFrom = Optional.empty();

    public ChosenLesson(Desk desk) {
        this.desk = desk;
    }

    private List<Lesson> lessons() {
        return desk.course().map(open -> open.course().lessons()).orElse(List.of());
    }

    /** Place of the lesson; -1 where there is none. */
    public int row() {
        int row = pointedFrom.equals(desk.place())
                ? pointed.map(lessons()::indexOf).orElse(-1)
                : -1;
        return row >= 0
                ? row
                : desk.course()
                        .flatMap(open -> desk.place().flatMap(open::lessonOf))
                        .map(lessons()::indexOf)
                        .orElse(-1);
    }

    public Optional<Lesson> lesson() {
        int row = row();
        return row < 0 ? Optional.empty() : Optional.of(lessons().get(row));
    }

    /** The lesson's place in the plan; empty where the plan leaves it out. */
    public OptionalInt planned() {
        int row = row();
        int place = desk.course()
                .flatMap(OpenCourse::placed)
                .map(WrittenLessons.Placed::places)
                .map(places -> places.indexOf(row))
                .orElse(-1);
        return place < 0 ? OptionalInt.empty() : OptionalInt.of(place);
    }

    /** Chooses a lesson's first round; a lesson without rounds is only pointed at. Whether the chosen round is another now. */
    public boolean choose(int row) {
        Lesson lesson = lessons().get(row);
        Optional<RoundPlace> first = desk.course().stream()
                .flatMap(open -> open.places(lesson).stream())
                .findFirst();
        Optional<RoundPlace> before = desk.place();
        pointed = first.isPresent() ? Optional.empty() : Optional.of(lesson);
        pointedFrom = before;
        first.ifPresent(desk::choosePlace);
        return !before.equals(desk.place());
    }
}
