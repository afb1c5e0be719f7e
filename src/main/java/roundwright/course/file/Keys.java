package roundwright.course.file;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import roundwright.notation.Severity;
import roundwright.technique.DidYouMean;

/**
 * The keys of one kind of section.
 *
 * @param once keys that say one thing
 * @param often keys that may come more than once
 */
record Keys(List<String> once, List<String> often) {
    static final Keys COURSE = new Keys(
            List.of("terms", "hook", "yarn", "tension", "gauge", "session", "pace"),
            List.of("notions", "bring", "caution", "note"));
    static final Keys LESSON = new Keys(
            List.of("rounds", "minutes", "locked"), List.of("new", "bring", "recap", "homework", "caution", "note"));
    static final Keys TECHNIQUE = new Keys(List.of("minutes", "right", "wrong"), List.of("needs", "written", "how"));

    private Collection<String> all() {
        Set<String> all = new LinkedHashSet<>(once);
        all.addAll(often);
        return all;
    }

    /** Every key, in the order in which the items of a section are written. */
    List<String> inOrder() {
        return List.copyOf(all());
    }

    /** Reports keys that are not known, that come twice, and that say nothing. */
    void check(Section section, Problems problems) {
        Set<String> seen = new HashSet<>();
        for (Setting setting : section.settings()) {
            if (!all().contains(setting.key())) {
                Optional<String> near = DidYouMean.of(setting.key(), all());
                problems.mendable(
                        Severity.REMARK,
                        near.isPresent() ? "unknown-key-near" : "unknown-key",
                        setting.keySpan(),
                        near,
                        setting.key(),
                        near.orElse(String.join(", ", all())));
            } else if (once.contains(setting.key()) && !seen.add(setting.key())) {
                problems.warning("repeated-key", setting.entry().span(), setting.key());
            } else if (setting.value().isBlank() && !holdsList(section, setting)) {
                problems.warning("empty-value", setting.entry().span(), setting.key());
            }
        }
    }

    private static boolean holdsList(Section section, Setting setting) {
        return !Values.of(section, setting).isEmpty();
    }
}
