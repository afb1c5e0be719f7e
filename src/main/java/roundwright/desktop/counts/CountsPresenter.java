package roundwright.desktop.counts;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.course.Lesson;
import roundwright.desktop.ask.LessonLog;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Names;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.Attendance;
import roundwright.group.RoundPlace;
import roundwright.group.RoundStanding;
import roundwright.group.Session;
import roundwright.group.Standing;
import roundwright.group.Student;
import roundwright.wording.Beginning;
import roundwright.wording.Wording;
import roundwright.workbook.GroupView;
import roundwright.workbook.SettingEdit;

/** The students by rounds, which of them is chosen, and what is being typed. */
public final class CountsPresenter {
    private static final Wording WORDS = Wording.of("desktop");
    private static final int WINDOW = 6;

    /** More of a log would push the counts out of sight; the register has all of it. */
    private static final int LONGEST_LOG = 240;

    private final Desk desk;
    private final CountEntry entry;
    private TypedCount typed = TypedCount.NOTHING;
    private List<RoundPlace> columns = List.of();
    private Optional<RoundPlace> columnsOf = Optional.empty();
    private Optional<OpenCourse> courseOf = Optional.empty();

    public CountsPresenter(Desk desk) {
        this.desk = desk;
        this.entry = new CountEntry(desk);
    }

    /** The rounds shown: those of the chosen round's lesson, or in a course without lessons those around it. */
    public List<RoundPlace> columns() {
        boolean same = columnsOf.equals(desk.place())
                && courseOf.orElse(null) == desk.course().orElse(null);
        if (!same) {
            columnsOf = desk.place();
            courseOf = desk.course();
            columns = desk.course()
                    .flatMap(course -> desk.place().map(place -> columns(course, place)))
                    .orElse(List.of());
        }
        return columns;
    }

    private static List<RoundPlace> columns(OpenCourse course, RoundPlace place) {
        Optional<Lesson> lesson = course.lessonOf(place);
        if (lesson.isPresent()) {
            return course.places(lesson.get());
        }
        List<RoundPlace> part = course.places().stream()
                .filter(other -> other.part().equals(place.part())
                        && course.lessonOf(other).isEmpty())
                .toList();
        int from = Math.max(0, part.indexOf(place) / WINDOW * WINDOW);
        return part.subList(from, Math.min(part.size(), from + WINDOW));
    }

    Optional<OpenCourse> course() {
        return desk.course();
    }

    Optional<GroupView> group() {
        return desk.group();
    }

    public List<Student> rows() {
        return desk.students();
    }

    public String name(Student student) {
        return Names.of(student, desk);
    }

    /** What is worth knowing of a student beside their name; empty where nothing is. */
    public String remark(Student student) {
        if (desk.choice().namesHidden()) {
            return "";
        }
        if (awayLastTime(student)) {
            return WORDS.say("away-last-time");
        }
        return student.leftHanded() ? WORDS.say("left-handed") : "";
    }

    private boolean awayLastTime(Student student) {
        Optional<GroupView> group = desk.group();
        Optional<Session> last = group.stream()
                .flatMap(found -> found.sessions().stream())
                .filter(session -> !session.date().isAfter(desk.today()))
                .reduce((earlier, later) -> later);
        return last.flatMap(session -> group.get().attendance(session.id(), student.id()))
                .filter(mark -> mark == Attendance.ABSENT)
                .isPresent();
    }

    Standing standing(Student student) {
        return desk.standing(student.id());
    }

    /** How a student stands in a round. */
    public RoundStanding cell(Student student, RoundPlace place) {
        return cell(standing(student), place);
    }

    static RoundStanding cell(Standing standing, RoundPlace place) {
        return standing.round(place.part(), place.round())
                .orElseGet(() -> new RoundStanding(
                        place, OptionalInt.empty(), RoundStanding.State.NOT_YET, Optional.empty(), List.of()));
    }

    public OptionalInt expected(RoundPlace place) {
        return desk.course().map(course -> course.expected(place)).orElse(OptionalInt.empty());
    }

    /** "Rounds 10 to 14", with the parts where a lesson works in several. */
    public String heading() {
        List<RoundPlace> columns = columns();
        if (columns.isEmpty()) {
            return WORDS.say("no-rounds");
        }
        RoundPlace first = columns.get(0);
        RoundPlace last = columns.get(columns.size() - 1);
        if (!first.part().equals(last.part())) {
            return WORDS.say("rounds-over-parts", first.part(), first.round(), last.part(), last.round());
        }
        return columns.size() == 1
                ? WORDS.say("part-round", first.part(), first.round())
                : WORDS.say("rounds-of", first.part(), first.round(), last.round());
    }

    public String subheading() {
        return desk.course()
                .flatMap(course -> desk.place().flatMap(course::lessonOf))
                .map(lesson -> WORDS.say("lesson-named", lesson.number(), lesson.name()))
                .orElse("");
    }

