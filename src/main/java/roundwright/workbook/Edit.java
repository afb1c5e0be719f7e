package roundwright.workbook;

import java.util.List;

/**
 * One thing the teacher does to the workbook, as a value. It is done whole, at once and for good, in one transaction, and can be
 * undone in one step.
 */
public sealed interface Edit permits CourseEdit, GroupEdit, StudentEdit, SessionEdit, CountEdit, SettingEdit, Several {
    /** What it is called in "Undo: …". */
    String name(WorkbookView view);

    /**
     * What has to be written, in order.
     *
     * @throws IllegalArgumentException where it speaks of something that is not in the workbook
     */
    List<Write<?>> writes(WorkbookView view, Stamp stamp);

    /** Whether it is a step of work that the teacher would want to undo. */
    default boolean undoable() {
        return true;
    }
}
