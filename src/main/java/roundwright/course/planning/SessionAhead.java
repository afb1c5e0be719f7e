package roundwright.course.planning;

import java.time.LocalDate;

/**
 * A session that is still to come, for one student.
 *
 * @param date when
 * @param minutes in which the student works, in class and at home, without what is fixed and what is taught
 * @param reach items from the student's next that may be done by its end: what comes after has not been taught
 */
public record SessionAhead(LocalDate date, double minutes, int reach) {}
