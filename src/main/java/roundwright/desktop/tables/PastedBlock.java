package roundwright.desktop.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.desktop.desk.OpenCourse;
import roundwright.group.CountReport;
import roundwright.group.RoundPlace;
import roundwright.group.Student;
import roundwright.group.counts.CountCell;
import roundwright.group.counts.Table;
import roundwright.wording.Wording;
import roundwright.workbook.NewCount;

/**
 * A block of cells laid onto the grid, its first cell on the chosen one: students down, rounds to the right in working order.
 *
 * @param counts what fits, a row after the other
 * @param misfits what does not, each with its place in the block and why
 */
record PastedBlock(List<NewCount> counts, List<String> misfits) {
    private static final Wording WORDS = Wording.of("desktop");

    /** Of a block that has nothing to do with the grid one need not see everything. */
    static final int MOST_MISFITS = 200;

    private static final int LARGEST = 9_999;

    PastedBlock {
        counts = List.copyOf(counts);
        misfits = List.copyOf(misfits);
    }

    /**
     * @param block the cells
     * @param students from the chosen one on
     * @param places from the chosen one on, in working order
     */
    static PastedBlock of(Table block, List<Student> students, List<RoundPlace> places, OpenCourse course) {
        List<NewCount> counts = new ArrayList<>();
        List<String> misfits = new ArrayList<>();
        for (Table.Row row : block.rows()) {
            for (int column = 0; column < row.cells().size(); column++) {
                String cell = row.cell(column);
                if (CountCell.of(cell).kind() != CountCell.Kind.NOTHING && misfits.size() < MOST_MISFITS) {
                    int across = column;
                    Optional<Student> student = at(students, row.line() - 1);
                    Optional<RoundPlace> place = at(places, column);
                    Optional<NewCount> count = student.flatMap(who ->
                            place.flatMap(where -> count(CountCell.of(cell), who, where, course.expected(where))));
                    count.ifPresentOrElse(
                            counts::add, () -> misfits.add(why(row.line(), across, cell, student, place)));
                }
            }
        }
        return new PastedBlock(counts, misfits);
    }

    private static <T> Optional<T> at(List<T> list, int index) {
        return index < list.size() ? Optional.of(list.get(index)) : Optional.empty();
    }

    private static String why(int row, int column, String cell, Optional<Student> student, Optional<RoundPlace> place) {
        String reason = student.isEmpty()
                ? WORDS.say("block-no-student")
                : place.isEmpty() ? WORDS.say("block-no-round") : WORDS.say("block-no-count");
        return WORDS.say("block-misfit", row, column + 1, cell, reason);
    }

    private static Optional<NewCount> count(CountCell cell, Student student, RoundPlace place, OptionalInt expected) {
        return switch (cell.kind()) {
            case COUNTED -> counted(cell.count(), student, place);
            case AS_PATTERN -> counted(expected, student, place);
            case UNFINISHED ->
                Optional.of(NewCount.unfinished(student.id(), place.part(), place.round(), cell.count()));
            case PULLED_BACK ->
                Optional.of(NewCount.pulledBackTo(student.id(), place.part(), Math.max(0, place.round() - 1)));
            case NOTHING, UNREADABLE -> Optional.empty();
        };
    }

    private static Optional<NewCount> counted(OptionalInt count, Student student, RoundPlace place) {
        return count.isPresent() && count.getAsInt() >= 0 && count.getAsInt() <= LARGEST
                ? Optional.of(new NewCount(
                        student.id(),
                        place.part(),
                        place.round(),
                        CountReport.Kind.COUNTED,
                        count,
                        Optional.empty(),
                        ""))
                : Optional.empty();
    }
}
