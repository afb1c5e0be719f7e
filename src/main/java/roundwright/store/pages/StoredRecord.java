package roundwright.store.pages;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The values of one record (file format, section 2.1). */
record StoredRecord(List<Object> values, boolean whole) {
    private static final int FIRST_TEXT = 13;
    private static final int FIRST_BLOB = 12;
    private static final int MOST_COLUMNS = 100;

    static StoredRecord read(byte[] payload) throws Unreadable {
        Bytes head = new Bytes(payload, 0, payload.length);
        long length = head.varint();
        if (length > payload.length || length < 1) {
            throw new Unreadable("a record's head of " + length + " bytes");
        }
        List<Long> types = new ArrayList<>();
        while (head.at() < length) {
            types.add(head.varint());
            if (types.size() > MOST_COLUMNS) {
                throw new Unreadable("more columns than any table has");
            }
        }
        return values(types, new Bytes(payload, head.at(), payload.length));
    }

    private static StoredRecord values(List<Long> types, Bytes body) throws Unreadable {
        List<Object> values = new ArrayList<>();
        boolean whole = true;
        for (long type : types) {
            if (type >= FIRST_TEXT && type % 2 == 1) {
                byte[] letters = body.take(length(type - FIRST_TEXT));
                whole &= readable(letters);
                values.add(new String(letters, StandardCharsets.UTF_8).replaceAll("\0+", "\uFFFD"));
            } else {
                values.add(type >= FIRST_BLOB ? body.take(length(type - FIRST_BLOB)) : number((int) type, body));
            }
        }
        return new StoredRecord(values, whole);
    }

    private static int length(long twice) throws Unreadable {
        if (twice / 2 > Integer.MAX_VALUE) {
            throw new Unreadable("a value of " + twice / 2 + " bytes");
        }
        return (int) (twice / 2);
    }

    private static Object number(int type, Bytes body) throws Unreadable {
        return switch (type) {
            case 0 -> null;
            case 1, 2, 3, 4 -> body.signed(type);
            case 5 -> body.signed(6);
            case 6 -> body.signed(8);
            case 7 -> Double.longBitsToDouble(body.signed(8));
            case 8 -> 0L;
            case 9 -> 1L;
            default -> throw new Unreadable("a value of kind " + type);
        };
    }

    /** Zeros are no letters: they stand where a page is gone. */
    private static boolean readable(byte[] letters) {
        for (byte letter : letters) {
            if (letter == 0) {
                return false;
            }
        }
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(letters));
            return true;
        } catch (CharacterCodingException broken) {
            return false;
        }
    }
}
