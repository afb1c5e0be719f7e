package roundwright.workbook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A step that can be undone or redone.
 *
 * @param name of the edit, for people
 * @param writes what it wrote, in order
 */
record Step(String name, List<Write<?>> writes) {
    Step {
        writes = List.copyOf(writes);
    }

    /** What takes it back: every write turned round, the last first. */
    List<Write<?>> backwards() {
        List<Write<?>> inverses = new ArrayList<>();
        writes.forEach(write -> inverses.add(write.inverse()));
        Collections.reverse(inverses);
        return inverses;
    }
}
