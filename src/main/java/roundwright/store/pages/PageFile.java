package roundwright.store.pages;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;

/** A file's bytes as pages, with whatever rows can still be read from them. */
public final class PageFile {
    private static final int HEADING = 100;
    private static final int USUAL_PAGE = 4096;
    private static final int PAGE_SIZE_AT = 16;
    private static final int RESERVED_AT = 20;
    private static final int PAGES_AT = 28;
    private static final int FREE_AT = 32;

    private final byte[] bytes;
    private final int size;
    private final int usable;
    private final Set<Integer> understood = new HashSet<>();
    private final List<FoundRow> rows = new ArrayList<>();
    private final Map<Integer, List<Integer>> children = new HashMap<>();
    private final List<Integer> brokenRows = new ArrayList<>();

    private PageFile(byte[] bytes) {
        this.bytes = bytes;
        int said = bytes.length < HEADING ? 0 : number(PAGE_SIZE_AT, 2);
        int pageSize = said == 1 ? 1 << 16 : said;
        boolean possible = pageSize >= 512 && Integer.bitCount(pageSize) == 1;
        this.size = possible ? pageSize : USUAL_PAGE;
        this.usable = size - (possible ? Math.min(32, bytes[RESERVED_AT] & 0xff) : 0);
    }

    /** Reads everything that can be read. */
    public static PageFile read(byte[] bytes) {
        PageFile file = new PageFile(bytes);
        for (int page = 1; page <= file.pagesHere(); page++) {
            file.readPage(page);
        }
        file.passFreePages();
        return file;
    }

    /** Every row of every page, of tables and of indexes. */
    public List<FoundRow> rows() {
        return rows;
    }

    /** The pages below a root, itself among them, as far as the way there can be followed. */
    public Set<Integer> below(int root) {
        Set<Integer> found = new HashSet<>();
        List<Integer> open = new ArrayList<>(List.of(root));
        while (!open.isEmpty()) {
            int page = open.remove(open.size() - 1);
            if (found.add(page)) {
                open.addAll(children.getOrDefault(page, List.of()));
            }
        }
        return found;
    }

    /** How many pages the file has, or says that it had. */
    public int pages() {
        int said = bytes.length < HEADING ? 0 : number(PAGES_AT, 4);
        boolean possible = said > pagesHere() && said < 4 * (pagesHere() + 16);
        return possible ? said : pagesHere();
    }

    /** Those of them that are gone, or hold what cannot be understood. */
    public Set<Integer> unreadablePages() {
        Set<Integer> unreadable = new TreeSet<>();
        for (int page = 1; page <= pages(); page++) {
            if (!understood.contains(page)) {
                unreadable.add(page);
            }
        }
        return unreadable;
    }

    /** For each row that stands on a page that can be read, and cannot be read itself: the page. */
    public List<Integer> brokenRows() {
        return brokenRows;
    }

    private int pagesHere() {
        return (bytes.length + size - 1) / size;
    }

    private int number(int at, int length) {
        int number = 0;
        for (int index = 0; index < length; index++) {
            number = number << 8 | bytes[at + index] & 0xff;
        }
        return number;
    }

    private void readPage(int page) {
        int start = (page - 1) * size;
        int head = page == 1 ? HEADING : 0;
        try {
            Bytes heading = new Bytes(bytes, start + head, Math.min(bytes.length, start + size));
            PageKind kind = PageKind.of(heading.unsigned(1));
            heading.unsigned(2);
            int cells = heading.unsigned(2);
            heading.take(3);
            if (kind.interior()) {
                child(page, heading.unsigned(4));
            }
            if (cells > usable / 2) {
                throw new Unreadable(cells + " rows on a page");
            }
            for (int cell = 0; cell < cells; cell++) {
                readCell(page, kind, start + heading.unsigned(2));
            }
            understood.add(page);
        } catch (Unreadable notATree) {
            // a page of another kind, or one that is broken: counted at the end
        }
    }

    private void readCell(int page, PageKind kind, int at) {
        try {
            Bytes cell = new Bytes(bytes, at, Math.min(bytes.length, page * size));
            if (kind.interior()) {
                child(page, cell.unsigned(4));
            }
            if (kind == PageKind.TABLE_INTERIOR) {
                return;
            }
            long length = cell.varint();
            OptionalLong id = kind == PageKind.TABLE_LEAF ? OptionalLong.of(cell.varint()) : OptionalLong.empty();
            StoredRecord record = StoredRecord.read(payload(cell, length, kind));
            rows.add(new FoundRow(page, id, record.values(), record.whole()));
        } catch (Unreadable broken) {
            brokenRows.add(page);
        }
    }

    private void child(int page, int child) throws Unreadable {
        if (child < 1 || child > pages()) {
            throw new Unreadable("page " + child);
        }
        children.computeIfAbsent(page, any -> new ArrayList<>()).add(child);
    }

    /** The bytes of a record; a long one goes on over pages of its own, and zeros stand for what is lost of it. */
    private byte[] payload(Bytes cell, long length, PageKind kind) throws Unreadable {
        if (length < 0 || length > bytes.length) {
            throw new Unreadable("a row of " + length + " bytes");
        }
        int here = kind.local((int) length, usable);
        byte[] payload = new byte[(int) length];
        System.arraycopy(cell.take(here), 0, payload, 0, here);
        int next = here < length ? cell.unsigned(4) : 0;
        Set<Integer> passed = new HashSet<>();
        while (here < length) {
            if (next < 1 || next > pagesHere() || !passed.add(next)) {
                break;
            }
            int start = (next - 1) * size;
            Bytes more = new Bytes(bytes, start, Math.min(bytes.length, start + usable));
            next = more.unsigned(4);
            int piece = Math.min((int) length - here, usable - 4);
            System.arraycopy(more.take(piece), 0, payload, here, piece);
            here += piece;
        }
        understood.addAll(passed);
        return payload;
    }

    /** Pages that are kept for later use hold nothing, and nothing is lost with them. */
    private void passFreePages() {
        OptionalInt trunk = freePage(bytes.length < HEADING ? 0 : number(FREE_AT, 4));
        while (trunk.isPresent() && understood.add(trunk.getAsInt())) {
            int start = (trunk.getAsInt() - 1) * size;
            int leaves = Math.min(number(start + 4, 4) & 0xffffff, usable / 4 - 2);
            for (int leaf = 0; leaf < leaves; leaf++) {
                freePage(number(start + 8 + 4 * leaf, 4)).ifPresent(understood::add);
            }
            trunk = freePage(number(start, 4));
        }
    }

    private OptionalInt freePage(int page) {
        return page >= 1 && page <= bytes.length / size ? OptionalInt.of(page) : OptionalInt.empty();
    }
}
