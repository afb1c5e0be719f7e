package roundwright.desktop.tables;

import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.RoundPlace;
import roundwright.group.Student;
import roundwright.group.counts.ColumnMatch;
import roundwright.group.counts.NotATable;
import roundwright.group.counts.Roll;
import roundwright.group.counts.Table;
import roundwright.wording.Wording;
import roundwright.workbook.CountEdit;
import roundwright.workbook.GroupView;
import roundwright.workbook.NewCount;

/**
 * Takes a block of cells from the clipboard. Bare counts go onto the grid from the chosen cell on; a block with names and rounds of its
 * own is looked at like a file.
 */
public final class BlockPaste {
    private static final Wording WORDS = Wording.of("desktop");

    private final Desk desk;
    private final Asking asking;
    private final TableFiles files;

    public BlockPaste(Desk desk, Asking asking, TableFiles files) {
        this.desk = desk;
        this.asking = asking;
        this.files = files;
    }

    /** Takes what is in the clipboard. */
    public void fromClipboard() {
        try {
            Object held = Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor);
            take(String.valueOf(held));
        } catch (UnsupportedFlavorException | IOException | IllegalStateException nothingToPaste) {
            desk.tell(WORDS.say("block-none"));
        }
    }

    /** Takes a text of cells parted by tabs. */
    public void take(String text) {
        Optional<OpenCourse> course = desk.course();
        Optional<GroupView> group = desk.group();
        Optional<Student> student = desk.student();
        Optional<RoundPlace> place = desk.place();
        if (course.isEmpty() || group.isEmpty() || student.isEmpty() || place.isEmpty()) {
            return;
        }
        try {
            Table block = Table.ofBlock(text);
            if (speaksForItself(text, course.get(), group.get())) {
                files.show(WORDS.say("block-name"), List.of(Table.of(text)));
            } else if (block.rows().isEmpty()) {
                desk.tell(WORDS.say("block-none"));
            } else {
                lay(block, student.get(), place.get(), course.get(), group.get());
            }
        } catch (NotATable tooLarge) {
            desk.tell(WORDS.say("import-no-table", WORDS.say("block-name"), tooLarge.getMessage()));
        }
    }

    private static boolean speaksForItself(String text, OpenCourse course, GroupView group) throws NotATable {
        List<String> names = group.students().stream().map(Student::name).toList();
        Roll roll = new Roll(course.expectations(), names);
        return ColumnMatch.guess(Table.of(text), roll).usable();
    }

    private void lay(Table block, Student student, RoundPlace place, OpenCourse course, GroupView group) {
        List<Student> students = group.students();
        PastedBlock pasted = PastedBlock.of(
                block,
                students.subList(students.indexOf(student), students.size()),
                course.places().subList(course.order(place), course.places().size()),
                course);
        if (pasted.misfits().isEmpty()) {
            file(pasted.counts(), group);
        } else {
            asking.ask(new MisfitsCard(pasted, asking, () -> file(pasted.counts(), group)));
        }
    }

    private void file(List<NewCount> counts, GroupView group) {
        if (counts.isEmpty()) {
            desk.tell(WORDS.say("block-none"));
        } else {
            desk.apply(
                    new CountEdit.ReportCounts(group.id(), counts),
                    () -> desk.tell(WORDS.say("block-done", counts.size())));
        }
    }
}