    /** What was written of the session before today's; empty where nothing was, and while names are hidden: there may be some in it. */
    public String fromLastTime() {
        if (desk.choice().namesHidden()) {
            return "";
        }
        String words = desk.group()
                .flatMap(group -> LessonLog.before(group, desk.today()))
                .map(LessonLog::words)
                .orElse("")
                .replaceAll("\\s+", " ");
        return Beginning.shown(words, LONGEST_LOG);
    }

    /** Whether the student of a row is chosen: told without looking through all of them, for every row that is painted asks. */
    public boolean chosen(int row) {
        return desk.student().filter(rows().get(row)::equals).isPresent();
    }

    /** Whether a cell is chosen. */
    public boolean chosen(int row, int column) {
        return chosen(row) && column == chosenColumn();
    }

    public int chosenRow() {
        return desk.student()
                .flatMap(student ->
                        desk.group().map(group -> group.place(student.id()).orElse(-1)))
                .orElse(-1);
    }

    public int chosenColumn() {
        return desk.place().map(place -> columns().indexOf(place)).orElse(-1);
    }

    public void choose(int row, int column) {
        cancel();
        if (row >= 0 && row < rows().size()) {
            desk.chooseStudent(rows().get(row).id());
        }
        List<RoundPlace> columns = columns();
        if (column >= 0 && column < columns.size()) {
            desk.choosePlace(columns.get(column));
        }
    }

    /** Moves the choice; beyond the last round shown it goes on in the next lesson, before the first in the one before. */
    public void move(int rows, int columns) {
        cancel();
        int row = Math.max(0, Math.min(rows().size() - 1, chosenRow() + rows));
        if (rows != 0 && !rows().isEmpty()) {
            desk.chooseStudent(rows().get(row).id());
        }
        desk.course().flatMap(course -> neighbour(course, columns)).ifPresent(desk::choosePlace);
    }

    private Optional<RoundPlace> neighbour(OpenCourse course, int by) {
        int order = desk.place().map(course::order).orElse(-1) + by;
        return by != 0 && order >= 0 && order < course.places().size()
                ? Optional.of(course.places().get(order))
                : Optional.empty();
    }

    /** What has been typed and not yet entered. */
    public Optional<String> typed() {
        return typed.nothing() ? Optional.empty() : Optional.of(typed.text());
    }

    /** Takes a digit, or a sign that has a meaning where it comes; the second of two points takes the pattern's count. */
    public void type(char sign) {
        if (typed.secondStroke(sign)) {
            asPattern();
        } else if (chosenRow() >= 0) {
            typed = typed.with(sign);
        }
    }

    public void rubOut() {
        typed = typed.rubbedOut();
    }

    public void cancel() {
        typed = TypedCount.NOTHING;
    }

    /** Enters what was typed, if anything, and goes on; what cannot be entered stays, to be put right. */
    public void enter() {
        boolean whole = typed.said().isPresent();
        if (typed.nothing() || whole && entry.enter(typed.said().get())) {
            cancel();
            goOn();
        }
    }

    /** Where the choice goes after a count. */
    Onward onward() {
        return desk.view().setting(Onward.SETTING).map(Onward::of).orElse(Onward.DOWN);
    }

    void onward(Onward onward) {
        desk.apply(new SettingEdit.SetSetting(Onward.SETTING, Optional.of(onward.word())));
    }

    private void goOn() {
        if (rows().isEmpty()) {
            return;
        }
        boolean lastRow = chosenRow() + 1 >= rows().size();
        if (onward() == Onward.RIGHT) {
            boolean lastColumn = chosenColumn() + 1 >= columns().size();
            if (lastColumn && !lastRow) {
                choose(chosenRow() + 1, 0);
                return;
            }
            desk.chooseStudent(rows().get(lastColumn ? 0 : chosenRow()).id());
            move(0, 1);
        } else if (lastRow) {
            desk.chooseStudent(rows().get(0).id());
            move(0, 1);
        } else {
            move(1, 0);
        }
    }

    /** Enters the count that the pattern says, where it says one. */
    public void asPattern() {
        cancel();
        if (entry.enter(new TypedCount.Said(TypedCount.Kind.AS_PATTERN, 0, OptionalInt.empty()))) {
            goOn();
        }
    }

    /** Notes that the round is being worked; a number typed before is where the student stopped. */
    public void unfinished() {
        entry.unfinished(typed.number());
        cancel();
        goOn();
    }

    /**
     * Notes that the chosen round was pulled back, and with it all above: the one below is the last that is left, or the one whose
     * number was typed before.
     */
    public void pulledBack() {
        entry.pulledBack(typed.number());
        cancel();
        goOn();
    }

    /** Takes back what was entered last for the chosen round. */
    public void takeBack() {
        cancel();
        if (!entry.takeBack()) {
            desk.tell(WORDS.say("nothing-to-take-back"));
        }
    }
}
