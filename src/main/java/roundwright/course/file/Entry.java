package roundwright.course.file;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.notation.Span;

/**
 * One list item of a section, or one line of a paragraph in it.
 *
 * @param written what it says, without the bullet
 * @param span where it stands in the file, with the bullet
 * @param item whether it is a list item
 * @param depth how many lists it stands in; 0 for a line of a paragraph of the section itself
 * @param block counts the paragraphs and items of the section from 0; lines of one paragraph share it
 */
public record Entry(Written written, Span span, boolean item, int depth, int block) {
    private static final Pattern SETTING =
            Pattern.compile("^[*_`]*([\\p{L}][\\p{L} -]{0,30}?)[*_`]*\\s*[:：][*_`]*(?:\\s|$)");

    /** The {@code key: value} of an item, where it has that form. Keys are compared in lower case. */
    public Optional<Setting> setting() {
        Matcher matcher = SETTING.matcher(written.text());
        if (!item || !matcher.find()) {
            return Optional.empty();
        }
        Written key = written.part(matcher.start(1), matcher.end(1));
        Written value = written.part(matcher.end(), written.text().length());
        return Optional.of(new Setting(key.text().toLowerCase(Locale.ROOT), key.span(), value, this));
    }
}
