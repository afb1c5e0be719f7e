package roundwright.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;

/**
 * What a copy is called: which file, from which version and from when, as in
 * {@code courses.1f60a2c4.v1.2026-02-03T191205.db}. The eight digits stand for the folder of the file, since files of one name
 * from two folders have their copies in one place.
 */
record BackupName(String base, String folder, int version, Instant when) {
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HHmmss");
    private static final Pattern FORM =
            Pattern.compile("(.+)\\.([0-9a-f]{8})\\.v(\\d{1,6})\\.(\\d{4}-\\d{2}-\\d{2}T\\d{6})\\.db");

    static BackupName of(Path file, int version, Instant when) {
        CRC32 digits = new CRC32();
        Path folder = file.toAbsolutePath().normalize().getParent();
        digits.update(String.valueOf(folder).getBytes(StandardCharsets.UTF_8));
        String base = file.getFileName().toString().replaceFirst("\\.db$", "");
        return new BackupName(base, String.format("%08x", digits.getValue()), version, when);
    }

    static Optional<BackupName> read(String name) {
        Matcher form = FORM.matcher(name);
        if (!form.matches()) {
            return Optional.empty();
        }
        try {
            Instant when = LocalDateTime.parse(form.group(4), STAMP).toInstant(ZoneOffset.UTC);
            return Optional.of(new BackupName(form.group(1), form.group(2), Integer.parseInt(form.group(3)), when));
        } catch (DateTimeException noDate) {
            return Optional.empty();
        }
    }

    boolean sameFileAs(BackupName other) {
        return base.equals(other.base) && folder.equals(other.folder);
    }

    /** The name as it is written. */
    String written() {
        String stamp = STAMP.format(when.atOffset(ZoneOffset.UTC));
        return base + "." + folder + ".v" + version + "." + stamp + ".db";
    }
}
