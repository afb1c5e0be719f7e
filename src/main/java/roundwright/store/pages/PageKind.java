package roundwright.store.pages;

/** What kind of page of a tree it is, by its first byte. */
enum PageKind {
    INDEX_INTERIOR(2),
    TABLE_INTERIOR(5),
    INDEX_LEAF(10),
    TABLE_LEAF(13);

    private final int mark;

    PageKind(int mark) {
        this.mark = mark;
    }

    static PageKind of(int mark) throws Unreadable {
        for (PageKind kind : values()) {
            if (kind.mark == mark) {
                return kind;
            }
        }
        throw new Unreadable("no page of a tree");
    }

    boolean interior() {
        return this == INDEX_INTERIOR || this == TABLE_INTERIOR;
    }

    /** How many bytes of a record of some length stand on the page itself (file format, section 1.6). */
    int local(int length, int usable) {
        int most = this == TABLE_LEAF ? usable - 35 : (usable - 12) * 64 / 255 - 23;
        if (length <= most) {
            return length;
        }
        int least = (usable - 12) * 32 / 255 - 23;
        int rest = least + (length - least) % (usable - 4);
        return rest <= most ? rest : least;
    }
}
