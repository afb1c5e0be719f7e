package roundwright.mistakes.help;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import roundwright.course.Course;
import roundwright.group.CountReport;
import roundwright.group.Expectations;
import roundwright.group.RegisterMark;
import roundwright.group.RoundPlace;
import roundwright.group.Session;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.mistakes.Explanation;
import roundwright.mistakes.Explanations;
import roundwright.mistakes.chain.PatternStory;
import roundwright.mistakes.learning.LearnedRates;
import roundwright.mistakes.learning.Learning;
import roundwright.mistakes.story.Rates;

/**
 * A group as its reports and its register show it at one moment: who is stuck and why, where many go wrong, what to teach
 * again, what comes next. Takes some hundred milliseconds to make, so not on the event thread; never changes once made.
 */
public final class GroupPicture {
    private final Course course;
    private final Learning learning;
    private final Map<StudentId, List<Explanation>> explanations = new LinkedHashMap<>();
    private final List<Needs> stuck;
    private final List<TroubleSpot> troubleSpots;
    private final PatternStory learned;

    /**
     * What is known of a group besides counts.
     *
     * @param held the sessions that were held, by date
     * @param rates the group's rates as learned
     * @param places every round in working order
     */
    record Group(Course course, List<Session> held, Rates rates, List<RoundPlace> places) {
        String techniqueName(String id) {
            return course.techniques()
                    .get(id)
                    .map(technique -> technique.name(course.pattern().terms()))
                    .orElse(id);
        }
    }

    private GroupPicture(
            Course course,
            List<Student> students,
            List<CountReport> reports,
            List<Session> sessions,
            List<RegisterMark> marks,
            LocalDate today) {
        this.course = course;
        this.learning = Learning.of(course.pattern(), reports);
        Explanations all = Explanations.of(
                course.pattern(), reports, student -> learning.student(student).rates());
        students.forEach(student -> explanations.put(student.id(), all.of(student.id())));
        this.learned = new PatternStory(course.pattern(), learning.group().rates());
        this.troubleSpots = TroubleSpot.of(new PatternStory(course.pattern(), Rates.STORY), explanations);
        List<Session> held = sessions.stream()
                .filter(session -> !session.date().isAfter(today))
                .sorted(Comparator.comparing(Session::date))
                .toList();
        Group group = new Group(
                course,
                held,
                learning.group().rates(),
                Expectations.of(course.pattern()).places());
        this.stuck = stuck(group, students, reports, marks);
    }

    /**
     * @param reports of all students, in the order in which they were entered
     * @param sessions of the group, in any order
     * @param marks of its register
     */
    public static GroupPicture of(
            Course course,
            List<Student> students,
            List<CountReport> reports,
            List<Session> sessions,
            List<RegisterMark> marks,
            LocalDate today) {
        return new GroupPicture(course, students, reports, sessions, marks, today);
    }

    private List<Needs> stuck(
            Group group, List<Student> students, List<CountReport> reports, List<RegisterMark> marks) {
        Map<StudentId, List<CountReport>> byStudent =
                reports.stream().collect(Collectors.groupingBy(CountReport::student));
        return students.stream()
                .map(student -> new Needs(
                        student,
                        new Reasons(
                                        group,
                                        byStudent.getOrDefault(student.id(), List.of()),
                                        explanations.get(student.id()),
                                        learning.student(student.id()),
                                        marks.stream()
                                                .filter(mark -> mark.student().equals(student.id()))
                                                .toList())
                                .find()))
                .filter(needs -> !needs.reasons().isEmpty())
                .sorted(Comparator.comparingDouble(Needs::urgency).reversed())
                .toList();
    }

    /** Whether anybody has reported a count yet; until then the picture is that of any beginners. */
    public boolean hasCounts() {
        return explanations.values().stream().anyMatch(own -> !own.isEmpty());
    }

    /** The explanation of every report of a student, in their order, by the student's own rates. */
    public List<Explanation> explanations(StudentId student) {
        return explanations.getOrDefault(student, List.of());
    }

    /** Who needs help, the most urgent first; who needs none is not in it. */
    public List<Needs> stuck() {
        return stuck;
    }

    /** Rounds where the group is surely worse than usual, the clearest first. */
    public List<TroubleSpot> troubleSpots() {
        return troubleSpots;
    }

    /** What to teach once more, the most needed first. */
    public List<TeachAgain> teachAgain() {
        return TeachAgain.of(learning.group());
    }

    /** A student's mastery of each technique that they had a chance at. */
    public List<Mastery> mastery(StudentId student) {
        return Mastery.of(learning.student(student));
    }

    /** What was learned of a student. */
    public LearnedRates rates(StudentId student) {
        return learning.student(student);
    }

    /** What the group will find hard in these rounds, those with most wrong counts first. */
    public List<Outlook> outlook(List<RoundPlace> places) {
        return places.stream()
                .map(place -> Outlook.of(learned, place))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(Outlook::wrong).reversed())
                .toList();
    }

    public Course course() {
        return course;
    }
}
