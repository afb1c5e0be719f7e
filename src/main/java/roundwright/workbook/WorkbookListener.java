package roundwright.workbook;

import java.util.List;

/** Is told what has changed, after it is on the disk and in the view, on the thread that made the edit. */
public interface WorkbookListener {
    void changed(List<Change> changes);
}
