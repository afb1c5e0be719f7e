package roundwright.desktop;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What the desktop was started with.
 *
 * @param file the file to open, where one was named
 * @param home the one folder under which settings, data and backups are kept, where one was named
 * @param sample whether a file that has no course yet is to open with a sample course and an invented group
 */
public record DesktopArguments(Optional<Path> file, Optional<Path> home, boolean sample) {}
