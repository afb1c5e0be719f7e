package roundwright.store.pages;

/** Bytes that are not what the file format wants in this place. */
final class Unreadable extends Exception {
    Unreadable(String what) {
        super(what, null, false, false);
    }
}
