package roundwright.desktop.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Stack;
import roundwright.group.counts.CellTrouble;
import roundwright.group.counts.Column;
import roundwright.wording.Wording;

/** What a file comes to: what would be filed, what is there already, what cannot be used and why. */
final class ImportSummary extends Stack {
    private static final Wording WORDS = Wording.of("desktop");
    private static final int TROUBLES_SHOWN = 20;

    void reading() {
        removeAll();
        below(0, Prose.muted(WORDS.say("import-reading")));
    }

    void show(ImportFound found) {
        removeAll();
        if (!found.match().usable()) {
            String missing = Wording.list(found.match().missing().stream()
                    .map(kind -> ColumnWords.of(Column.of(kind)))
                    .toList());
            below(0, Prose.body(WORDS.say("import-missing", missing)));
            return;
        }
        below(0, Prose.body(String.join(" ", sentences(found))));
        List<CellTrouble> troubles = found.result().troubles();
        if (!troubles.isEmpty()) {
            below(1.5, Prose.heading(WORDS.say("import-troubles", troubles.size())));
            troubles.stream().limit(TROUBLES_SHOWN).forEach(this::add);
            if (troubles.size() > TROUBLES_SHOWN) {
                below(0.75, Prose.muted(WORDS.say("import-more-troubles", troubles.size() - TROUBLES_SHOWN)));
            }
        }
    }

    private void add(CellTrouble trouble) {
        below(0.75, Prose.muted(WORDS.say("import-trouble", trouble.line(), trouble.column(), trouble.message())));
    }

    private static List<String> sentences(ImportFound found) {
        List<String> sentences = new ArrayList<>();
        sentences.add(WORDS.say("import-fresh", found.fresh().size()));
        if (found.corrections() > 0) {
            sentences.add(WORDS.say("import-corrections", found.corrections()));
        }
        if (!found.newcomers().isEmpty()) {
            sentences.add(WORDS.say(
                    "import-newcomers",
                    found.newcomers().size(),
                    found.newcomers().stream().limit(TROUBLES_SHOWN).collect(Collectors.joining(", "))));
        }
        if (found.already() > 0) {
            sentences.add(WORDS.say("import-already", found.already()));
        }
        if (found.leftOut() > 0) {
            sentences.add(WORDS.say("import-left-out", found.leftOut()));
        }
        int others = found.result().unknowns().ofOtherCourses().values().stream()
                .mapToInt(Integer::intValue)
                .sum();
        if (others > 0) {
            sentences.add(WORDS.say(
                    "import-other-courses",
                    others,
                    found.result().unknowns().ofOtherCourses().keySet().stream()
                            .limit(TROUBLES_SHOWN)
                            .collect(Collectors.joining(", "))));
        }
        return sentences;
    }
}
