package roundwright.sheet.style;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/**
 * How a sheet looks.
 *
 * @param leftHanded charts mirrored, and words said to the other hand
 */
public record SheetStyle(Paper paper, TypeSetting type, boolean leftHanded) {
    public static final SheetStyle PLAIN = new SheetStyle(Paper.A4, TypeSetting.PLAIN, false);

    public SheetStyle typed(TypeSetting other) {
        return new SheetStyle(paper, other, leftHanded);
    }

    public SheetStyle handed(boolean left) {
        return new SheetStyle(paper, type, left);
    }

    public boolean large() {
        return type == TypeSetting.LARGE;
    }

    /** Whether rounds stand under one another instead of in a table, whose columns are narrow. */
    public boolean inBlocks() {
        return type != TypeSetting.PLAIN;
    }

    /** What it adds to a file's name: {@code -large-left-handed}. */
    public String suffix() {
        return type.suffix() + (leftHanded ? "-left-handed" : "");
    }

    /** The style sheet of a printed sheet. */
    public String css(boolean landscape) {
        String page = "@page { size: " + paper.word() + (landscape ? " landscape" : "") + " }\n";
        String more = type == TypeSetting.PLAIN ? "" : read(type.style());
        return read("sheet") + page + more;
    }

    /** A style sheet of the program's own, by its name. */
    public static String read(String name) {
        String path = "/roundwright/sheet/" + name + ".css";
        try (InputStream stream = SheetStyle.class.getResourceAsStream(path)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new IllegalStateException("cannot read " + path, failure);
        }
    }
}
