package roundwright.store.pages;

/** Bytes that are read from front to back, within bounds. */
final class Bytes {
    private final byte[] bytes;
    private final int end;
    private int at;

    Bytes(byte[] bytes, int from, int to) throws Unreadable {
        if (from < 0 || to > bytes.length || from > to) {
            throw new Unreadable("bytes " + from + " to " + to + " of " + bytes.length);
        }
        this.bytes = bytes;
        this.at = from;
        this.end = to;
    }

    int at() {
        return at;
    }

    int left() {
        return end - at;
    }

    int unsigned(int length) throws Unreadable {
        return (int) signed(length) & (length == 4 ? -1 : (1 << 8 * length) - 1);
    }

    /** A big-endian number of 1 to 8 bytes with its sign. */
    long signed(int length) throws Unreadable {
        need(length);
        long value = length == 0 ? 0 : bytes[at];
        for (int index = 1; index < length; index++) {
            value = value << 8 | bytes[at + index] & 0xff;
        }
        at += length;
        return value;
    }

    /** A number of one to nine bytes, seven bits in each but the ninth. */
    long varint() throws Unreadable {
        long value = 0;
        for (int index = 0; index < 8; index++) {
            int next = unsigned(1);
            value = value << 7 | next & 0x7f;
            if (next < 0x80) {
                return value;
            }
        }
        return value << 8 | unsigned(1);
    }

    byte[] take(int length) throws Unreadable {
        need(length);
        byte[] taken = new byte[length];
        System.arraycopy(bytes, at, taken, 0, length);
        at += length;
        return taken;
    }

    private void need(int length) throws Unreadable {
        if (length < 0 || length > left()) {
            throw new Unreadable(length + " bytes where there are " + left());
        }
    }
}
