package roundwright.workbook;

import java.util.List;

/** Is told what changes in the file, on the thread that makes the edit. */
public interface WorkbookListener {
    /**
     * An edit is about to be written. Whether it gets to the disk is not known yet: what follows from it may be worked out, and must
     * not be shown.
     *
     * @param then everything in the file as it will stand when it is there
     */
    default void coming(WorkbookView then, List<Change> changes) {}

    /** It is on the disk and in the view. */
    void changed(List<Change> changes);
}
