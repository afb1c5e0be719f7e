package roundwright.desktop.ask;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import roundwright.group.Session;
import roundwright.wording.Dates;
import roundwright.wording.Wording;
import roundwright.workbook.GroupView;

/**
 * What a teacher wrote of a session.
 *
 * @param reached how far the group came; may be empty
 * @param remember what to think of next time; may be empty
 */
public record LessonLog(LocalDate date, String reached, String remember) {
    private static final Wording WORDS = Wording.of("desktop");
    private static final DateTimeFormatter DAY = Dates.as("EEEE d MMMM");

    /** Of the last session before a day; empty where there was none, or nothing was written of it. */
    public static Optional<LessonLog> before(GroupView group, LocalDate day) {
        return group.sessions().stream()
                .filter(session -> session.date().isBefore(day))
                .reduce((earlier, later) -> later)
                .map(LessonLog::of)
                .filter(log -> !log.words().isEmpty());
    }

    private static LessonLog of(Session session) {
        return new LessonLog(
                session.date(), session.reached().strip(), session.remember().strip());
    }

    /** All of it in one or two sentences; empty where nothing was written. */
    public String words() {
        if (reached.isEmpty() && remember.isEmpty()) {
            return "";
        }
        String day = DAY.format(date);
        if (remember.isEmpty()) {
            return WORDS.say("log-reached", day, reached);
        }
        return reached.isEmpty()
                ? WORDS.say("log-remember", day, remember)
                : WORDS.say("log-both", day, reached, remember);
    }
}
