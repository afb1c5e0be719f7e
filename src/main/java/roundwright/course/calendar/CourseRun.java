package roundwright.course.calendar;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import roundwright.wording.Wording;

/**
 * When and where a group takes a course: a lesson on each of its weekdays from a date on, but for days off.
 *
 * @param from no lesson is before it; the first is on the first of the weekdays from it on
 * @param times the weekdays and when the lesson begins on each, by the clock of the place
 * @param zone the place's time zone
 * @param place where; empty where it is not said
 * @param off days on which there is no lesson
 */
public record CourseRun(
        LocalDate from, Map<DayOfWeek, LocalTime> times, ZoneId zone, Optional<String> place, Set<LocalDate> off) {
    private static final Wording WORDS = Wording.of("course");
    private static final int EARLIEST_YEAR = 1970;
    private static final int LATEST_YEAR = 9000;

    /** Days without a lesson in a row after which no one would call it one run. */
    private static final int LONGEST_PAUSE = 366;

    public CourseRun {
        times = Collections.unmodifiableMap(times.isEmpty() ? Map.of() : new EnumMap<>(times));
        off = Collections.unmodifiableSet(new TreeSet<>(off));
    }

    /**
     * The meetings of lessons of these lengths.
     *
     * @param firstLesson number of the first of them
     * @param minutes length of each lesson, in order
     */
    public List<Meeting> meetings(int firstLesson, List<Integer> minutes) throws ImpossibleDates {
        check();
        List<Meeting> meetings = new ArrayList<>();
        LocalDate day = from;
        for (int length : minutes) {
            day = nextFrom(day);
            meetings.add(new Meeting(
                    firstLesson + meetings.size(),
                    day.atTime(times.get(day.getDayOfWeek())).atZone(zone),
                    Duration.ofMinutes(length)));
            day = day.plusDays(1);
        }
        return meetings;
    }

    private void check() throws ImpossibleDates {
        if (times.isEmpty()) {
            throw new ImpossibleDates(WORDS.say("dates-no-weekday"));
        }
        if (from.getYear() < EARLIEST_YEAR || from.getYear() > LATEST_YEAR) {
            throw new ImpossibleDates(WORDS.say("dates-year", from, EARLIEST_YEAR, LATEST_YEAR));
        }
    }

    private LocalDate nextFrom(LocalDate first) throws ImpossibleDates {
        for (LocalDate day = first; day.isBefore(first.plusDays(LONGEST_PAUSE)); day = day.plusDays(1)) {
            if (times.containsKey(day.getDayOfWeek()) && !off.contains(day)) {
                return day;
            }
        }
        throw new ImpossibleDates(WORDS.say("dates-all-off", first));
    }

    /** What a teacher should know of the run: days off that were none, a clock that is put forward over the beginning. */
    public List<String> remarks(List<Meeting> meetings) {
        List<String> remarks = new ArrayList<>();
        for (LocalDate day : off) {
            if (!times.containsKey(day.getDayOfWeek()) || day.isBefore(from)) {
                remarks.add(WORDS.say("dates-off-anyway", day));
            }
        }
        for (Meeting meeting : meetings) {
            LocalTime asked = times.get(meeting.start().getDayOfWeek());
            if (!meeting.start().toLocalTime().equals(asked)) {
                LocalDate date = meeting.start().toLocalDate();
                remarks.add(WORDS.say(
                        "dates-no-such-time", date, asked, meeting.start().toLocalTime()));
            }
        }
        return remarks;
    }
}
