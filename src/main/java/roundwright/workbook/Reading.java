package roundwright.workbook;

import roundwright.store.Store;
import roundwright.store.StoreException;

/** Reads the whole file into the first view. */
final class Reading {
    private Reading() {}

    static WorkbookView of(Store store) throws StoreException {
        Draft draft = new Draft(WorkbookView.EMPTY);
        for (Kind<?> kind : Kind.ALL) {
            read(store, kind, draft);
        }
        return draft.finished();
    }

    private static <V> void read(Store store, Kind<V> kind, Draft draft) throws StoreException {
        kind.shelf().apply(store).all().forEach(value -> kind.put(value, draft));
    }
}
