package roundwright.course.file;

import java.util.List;

/**
 * Where a part stands in the file.
 *
 * @param name the part's name in the pattern
 * @param section its section
 * @param lines where each of its lines stands; as many as the part has lines, in their order
 */
public record PartPlace(String name, Section section, List<Written> lines) {
    public PartPlace {
        lines = List.copyOf(lines);
    }
}
