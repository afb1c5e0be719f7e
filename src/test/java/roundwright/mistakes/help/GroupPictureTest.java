package roundwright.mistakes.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import roundwright.course.Course;
import roundwright.course.file.CourseFile;
import roundwright.group.Attendance;
import roundwright.group.CountReport;
import roundwright.group.GroupId;
import roundwright.group.RegisterMark;
import roundwright.group.RoundPlace;
import roundwright.group.Session;
import roundwright.group.SessionId;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.mistakes.Sentences;
import roundwright.mistakes.Trial;
import roundwright.mistakes.help.Reason.Ground;
import roundwright.mistakes.story.Kind;
import roundwright.mistakes.story.Rates;
import roundwright.notation.Terms;

class GroupPictureTest {
    private static final Course COURSE = CourseFile.read("""
            # Bell

            - terms: UK

            ## Part: Bell

            - Rnd 1: 6 dc in magic ring (6)
            - Rnd 2: inc x 6 (12)
            - Rnd 3: (dc, inc) x 6 (18)
            - Rnd 4: (2 dc, inc) x 6 (24)
            - Rnds 5-9: dc in each st around (24)
            - Rnd 10: (2 dc, dec) x 6 (18)
            - Rnd 11: (dc, dec) x 6 (12)
            - Rnd 12: dec x 6 (6)

            ## Lesson 1: Ring

            - rounds: Bell 1-4
            - new: magic ring, double crochet, increase

            ## Lesson 2: Body

            - rounds: Bell 5-9

            ## Lesson 3: Close

            - rounds: Bell 10-12
            - new: decrease
            """).course();
    private static final LocalDate FIRST = LocalDate.of(2026, 2, 3);
    private static final Sentences WORDS = new Sentences(Terms.UK);

    private final List<Student> students = new ArrayList<>();
    private final List<CountReport> reports = new ArrayList<>();
    private final List<RegisterMark> marks = new ArrayList<>();

    private StudentId student(String name) {
        StudentId id = new StudentId(students.size() + 1L);
        students.add(new Student(id, name, false, false, ""));
        return id;
    }

    private void report(StudentId id, int week, int round, CountReport.Kind kind, int count, String note) {
        Instant at = FIRST.plusWeeks(week).atTime(19, 30).toInstant(ZoneOffset.UTC);
        OptionalInt said = count < 0 ? OptionalInt.empty() : OptionalInt.of(count);
        reports.add(new CountReport(reports.size() + 1L, id, "Bell", round, kind, said, at, note));
    }

    private void counts(StudentId id, int week, int from, int... counts) {
        for (int index = 0; index < counts.length; index++) {
            report(id, week, from + index, CountReport.Kind.COUNTED, counts[index], "");
        }
    }

    private GroupPicture picture(int weeks) {
        List<Session> sessions = new ArrayList<>();
        for (int week = 0; week < weeks; week++) {
            sessions.add(session(week));
        }
        return GroupPicture.of(COURSE, students, reports, sessions, marks, FIRST.plusWeeks(weeks - 1L));
    }

    private static Session session(int week) {
        return new Session(
                new SessionId(week), new GroupId(1), FIRST.plusWeeks(week), OptionalInt.of(week + 1), "", "");
    }

    private static List<Ground> grounds(GroupPicture picture, StudentId id) {
        return picture.stuck().stream()
                .filter(needs -> needs.student().id().equals(id))
                .flatMap(needs -> needs.reasons().stream())
                .map(Reason::ground)
                .toList();
    }

    @Test
    void whoIsWellIsNotNamed() {
        StudentId ida = student("Ida");
        counts(ida, 0, 1, 6, 12, 18, 24);
        counts(ida, 1, 5, 24, 24, 24, 24, 24);
        assertEquals(List.of(), grounds(picture(2), ida));
    }

    @Test
    void eachReasonIsFoundAndSaidWithItsEvidence() {
        StudentId stopped = student("Stopped");
        counts(stopped, 0, 1, 6, 12, 18);
        StudentId going = student("Going");
        counts(going, 2, 1, 6, 12, 18, 26, 26, 26);
        StudentId justNow = student("Now");
        counts(justNow, 2, 1, 6, 12, 18, 26);
        StudentId drifting = student("Drifting");
        counts(drifting, 2, 1, 6, 12, 18, 24, 24, 23, 22, 21);
        StudentId back = student("Back");
        counts(back, 2, 1, 6, 12, 18, 24);
        report(back, 2, 3, CountReport.Kind.PULLED_BACK, -1, "");
        counts(back, 2, 4, 25);
        report(back, 2, 3, CountReport.Kind.PULLED_BACK, -1, "");
        counts(back, 2, 4, 24);
        StudentId absent = student("Absent");
        counts(absent, 2, 1, 6, 12, 18, 24);
        marks.add(new RegisterMark(new GroupId(1), new SessionId(0), absent, Attendance.ABSENT));
        StudentId asking = student("Asking");
        counts(asking, 2, 1, 6, 12);
        report(asking, 2, 3, CountReport.Kind.COUNTED, 18, "please help, which is the first stitch");
        StudentId absurd = student("Absurd");
        counts(absurd, 2, 1, 6, 12, 47);
        GroupPicture picture = picture(3);
        assertEquals(List.of(Ground.NO_PROGRESS), grounds(picture, stopped));
        assertTrue(grounds(picture, going).contains(Ground.WRONG_AND_GOING_ON));
        assertEquals(List.of(Ground.WRONG_NOW), grounds(picture, justNow));
        assertTrue(grounds(picture, drifting).contains(Ground.DRIFT));
        assertEquals(List.of(Ground.PULLED_BACK_OFTEN), grounds(picture, back));
        assertEquals(List.of(Ground.ABSENT_WHEN_TAUGHT), grounds(picture, absent));
        assertEquals(List.of(Ground.ASKED_FOR_HELP), grounds(picture, asking));
        assertEquals(List.of(Ground.TO_COUNT_AGAIN), grounds(picture, absurd));
        String all = picture.stuck().toString();
        assertTrue(all.contains("Most likely has two too many in Bell 4"), all);
        assertTrue(all.contains("Came to Bell 3 and no further in two sessions."), all);
        assertTrue(
                all.contains(
                        "Has had too many stitches since Bell 4 and has gone on to round 6: most likely two too many"),
                all);
        assertTrue(
                all.contains("Was absent on Tuesday 3 February. Taught then: magic ring, double crochet and increase."),
                all);
        assertTrue(all.contains("which is the first stitch"), all);
        for (Kind kind : Kind.values()) {
            assertFalse(kind.word().contains("-") && all.contains(kind.word()), kind.word());
        }
    }

