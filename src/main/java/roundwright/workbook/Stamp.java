package roundwright.workbook;

import java.time.Instant;
import java.util.function.LongSupplier;

/** What an edit is given when it is done: the time, and numbers for the reports it files. */
record Stamp(Instant now, LongSupplier sequence) {}
