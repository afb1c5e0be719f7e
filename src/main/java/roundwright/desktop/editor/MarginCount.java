package roundwright.desktop.editor;

import java.util.ArrayList;
import java.util.List;
import roundwright.course.file.CourseFile;
import roundwright.course.file.PartPlace;
import roundwright.course.file.Places;
import roundwright.pattern.Line;
import roundwright.pattern.Part;
import roundwright.pattern.Verdict;

/**
 * The count of a line, beside it.
 *
 * @param line of the text, from 0
 * @param count stitches that the line makes, worked as it is written
 * @param wrong whether the line does not add up
 */
public record MarginCount(int line, int count, boolean wrong) {
    /** One for each line of the pattern whose count is known. */
    static List<MarginCount> of(CourseFile file) {
        List<MarginCount> counts = new ArrayList<>();
        Places places = Places.of(file.text());
        List<Part> parts = file.course().pattern().parts();
        for (int i = 0; i < Math.min(parts.size(), file.parts().size()); i++) {
            addPart(counts, places, parts.get(i), file.parts().get(i));
        }
        return counts;
    }

    private static void addPart(List<MarginCount> counts, Places places, Part part, PartPlace place) {
        for (int i = 0; i < Math.min(part.lines().size(), place.lines().size()); i++) {
            Line line = part.lines().get(i);
            int at = places.line(place.lines().get(i).span().start()) - 1;
            boolean wrong = line.verdict() == Verdict.DOES_NOT_ADD_UP || line.verdict() == Verdict.NOT_UNDERSTOOD;
            line.round().ifPresent(steps -> counts.add(new MarginCount(at, steps.makes(), wrong)));
        }
    }
}
