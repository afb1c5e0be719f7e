package roundwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundwright.store.Backup;
import roundwright.store.StoreException;

/**
 * Kills a program that edits a file, at random moments, and looks at what is left: every step that was acknowledged, and of the one
 * that was under way all or nothing. {@code -Dkills=N -Dseed=N} for more.
 */
class KillTest {
    private static final int KILLS = Integer.getInteger("kills", 4);
    private static final long SEED = Long.getLong("seed", 3);

    @TempDir
    Path folder;

    @Test
    void nothingThatWasAcknowledgedIsLostAndNothingIsHalfThere() throws Exception {
        kill(false);
    }

    /** Some of the steps are backups, returns to one, and the erasing of students: each is there whole or not at all. */
    @Test
    void neitherIsItWhileBackupsAreMadeAndGoneBackTo() throws Exception {
        kill(true);
    }

    private void kill(boolean backupsToo) throws Exception {
        Random chance = new Random(SEED);
        int acknowledged = 0;
        int underWay = 0;
        for (int kill = 1; kill <= KILLS; kill++) {
            long seed = chance.nextLong();
            Path file = folder.resolve("killed" + kill + ".db");
            int said = editUntilKilled(file, seed, chance, backupsToo);
            acknowledged += said;
            underWay += check(file, seed, said, backupsToo) ? 1 : 0;
            clear();
        }
        System.out.printf(
                "%d kills%s, %d acknowledged steps, none lost; %d steps kept that were not yet acknowledged%n",
                KILLS, backupsToo ? " with backups" : "", acknowledged, underWay);
    }

    private int editUntilKilled(Path file, long seed, Random chance, boolean backupsToo)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-cp",
                System.getProperty("java.class.path"),
                EditingChild.class.getName(),
                file.toString(),
                Long.toString(seed)));
        if (backupsToo) {
            command.add("backups");
        }
        Process child = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        boolean whileStarting = chance.nextInt(10) == 0;
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            int said = whileStarting ? 0 : number(out.readLine());
            Thread.sleep(whileStarting ? 200 + chance.nextInt(300) : chance.nextInt(500));
            child.toHandle().destroyForcibly();
            child.waitFor();
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                said = number(line);
            }
            return said;
        }
    }

    private static int number(String line) {
        return Integer.parseInt(line.strip());
    }

    /** Whether the file holds the step that was under way, too. */
    private boolean check(Path file, long seed, int said, boolean backupsToo) throws StoreException {
        if (!Files.exists(file)) {
            assertEquals(0, said, "seed " + seed + ": the file is gone");
            return false;
        }
        List<String> found;
        try (Workbook workbook = EditingChild.open(file)) {
            found = Content.of(workbook.view());
            for (Backup backup : workbook.backups()) {
                workbook.compareWith(backup.file());
            }
        }
        try (Workbook model = EditingChild.create(folder.resolve("model.db"))) {
            RandomSteps steps = EditingChild.steps(model, seed, backupsToo);
            for (int step = 1; step <= said; step++) {
                steps.take();
            }
            if (found.equals(Content.of(model.view()))) {
                return false;
            }
            steps.take();
            assertTrue(found.equals(Content.of(model.view())), "seed " + seed + ", after step " + said);
            return true;
        }
    }

    private void clear() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                if (!file.equals(folder)) {
                    Files.delete(file);
                }
            }
        }
    }
}
