package roundwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills a program while it brings a file to the next version: the file is then the old one whole, or the new one whole, and the backup
 * that was made before is good. {@code -Dkills=N -Dseed=N} for more.
 */
class MigrationKillTest {
    private static final int KILLS = Integer.getInteger("kills", 4);
    private static final long SEED = Long.getLong("seed", 3);

    @TempDir
    Path folder;

    @Test
    void aMigrationThatIsInterruptedLeavesTheOldFileGood() throws Exception {
        Path original = folder.resolve("original.db");
        List<FiledReport> reports;
        try (Store store = Store.create(original, folder)) {
            UglyFile.fill(store);
            reports = store.reports().all();
        }
        Random chance = new Random(SEED);
        int old = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            Path file = Files.copy(original, folder.resolve("killed" + kill + ".db"));
            Path backups = folder.resolve("backups" + kill);
            migrateUntilKilled(file, backups, chance.nextInt(160));
            String told = "seed " + SEED + ", kill " + kill;
            Backup backup = new Backups(backups, file).newestFirst().get(0);
            assertEquals(reports, reports(backup.file(), Migrations.KNOWN), told);
            if (Heading.of(file).version() == Migrations.KNOWN.newest() || journal(file)) {
                old++;
                assertEquals(reports, reports(file, Migrations.KNOWN), told);
            } else {
                assertEquals(
                        reports.size(), reports(file, MigratingChild.next()).size(), told);
            }
        }
        System.out.printf("%d kills in a migration: %d old files good, %d new ones%n", KILLS, old, KILLS - old);
        assertTrue(KILLS < 50 || old > KILLS / 4, old + " were killed in the middle");
    }

    private static boolean journal(Path file) throws IOException {
        Path journal = file.resolveSibling(file.getFileName() + "-journal");
        return Files.exists(journal) && Files.size(journal) > 0;
    }

    private static List<FiledReport> reports(Path file, Migrations migrations) throws StoreException {
        try (Database database = Opening.open(file, migrations)) {
            return new ReportStore(database).all();
        }
    }

    private static void migrateUntilKilled(Path file, Path backups, int millis) throws Exception {
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        MigratingChild.class.getName(),
                        file.toString(),
                        backups.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            assertEquals("begun", out.readLine());
            Thread.sleep(millis);
            child.toHandle().destroyForcibly();
            child.waitFor();
        }
    }

    @Test
    void whatAKilledProgramLeftBesideTheFileIsSweptAway() throws StoreException, IOException {
        Path file = folder.resolve("swept.db");
        Store.create(file, folder).close();
        Path left = Files.writeString(folder.resolve(".swept.db.999999999.new"), "half a copy");
        Path copy = Files.writeString(
                Files.createDirectories(folder.resolve("backups"))
                        .resolve(".swept.1f60a2c4.v1.2026-02-03T191205.db.999999999.new"),
                "half a backup");
        Path other = Files.writeString(folder.resolve(".other.db.999999999.new"), "another file's");
        try (Store store = Store.open(file, folder.resolve("backups"))) {
            store.backUp(java.time.Instant.parse("2026-02-03T19:12:05Z"));
        }
        assertTrue(Files.notExists(copy));
        Files.delete(new Backups(folder.resolve("backups"), file)
                .newestFirst()
                .get(0)
                .file());
        Files.delete(folder.resolve("backups"));
        try (Stream<Path> paths = Files.list(folder)) {
            assertEquals(
                    List.of(other, file),
                    paths.sorted()
                            .filter(path -> !path.equals(left) || Files.exists(left))
                            .toList());
        }
    }
}
