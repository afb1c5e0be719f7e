package roundwright.workbook;

import java.util.ArrayList;
import java.util.List;

/**
 * Several edits as one: one transaction, one step of undo. Each sees what the ones before it did.
 *
 * @param what names them together for people
 */
public record Several(String what, List<Edit> edits) implements Edit {
    public Several {
        edits = List.copyOf(edits);
    }

    @Override
    public String name(WorkbookView view) {
        return what;
    }

    @Override
    public List<Write<?>> writes(WorkbookView view, Stamp stamp) {
        List<Write<?>> writes = new ArrayList<>();
        WorkbookView now = view;
        for (Edit edit : edits) {
            List<Write<?>> next = edit.writes(now, stamp);
            writes.addAll(next);
            Draft draft = new Draft(now);
            next.forEach(write -> write.to(draft));
            now = draft.finished();
        }
        return writes;
    }
}
