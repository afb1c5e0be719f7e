package roundwright.desktop.strip;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import roundwright.course.Lesson;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Names;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.RoundPlace;
import roundwright.group.RoundStanding;
import roundwright.group.Standing;
import roundwright.group.Student;

/** What the strip shows of the desk. */
public final class StripPresenter {
    private final Desk desk;
    private Optional<OpenCourse> laidOut = Optional.empty();
    private StripPiece piece = new StripPiece(List.of(), List.of());
    private Map<Integer, List<String>> flags = Map.of();
    private Map<RoundPlace, Integer> columns = Map.of();

    public StripPresenter(Desk desk) {
        this.desk = desk;
    }

    /** The piece of the course in hand. */
    public StripPiece piece() {
        if (!laidOut.equals(desk.course())) {
            laidOut = desk.course();
            piece = laidOut.map(open -> StripPiece.of(open.course())).orElse(new StripPiece(List.of(), List.of()));
            columns = new HashMap<>();
            for (int i = 0; i < piece.columns().size(); i++) {
                columns.putIfAbsent(piece.columns().get(i).place(), i);
            }
            flags = laidOut.map(this::flags).orElse(Map.of());
        }
        return piece;
    }

    private Map<Integer, List<String>> flags(OpenCourse open) {
        Map<Integer, List<String>> found = new HashMap<>();
        open.newByPlace()
                .forEach((place, techniques) -> found.put(
                        columns.get(place),
                        techniques.stream()
                                .map(technique -> technique.name(open.terms()))
                                .toList()));
        return found;
    }

    /** What lies on the piece now. */
    public StripMarks marks(Set<RoundPlace> troubles) {
        piece();
        Map<Integer, List<String>> students = new LinkedHashMap<>();
        desk.course()
                .ifPresent(open -> desk.students()
                        .forEach(student -> place(student)
                                .map(columns::get)
                                .ifPresent(column -> students.computeIfAbsent(column, absent -> new ArrayList<>())
                                        .add(Names.of(student, desk)))));
        Set<Integer> wrong = new java.util.HashSet<>();
        troubles.forEach(place -> wrong.add(columns.getOrDefault(place, 0)));
        return new StripMarks(
                flags, students, wrong, desk.lesson().map(Lesson::number).orElse(0));
    }

    /** Where a student is: the round being worked, else the last one done. */
    private Optional<RoundPlace> place(Student student) {
        Standing standing = desk.standing(student.id());
        return standing.next()
                .filter(next -> next.state() == RoundStanding.State.UNFINISHED)
                .or(standing::position)
                .map(RoundStanding::place);
    }

    /** The chosen column; 0 where none is. */
    public int chosen() {
        piece();
        return desk.place().map(place -> columns.getOrDefault(place, 0)).orElse(0);
    }

    /** Chooses the round of a column. */
    public void choose(int column) {
        if (column < piece().columns().size()) {
            desk.choosePlace(piece.columns().get(column).place());
        }
    }
}
