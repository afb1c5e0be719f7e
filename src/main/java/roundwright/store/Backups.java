package roundwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundwright.group.StudentId;

/**
 * The dated copies of one file, in one folder: made by the database's own backup call, which is right even while the file is open;
 * each is opened and checked before it gets its name; thinned by {@link Thinning}, except that the newest copy of every older
 * version of the file's form stays.
 */
public final class Backups {
    private static final Duration AGE = Duration.ofDays(1);

    private final Path folder;
    private final Path file;

    /** The copies of a file in a folder, which need not be there yet. */
    public Backups(Path folder, Path file) {
        this.folder = folder;
        this.file = file;
    }

    public Path folder() {
        return folder;
    }

    /** Every copy there is, the newest first. Other files in the folder are passed over. */
    public List<Backup> newestFirst() throws StoreException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        BackupName own = BackupName.of(file, 0, Instant.EPOCH);
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.flatMap(path -> BackupName.read(path.getFileName().toString())
                            .filter(own::sameFileAs)
                            .map(name -> new Backup(path, name.when(), name.version()))
                            .stream())
                    .sorted(Comparator.comparing(Backup::when).reversed())
                    .toList();
        } catch (IOException failure) {
            throw Failures.of(folder, failure);
        }
    }

    /** Whether the last copy is older than a day. A copy from the future, left by a clock that went wrong, counts for none. */
    boolean due(Instant now) throws StoreException {
        return newestFirst().stream()
                .noneMatch(copy -> !copy.when().isAfter(now) && copy.when().isAfter(now.minus(AGE)));
    }

    /** Copies the open file and checks the copy. */
    Backup make(Database database, Instant now) throws StoreException {
        Permissions.makeFolder(folder);
        int version = Opening.version(database);
        Instant when = now.truncatedTo(ChronoUnit.SECONDS);
        Path target = target(version, when);
        while (Files.exists(target)) {
            when = when.plusSeconds(1);
            target = target(version, when);
        }
        Copy.write(database, target);
        return new Backup(target, when, version);
    }

    /** The copy made of this moment's state, if there is one already. */
    Optional<Path> made(int version, Instant when) {
        return Optional.of(target(version, when)).filter(Files::exists);
    }

    private Path target(int version, Instant when) {
        return folder.resolve(BackupName.of(file, version, when).written());
    }

    /** Removes the copies that are not to be kept, and says which those were. */
    List<Backup> thin() throws StoreException {
        NewFile.sweep(folder, "." + BackupName.of(file, 0, Instant.EPOCH).base() + ".");
        List<Backup> all = newestFirst();
        Set<Instant> kept = Thinning.kept(all.stream().map(Backup::when).toList());
        Set<Backup> spared = newestOfEachVersion(all);
        List<Backup> removed = new ArrayList<>();
        for (Backup copy : all) {
            if (!kept.contains(copy.when()) && !spared.contains(copy)) {
                remove(copy);
                removed.add(copy);
            }
        }
        return removed;
    }

    /** Erases a student from every copy, for good. A copy that cannot be changed is named; it is for the person to delete. */
    public ErasedBackups erase(StudentId student) throws StoreException {
        int changed = 0;
        List<Path> left = new ArrayList<>();
        for (Backup copy : newestFirst()) {
            try (Database database = Opening.open(copy.file(), Migrations.KNOWN)) {
                changed += Erasure.of(database, student) > 0 ? 1 : 0;
            } catch (StoreException cannot) {
                left.add(copy.file());
            }
        }
        return new ErasedBackups(changed, left);
    }

    private static Set<Backup> newestOfEachVersion(List<Backup> newestFirst) {
        return new HashSet<>(newestFirst.stream()
                .collect(Collectors.toMap(Backup::version, copy -> copy, (newer, older) -> newer))
                .values());
    }

    private static void remove(Backup copy) throws StoreException {
        try {
            Files.deleteIfExists(copy.file());
        } catch (IOException failure) {
            throw Failures.of(copy.file(), failure);
        }
    }
}
