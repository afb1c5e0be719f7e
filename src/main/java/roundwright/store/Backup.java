package roundwright.store;

import java.nio.file.Path;
import java.time.Instant;

/**
 * A dated copy of a file.
 *
 * @param file where it lies
 * @param when the moment whose state it holds
 * @param version the form of file it was taken from
 */
public record Backup(Path file, Instant when, int version) {}
