package roundwright.desktop.planning;

import java.util.List;
import java.util.Locale;
import roundwright.course.preparation.PrepLine;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.wording.Wording;

/** What to get ready, by kind, as lines below each other. */
final class ReadyList {
    private static final Wording WORDS = Wording.of("desktop");

    private final Stack body;

    ReadyList(Stack body) {
        this.body = body;
    }

    void add(List<PrepLine> lines) {
        for (PrepLine.Kind kind : PrepLine.Kind.values()) {
            List<String> texts = lines.stream()
                    .filter(line -> line.kind() == kind)
                    .map(PrepLine::text)
                    .toList();
            if (!texts.isEmpty()) {
                String heading = WORDS.say("ready." + kind.name().toLowerCase(Locale.ROOT));
                body.below(2, Prose.of(heading, Type.SMALL_STRONG, Tone.INK));
                texts.forEach(text -> body.below(0.5, Prose.body("· " + text)));
            }
        }
    }
}
