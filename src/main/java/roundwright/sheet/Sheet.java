package roundwright.sheet;

import java.util.function.Supplier;

/**
 * One document that can be made.
 *
 * @param file its name in a folder: {@code harbour-light-lesson-3-student-large.pdf}
 * @param title what it is called to a person
 * @param kind what it is
 * @param bytes makes it; the same bytes each time. Takes a tenth of a second or more, so not on the event thread
 */
public record Sheet(String file, String title, SheetKind kind, Supplier<byte[]> bytes) {}
