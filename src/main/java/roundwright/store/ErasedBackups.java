package roundwright.store;

import java.nio.file.Path;
import java.util.List;

/**
 * What became of a file's dated copies when a student was erased from them.
 *
 * @param changed how many held the student
 * @param left copies that could not be opened or changed, and may hold the student still
 */
public record ErasedBackups(int changed, List<Path> left) {}
