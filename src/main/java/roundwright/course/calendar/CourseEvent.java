package roundwright.course.calendar;

import java.util.Optional;

/**
 * A meeting as a calendar shows it.
 *
 * @param meeting which lesson, when
 * @param title "Harbour light, lesson 1: Into the ring"
 * @param details what is worked, what is new, what to bring; a line each
 * @param place where
 */
public record CourseEvent(Meeting meeting, String title, String details, Optional<String> place) {}