    @Test
    void theMostUrgentComesFirst() {
        StudentId asking = student("Asking");
        report(asking, 2, 1, CountReport.Kind.COUNTED, 6, "help");
        StudentId silent = student("Silent");
        GroupPicture picture = picture(4);
        assertEquals(
                List.of(silent, asking),
                picture.stuck().stream().map(needs -> needs.student().id()).toList());
    }

    /** Works everything by the rates; what is off is made right before it goes on. */
    private void invent(int howMany, Rates rates) {
        for (int number = 0; number < howMany; number++) {
            StudentId id = student("Student " + students.size());
            Trial trial = new Trial(COURSE.pattern(), rates, new SplittableRandom(31L + number));
            for (int round = 1; round <= 12; round++) {
                RoundPlace place = new RoundPlace("Bell", round);
                int made = trial.work(place).orElseThrow().made();
                report(id, round / 5, round, CountReport.Kind.COUNTED, trial.report(made), "");
                if (made
                        != COURSE.pattern()
                                .parts()
                                .get(0)
                                .round(round)
                                .orElseThrow()
                                .count()
                                .orElseThrow()) {
                    report(id, round / 5, round - 1, CountReport.Kind.PULLED_BACK, -1, "");
                    trial.correct(place);
                    report(
                            id,
                            round / 5,
                            round,
                            CountReport.Kind.COUNTED,
                            COURSE.pattern()
                                    .parts()
                                    .get(0)
                                    .round(round)
                                    .orElseThrow()
                                    .count()
                                    .orElseThrow(),
                            "");
                }
            }
        }
    }

    @Test
    void aGroupThatWorksByTheStoryHasFewTroubleSpotsAndNothingToTeachAgain() {
        invent(20, Rates.STORY);
        GroupPicture picture = picture(3);
        assertTrue(picture.troubleSpots().size() <= 1, picture.troubleSpots().toString());
        assertEquals(List.of(), picture.teachAgain());
    }

    @Test
    void roundsWhereManyGoWrongAreTroubleSpotsAndTheirTechniqueIsTaughtAgain() {
        invent(20, Rates.STORY.with(Kind.DECREASE_MISSED, 0.2));
        GroupPicture picture = picture(3);
        assertTrue(
                picture.troubleSpots().stream().anyMatch(spot -> spot.place().round() >= 10),
                picture.troubleSpots().toString());
        assertTrue(picture.troubleSpots().stream().allMatch(spot -> spot.low() > spot.usual()));
        TeachAgain first = picture.teachAgain().get(0);
        assertEquals("decrease", first.mastery().technique());
        assertTrue(first.words(WORDS).contains("missing decreases"), first.words(WORDS));
        String spot = picture.troubleSpots().get(0).words(WORDS);
        assertTrue(spot.contains("of the 20 who counted it"), spot);
        List<Outlook> outlook = picture.outlook(List.of(new RoundPlace("Bell", 5), new RoundPlace("Bell", 12)));
        assertEquals(12, outlook.get(0).place().round());
        assertEquals(Kind.DECREASE_MISSED, outlook.get(0).causes().get(0).kind());
        assertTrue(
                outlook.get(0).words(20, WORDS).contains("Warn them of missing decreases"),
                outlook.get(0).words(20, WORDS));
    }

    /** Two wrong counts of eight are what chance often does. */
    @Test
    void twoWrongCountsAreNoTrend() {
        for (int number = 0; number < 8; number++) {
            StudentId id = student("Student " + number);
            counts(id, 0, 1, 6, 12, 18, number < 2 ? 23 : 24);
        }
        assertEquals(List.of(), picture(1).troubleSpots());
    }

    @Test
    void masteryHasAnIntervalThatNarrowsWithWhatIsSeen() {
        StudentId few = student("Few");
        counts(few, 0, 1, 6, 12);
        StudentId many = student("Many");
        counts(many, 0, 1, 6, 12, 18, 24, 24, 24, 24, 24, 24);
        GroupPicture picture = picture(1);
        Mastery little = increases(picture, few);
        Mastery much = increases(picture, many);
        assertTrue(little.low() < little.value() && little.value() < little.high());
        assertTrue(much.high() - much.low() < little.high() - little.low());
        assertEquals(18, much.chances(), 0.5);
    }

    private static Mastery increases(GroupPicture picture, StudentId id) {
        return picture.mastery(id).stream()
                .filter(mastery -> mastery.kind() == Kind.INCREASE_MISSED)
                .findFirst()
                .orElseThrow();
    }
}
