package roundwright.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.store.StoreException;
import roundwright.wording.Wording;
import roundwright.workbook.GroupView;
import roundwright.workbook.Workbook;

/** A teacher's file, opened for a verb; what the store refuses ends the command with its sentence. */
final class DataFile {
    private static final Wording WORDS = Wording.of("command");

    private DataFile() {}

    /** What a verb does with an open file. */
    interface Work<V> {
        V with(Workbook workbook) throws StoreException, CommandException;
    }

    /** Does something with a file and closes it. Without a folder for backups they are in {@code backups} beside the file. */
    static <V> V with(String name, String backups, Clock clock, Work<V> work) throws CommandException {
        Path file = SafeFile.path(name).toAbsolutePath();
        Path folder = backups == null
                ? file.resolveSibling("backups")
                : SafeFile.path(backups).toAbsolutePath();
        try (Workbook workbook = Workbook.open(file, folder, clock)) {
            return work.with(workbook);
        } catch (StoreException failure) {
            throw new CommandException.Machine(failure.getMessage());
        }
    }

    /** A file that is to be made; it may not be there. */
    static Path newFile(String name) throws CommandException {
        Path file = SafeFile.path(name).toAbsolutePath();
        if (Files.exists(file)) {
            throw new CommandException.Machine(WORDS.say("data.exists", name));
        }
        return file;
    }

    /** The one student of a name. */
    static StudentId student(Workbook workbook, String name) throws CommandException {
        List<Student> found = workbook.view().groups().stream()
                .map(GroupView::students)
                .flatMap(List::stream)
                .filter(student -> student.name().strip().equalsIgnoreCase(name.strip()))
                .distinct()
                .toList();
        if (found.size() != 1) {
            String key = found.isEmpty() ? "no-student" : "several-students";
            throw new CommandException.Input(WORDS.say("data." + key, name, found.size()));
        }
        return found.get(0).id();
    }
}
