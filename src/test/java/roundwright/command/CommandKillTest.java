package roundwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.group.Student;
import roundwright.store.StoreException;
import roundwright.workbook.GroupView;
import roundwright.workbook.Workbook;

/**
 * Kills the program itself, started as a person starts it, in the middle of an import, a backup, a return to one and an erasure: the
 * file is then as it was before, or as it was to be. {@code -Dkills=N -Dseed=N} for more.
 */
class CommandKillTest {
    private static final int KILLS = Integer.getInteger("kills", 1);
    private static final long SEED = Long.getLong("seed", 3);
    private static final String COURSE = "lessons/harbour-light.md";

    @TempDir
    Path folder;

    private byte[] before;
    private Path copy;
    private Student student;

    @BeforeEach
    void makeAFileAndACopyOfItThatIsOlder() throws StoreException, IOException {
        Path file = folder.resolve("first.db");
        CommandRun.of("sample", "--students", "30", "--into", file.toString(), COURSE);
        copy = Files.copy(file, folder.resolve("older.db"));
        CommandRun.of("sample", "--students", "40", "--seed", "2", "--into", file.toString(), COURSE);
        before = Files.readAllBytes(file);
        try (Workbook workbook = open(file)) {
            // a name that is somebody else's too cannot be erased by its name
            Map<String, Integer> names = new HashMap<>();
            List<Student> students = workbook.view().groups().stream()
                    .flatMap(group -> group.students().stream())
                    .toList();
            students.forEach(each -> names.merge(each.name().toLowerCase(), 1, Integer::sum));
            student = students.stream()
                    .filter(each -> names.get(each.name().toLowerCase()) == 1)
                    .findFirst()
                    .orElseThrow();
        }
    }

    private Workbook open(Path file) throws StoreException {
        return Workbook.open(file, folder.resolve("none"), Clock.systemUTC());
    }

    @Test
    void whateverIsKilledTheFileIsOneOrTheOther() throws Exception {
        Random chance = new Random(SEED);
        for (String verb : List.of("sample", "backup", "restore", "erase")) {
            long begin = System.nanoTime();
            Path whole = run(verb, Long.MAX_VALUE);
            long millis = (System.nanoTime() - begin) / 1_000_000;
            List<String> wanted = List.of(state(whole));
            List<String> possible = new ArrayList<>(wanted);
            possible.add(state(Files.write(folder.resolve("was.db"), before)));
            int done = 0;
            for (int kill = 0; kill < KILLS; kill++) {
                Path file = run(verb, millis / 3 + (long) (chance.nextDouble() * millis * 2 / 3));
                String state = state(file);
                // an import is two edits: the course, and the group that takes it
                boolean half = verb.equals("sample") && state.matches("(?s)3 courses, 2 groups.*");
                assertTrue(half || possible.contains(state), verb + ", seed " + SEED + ", kill " + kill + ": " + state);
                done += wanted.contains(state) ? 1 : 0;
                checkCopies(file);
            }
            System.out.printf("%s killed %d times, whole each time; %d had done their work%n", verb, KILLS, done);
        }
    }

    private List<String> arguments(String verb, Path file) {
        String name = file.toString();
        return switch (verb) {
            case "sample" -> List.of("sample", "--students", "400", "--into", name, COURSE);
            case "backup" -> List.of("backup", name, "--to", copies(file).toString());
            case "restore" ->
                List.of(
                        "restore",
                        copy.toString(),
                        "--into",
                        name,
                        "--backups",
                        copies(file).toString());
            default ->
                List.of(
                        "erase",
                        name,
                        "--student",
                        student.name(),
                        "--backups",
                        copies(file).toString());
        };
    }

    private static Path copies(Path file) {
        return file.resolveSibling("copies");
    }

    private Path run(String verb, long millis) throws IOException, InterruptedException {
        Path home = folder.resolve("run");
        clear(home);
        Path file = Files.write(Files.createDirectories(home).resolve("first.db"), before);
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                "roundwright.Roundwright"));
        command.addAll(arguments(verb, file));
        Process program = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(home.resolve("said.txt").toFile())
                .start();
        program.waitFor(millis, TimeUnit.MILLISECONDS);
        program.toHandle().destroyForcibly();
        program.waitFor();
        return file;
    }

    private String state(Path file) throws StoreException {
        try (Workbook workbook = open(file)) {
            StringBuilder state = new StringBuilder();
            state.append(workbook.view().courses().size()).append(" courses, ");
            state.append(workbook.view().groups().size()).append(" groups");
            for (GroupView group : workbook.view().groups()) {
                state.append("; ")
                        .append(group.students())
                        .append(group.reports().size());
            }
            return state.toString();
        }
    }

    /** Whatever copies there are can be opened; what was only half made has no copy's name. */
    private void checkCopies(Path file) throws IOException, StoreException {
        if (Files.notExists(copies(file))) {
            return;
        }
        try (Stream<Path> paths = Files.list(copies(file))) {
            for (Path path :
                    paths.filter(each -> each.toString().endsWith(".db")).toList()) {
                try (Workbook workbook = open(path)) {
                    assertEquals(2, workbook.view().groups().size(), path.toString());
                }
            }
        }
    }

    private static void clear(Path home) throws IOException {
        if (Files.exists(home)) {
            try (Stream<Path> paths = Files.walk(home)) {
                for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }
}
