package roundwright.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import roundwright.course.file.CourseDocument;
import roundwright.course.file.Section;
import roundwright.group.CountReport;
import roundwright.group.Note;
import roundwright.store.FiledReport;

/** Parts that a changed course calls otherwise. Reports and notes name their part, so they follow. */
final class RenamedParts {
    private RenamedParts() {}

    /**
     * The old names of parts and their new ones. A part counts as renamed where as many parts stand in the same places, and neither
     * text has the other's name.
     */
    static Map<String, String> between(String before, String after) {
        List<String> old = parts(before);
        List<String> now = parts(after);
        Map<String, String> renamed = new LinkedHashMap<>();
        if (old.size() == now.size()) {
            Set<String> kept = Set.copyOf(now);
            Set<String> known = Set.copyOf(old);
            for (int place = 0; place < old.size(); place++) {
                if (!kept.contains(old.get(place)) && !known.contains(now.get(place))) {
                    renamed.put(old.get(place), now.get(place));
                }
            }
        }
        return renamed;
    }

    private static List<String> parts(String text) {
        return CourseDocument.of(text).of(Section.Kind.PART).stream()
                .map(section -> section.title().text())
                .toList();
    }

    static List<Write<?>> writes(GroupView group, Map<String, String> renamed) {
        List<Write<?>> writes = new ArrayList<>();
        for (CountReport report : group.reports()) {
            if (renamed.containsKey(report.part())) {
                writes.add(Write.replace(
                        Kind.REPORT,
                        new FiledReport(group.id(), report),
                        new FiledReport(group.id(), report.ofPart(renamed.get(report.part())))));
            }
        }
        for (Note note : group.notes()) {
            if (renamed.containsKey(note.part())) {
                writes.add(Write.delete(Kind.NOTE, note));
                writes.add(Write.insert(
                        Kind.NOTE,
                        new Note(note.group(), note.student(), renamed.get(note.part()), note.round(), note.text())));
            }
        }
        return writes;
    }
}
