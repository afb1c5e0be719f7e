package roundwright.workbook;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import roundwright.course.Course;
import roundwright.course.Lesson;
import roundwright.group.Attendance;
import roundwright.group.CourseId;
import roundwright.group.Expectations;
import roundwright.group.Group;
import roundwright.group.GroupId;
import roundwright.group.RoundPlace;
import roundwright.group.Session;
import roundwright.group.SessionId;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.pattern.Pattern;
import roundwright.wording.Wording;

/**
 * An invented group that has come some way through a course: people, sessions, register and counts, some of them off. The same seed
 * gives the same group.
 */
public final class SampleGroup {
    private static final Wording WORDS = Wording.of("workbook");
    private static final LocalTime EVENING = LocalTime.of(19, 0);
    private static final double ABSENT = 0.08;
    private static final double LATE = 0.06;

    private final Workbook workbook;
    private final GroupId group;
    private final Random chance;
    private final List<Edit> edits = new ArrayList<>();
    private final List<NewCount> counts = new ArrayList<>();

    private SampleGroup(Workbook workbook, long seed) {
        this.workbook = workbook;
        this.group = workbook.newGroup();
        this.chance = new Random(seed);
    }

    /**
     * The edit that adds such a group, and the group it adds.
     *
     * @param edit to be applied as it is, in one step
     */
    public record Sample(GroupId group, Edit edit) {}

    /**
     * @param id the course's place in the workbook
     * @param students how many; beyond the invented names they are numbered
     * @param start date of the first session; they come weekly, and about half the course has been given
     */
    public static Sample of(Workbook workbook, CourseId id, Course course, int students, long seed, LocalDate start) {
        SampleGroup sample = new SampleGroup(workbook, seed);
        sample.add(id, course, students, start);
        return new Sample(sample.group, new Several(WORDS.say("edit.sample"), sample.edits));
    }

    private void add(CourseId id, Course course, int howMany, LocalDate start) {
        edits.add(new GroupEdit.AddGroup(
                new Group(group, id, WORDS.say("sample.group"), Optional.of(start), WORDS.say("sample.place"))));
        List<Student> students = people(howMany);
        edits.add(new StudentEdit.AddStudents(group, students));
        List<List<RoundPlace>> evenings = evenings(course);
        List<SessionId> sessions = sessions(course, evenings, start);
        for (Student student : students) {
            work(student.id(), evenings, sessions, course.pattern(), start);
        }
        counts.sort(Comparator.comparing(count -> count.at().orElseThrow()));
        if (!counts.isEmpty()) {
            edits.add(new CountEdit.ReportCounts(group, counts));
        }
    }

    private List<Student> people(int howMany) {
        List<String> names = new ArrayList<>();
        while (names.size() < howMany) {
            List<String> more = new ArrayList<>(SampleNames.ALL);
            Collections.shuffle(more, chance);
            int time = names.size() / SampleNames.ALL.size() + 1;
            more.stream()
                    .limit(howMany - names.size())
                    .map(name -> time == 1 ? name : name + " " + time)
                    .sorted()
                    .forEach(names::add);
        }
        return names.stream().map(this::person).toList();
    }

    private Student person(String name) {
        return new Student(workbook.newStudent(), name, chance.nextDouble() < 0.12, chance.nextDouble() < 0.08, "");
    }

    /** The rounds of the lessons given so far, evening by evening; of a course without lessons, eight rounds an evening. */
    private static List<List<RoundPlace>> evenings(Course course) {
        List<RoundPlace> all = Expectations.of(course.pattern()).places();
        List<List<RoundPlace>> evenings = new ArrayList<>();
        for (Lesson lesson : course.lessons()) {
            evenings.add(all.stream()
                    .filter(place ->
                            lesson.rounds().stream().anyMatch(range -> range.contains(place.part(), place.round())))
                    .toList());
        }
        if (evenings.isEmpty()) {
            for (int from = 0; from < all.size(); from += 8) {
                evenings.add(all.subList(from, Math.min(from + 8, all.size())));
            }
        }
        return evenings.subList(0, (evenings.size() + 1) / 2);
    }

    private List<SessionId> sessions(Course course, List<List<RoundPlace>> evenings, LocalDate start) {
        List<SessionId> sessions = new ArrayList<>();
        for (int evening = 0; evening < evenings.size(); evening++) {
            OptionalInt lesson = evening < course.lessons().size()
                    ? OptionalInt.of(course.lessons().get(evening).number())
                    : OptionalInt.empty();
            SessionId session = workbook.newSession();
            sessions.add(session);
            edits.add(new SessionEdit.AddSession(new Session(
                    session,
                    group,
                    start.plusWeeks(evening),
                    lesson,
                    reached(evenings.get(evening)),
                    WORDS.say("sample.remember"))));
        }
        return sessions;
    }

    private static String reached(List<RoundPlace> evening) {
        return evening.isEmpty()
                ? ""
                : WORDS.say(
                        "sample.reached",
                        evening.get(evening.size() - 1).part(),
                        evening.get(evening.size() - 1).round());
    }

    /** Who missed an earlier evening has caught up since; who missed the last one has nothing to report of it. */
    private Attendance attendance(boolean lastEvening) {
        double drawn = chance.nextDouble();
        if (drawn < ABSENT) {
            return lastEvening ? Attendance.ABSENT : Attendance.CAUGHT_UP;
        }
        return drawn < ABSENT + LATE ? Attendance.LATE : Attendance.THERE;
    }

    private void work(
            StudentId student,
            List<List<RoundPlace>> evenings,
            List<SessionId> sessions,
            Pattern pattern,
            LocalDate start) {
        SampleWork work = new SampleWork(student, chance, pattern);
        for (int evening = 0; evening < evenings.size(); evening++) {
            boolean last = evening == evenings.size() - 1;
            Attendance attendance = attendance(last);
            edits.add(new SessionEdit.MarkAttendance(group, sessions.get(evening), student, attendance));
            List<RoundPlace> rounds = evenings.get(evening);
            int behind =
                    attendance == Attendance.ABSENT ? rounds.size() : last ? chance.nextInt(1 + rounds.size() / 2) : 0;
            work.evening(rounds, rounds.size() - behind, firstStitch(start.plusWeeks(evening)));
        }
        counts.addAll(work.counts());
    }

    private Instant firstStitch(LocalDate date) {
        return date.atTime(EVENING).toInstant(ZoneOffset.UTC).plus(Duration.ofMinutes(15 + chance.nextInt(10)));
    }
}
