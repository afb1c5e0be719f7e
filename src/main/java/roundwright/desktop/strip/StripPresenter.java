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
import roundwright.group.StudentId;
import roundwright.workbook.GroupView;

/** What the strip shows of the desk. */
public final class StripPresenter {
    private final Desk desk;
    private Optional<OpenCourse> laidOut = Optional.empty();
    private StripPiece piece = new StripPiece(List.of(), List.of());
    private Map<Integer, List<String>> flags = Map.of();
    private Map<RoundPlace, Integer> columns = Map.of();
    private StripMarks marks = StripMarks.NONE;
    private Optional<MarkedFor> markedFor = Optional.empty();

    /** What the marks follow from; a course and a group are the same only while nothing in them has changed. */
    private record MarkedFor(
            Optional<OpenCourse> course,
            Optional<GroupView> group,
            int lesson,
            boolean hidden,
            Optional<StudentId> named,
            Set<RoundPlace> troubles) {
        boolean sameAs(MarkedFor other) {
            return course.orElse(null) == other.course.orElse(null)
                    && group.orElse(null) == other.group.orElse(null)
                    && lesson == other.lesson
                    && hidden == other.hidden
                    && named.equals(other.named)
                    && troubles.equals(other.troubles);
        }
    }

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

    /** What lies on the piece now: the same marks for as long as nothing of it has changed. */
    public StripMarks marks(Set<RoundPlace> troubles) {
        piece();
        boolean hidden = Names.hidden(desk);
        MarkedFor now = new MarkedFor(
                desk.course(),
                desk.group(),
                desk.lesson().map(Lesson::number).orElse(0),
                hidden,
                hidden ? desk.choice().student() : Optional.empty(),
                troubles);
        if (markedFor.filter(now::sameAs).isEmpty()) {
            markedFor = Optional.of(now);
            marks = marks(now);
        }
        return marks;
    }

    private StripMarks marks(MarkedFor now) {
        Map<Integer, List<String>> students = new LinkedHashMap<>();
        now.course()
                .ifPresent(open -> desk.students()
                        .forEach(student -> place(student)
                                .map(columns::get)
                                .ifPresent(column -> students.computeIfAbsent(column, absent -> new ArrayList<>())
                                        .add(Names.of(student, desk)))));
        Set<Integer> wrong = new java.util.HashSet<>();
        now.troubles().forEach(place -> wrong.add(columns.getOrDefault(place, 0)));
        return new StripMarks(flags, students, wrong, now.lesson());
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
