package roundwright.course.file;

import java.util.Comparator;
import java.util.List;
import roundwright.notation.Span;

/**
 * Puts other words in the place of a stretch of text; a stretch of no length is a place to insert at.
 *
 * @param at the stretch, in the text before any edit
 */
record TextEdit(Span at, String words) {
    static TextEdit insert(int at, String words) {
        return new TextEdit(new Span(at, at), words);
    }

    /** All edits made at once; they must not overlap. Insertions at one place are made in their order. */
    static String apply(String text, List<TextEdit> edits) {
        StringBuilder edited = new StringBuilder();
        int from = 0;
        for (TextEdit edit : edits.stream()
                .sorted(Comparator.comparingInt(edit -> edit.at().start()))
                .toList()) {
            if (edit.at().start() < from) {
                throw new IllegalArgumentException("edits overlap at " + edit.at());
            }
            edited.append(text, from, edit.at().start()).append(edit.words());
            from = edit.at().end();
        }
        return edited.append(text, from, text.length()).toString();
    }
}
