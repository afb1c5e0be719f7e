package roundwright.pattern;

import java.util.List;

/** A part as written: its name and its lines, not read yet. */
public record PartText(String name, List<SourceLine> lines) {
    public PartText {
        lines = List.copyOf(lines);
    }
}
