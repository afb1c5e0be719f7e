package roundwright.group.counts;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** The letters of a table that came as bytes: UTF-8, UTF-16 with or without its mark, else the old Windows letters. */
final class TableText {
    private static final Charset WINDOWS = Charset.forName("windows-1252");

    private TableText() {}

    static String of(byte[] bytes) {
        if (marked(bytes, 0xfe, 0xff) || marked(bytes, 0xff, 0xfe)) {
            return new String(bytes, StandardCharsets.UTF_16);
        }
        if (everyOtherIsZero(bytes, 1)) {
            return new String(bytes, StandardCharsets.UTF_16LE);
        }
        if (everyOtherIsZero(bytes, 0)) {
            return new String(bytes, StandardCharsets.UTF_16BE);
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException notUtf8) {
            return new String(bytes, WINDOWS);
        }
    }

    private static boolean marked(byte[] bytes, int first, int second) {
        return bytes.length >= 2 && (bytes[0] & 0xff) == first && (bytes[1] & 0xff) == second;
    }

    /** Latin letters in UTF-16 without a mark. */
    private static boolean everyOtherIsZero(byte[] bytes, int from) {
        int looked = Math.min(bytes.length, 200);
        int zeros = 0;
        for (int at = from; at < looked; at += 2) {
            zeros += bytes[at] == 0 ? 1 : 0;
        }
        return looked >= 8 && zeros > looked / 2 * 0.8;
    }
}
