package roundwright.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import roundwright.course.file.CourseFile;
import roundwright.group.CourseId;
import roundwright.store.Backup;
import roundwright.store.Rescue;
import roundwright.store.StoreException;
import roundwright.workbook.CourseEdit;
import roundwright.workbook.SampleGroup;
import roundwright.workbook.Workbook;

/** The doors through which files of the program itself come: a file with turned bytes, a folder of backups with anything in it. */
final class FileDoors {
    private static final Instant NOW = Instant.parse("2026-02-03T19:12:05Z");

    private final byte[] good;

    /** @param folder where the file that is to be spoilt is made */
    FileDoors(Path folder) throws IOException, StoreException {
        Path file = folder.resolve("good.db");
        try (Workbook workbook = Workbook.create(file, folder, clock(NOW))) {
            String text = Files.readString(Path.of("lessons/harbour-light.md"));
            CourseId course = workbook.newCourse();
            workbook.apply(new CourseEdit.AddCourse(course, "Harbour light", text));
            workbook.apply(SampleGroup.of(
                            workbook,
                            course,
                            CourseFile.read(text).course(),
                            9,
                            7,
                            clock(NOW).instant().atOffset(ZoneOffset.UTC).toLocalDate())
                    .edit());
        }
        good = Files.readAllBytes(file);
    }

    List<Door> all() {
        return List.of(new DatabaseDoor(), new BackupsDoor());
    }

    private static Clock clock(Instant when) {
        return Clock.fixed(when, ZoneOffset.UTC);
    }

    private final class DatabaseDoor implements Door {
        @Override
        public String name() {
            return "database";
        }

        @Override
        public void once(Random chance, Path folder) throws IOException {
            Path inside = Files.createDirectories(folder.resolve("inside"));
            Path file = Files.write(inside.resolve("courses.db"), new Spoiler(chance).bytes(good));
            byte[] before = Files.readAllBytes(file);
            try (Workbook workbook = Workbook.open(file, inside.resolve("backups"), clock(NOW))) {
                workbook.backUpIfDue();
                workbook.apply(new CourseEdit.AddCourse(workbook.newCourse(), "One more", "# One more\n"));
            } catch (StoreException refused) {
                Saying.sentence(refused.getMessage());
                if (!java.util.Arrays.equals(before, Files.readAllBytes(file))) {
                    throw new AssertionError("a file that was refused was changed: " + refused.getMessage());
                }
                rescue(file, inside.resolve("saved.db"));
            }
        }
    }

    /** Whatever the bytes, what can be saved of them is a file that opens. */
    private static void rescue(Path damaged, Path into) {
        try {
            Rescue.of(damaged, into).sentences().forEach(Saying::sentence);
            Workbook.open(into, into.resolveSibling("backups"), clock(NOW)).close();
        } catch (StoreException failure) {
            throw new AssertionError("nothing could be saved", failure);
        }
    }

    private final class BackupsDoor implements Door {
        @Override
        public String name() {
            return "backups";
        }

        @Override
        public void once(Random chance, Path folder) throws IOException, StoreException {
            Path inside = Files.createDirectories(folder.resolve("inside"));
            Path backups = Files.createDirectories(inside.resolve("backups"));
            Path file = Files.write(inside.resolve("courses.db"), good);
            Spoiler spoiler = new Spoiler(chance);
            List<Path> made = makeBackups(file, backups, chance);
            for (Path path : made) {
                if (chance.nextInt(3) == 0) {
                    Files.write(path, spoiler.bytes(good));
                }
            }
            litter(backups, made, spoiler, chance);
            try (Workbook workbook = Workbook.open(file, backups, clock(NOW.plus(Duration.ofDays(400))))) {
                for (Backup backup : workbook.backups()) {
                    lookAndGoBack(workbook, backup);
                }
            }
            Saying.onlyInside(folder, java.util.Set.of());
        }

        private List<Path> makeBackups(Path file, Path backups, Random chance) throws StoreException {
            List<Path> made = new ArrayList<>();
            for (int day = chance.nextInt(4); day >= 0; day--) {
                try (Workbook workbook = Workbook.open(file, backups, clock(NOW.plus(Duration.ofDays(40L * day))))) {
                    made.add(workbook.backUp().file());
                }
            }
            return made;
        }

        private void litter(Path backups, List<Path> made, Spoiler spoiler, Random chance) throws IOException {
            String like = made.get(0).getFileName().toString();
            for (int time = chance.nextInt(5); time >= 0; time--) {
                Optional<Path> path = path(backups, spoiler.text(like));
                if (path.isPresent()) {
                    Files.write(path.get(), spoiler.bytes(good));
                }
            }
            Path inTheWay = backups.resolve(like.replaceAll("T\\d{6}", "T235959"));
            if (Files.notExists(inTheWay)) {
                Files.createDirectories(inTheWay);
            }
        }

        private Optional<Path> path(Path folder, String name) {
            try {
                Path path = folder.resolve(name.replaceAll("[/\\x00]", ""));
                return name.length() < 80 && path.startsWith(folder) && !path.equals(folder) && Files.notExists(path)
                        ? Optional.of(path)
                        : Optional.empty();
            } catch (InvalidPathException impossible) {
                return Optional.empty();
            }
        }

        private void lookAndGoBack(Workbook workbook, Backup backup) {
            try {
                workbook.compareWith(backup.file());
                workbook.restore(backup.file());
            } catch (StoreException refused) {
                Saying.sentence(refused.getMessage());
            }
        }
    }
}
