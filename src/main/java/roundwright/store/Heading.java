package roundwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import roundwright.wording.Wording;

/**
 * The first hundred bytes of a file, read without opening it as a database, so that a file which is not for this program is
 * turned away untouched. Offsets are those of the SQLite file format, section 1.3.
 */
record Heading(int applicationId, int version) {
    private static final Wording WORDS = Wording.of("store");
    private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
    static final int LENGTH = 100;
    private static final int VERSION_AT = 60;
    private static final int APPLICATION_ID_AT = 68;

    static Heading of(Path file) throws StoreException {
        byte[] start = start(file);
        if (start.length == 0) {
            throw new StoreException.Damaged(file, WORDS.say("damaged.empty"), null);
        }
        byte[] magic = Arrays.copyOf(start, Math.min(start.length, MAGIC.length));
        if (!Arrays.equals(magic, Arrays.copyOf(MAGIC, magic.length))) {
            throw new StoreException.Foreign(file);
        }
        if (start.length < LENGTH) {
            throw new StoreException.Damaged(file, WORDS.say("damaged.short"), null);
        }
        ByteBuffer bytes = ByteBuffer.wrap(start);
        return new Heading(bytes.getInt(APPLICATION_ID_AT), bytes.getInt(VERSION_AT));
    }

    /** The version that the first bytes of a file speak of. */
    static int versionOf(byte[] start) {
        return ByteBuffer.wrap(start).getInt(VERSION_AT);
    }

    private static byte[] start(Path file) throws StoreException {
        try (InputStream stream = Files.newInputStream(file)) {
            return stream.readNBytes(LENGTH);
        } catch (IOException failure) {
            throw Failures.of(file, failure);
        }
    }
}
