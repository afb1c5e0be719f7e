package roundwright.workbook;

import java.util.ArrayList;
import java.util.List;
import roundwright.store.Store;
import roundwright.store.StoreException;

/** Reads the whole file into the first view. */
final class Reading {
    private Reading() {}

    static WorkbookView of(Store store) throws StoreException {
        Draft draft = new Draft(WorkbookView.EMPTY);
        List<Write<?>> writes = new ArrayList<>();
        for (Kind<?> kind : Kind.ALL) {
            read(store, kind, writes);
        }
        writes.forEach(write -> write.to(draft));
        return draft.finished();
    }

    private static <V> void read(Store store, Kind<V> kind, List<Write<?>> writes) throws StoreException {
        kind.shelf().apply(store).all().forEach(value -> writes.add(Write.insert(kind, value)));
    }
}
