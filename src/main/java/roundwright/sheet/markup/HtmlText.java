package roundwright.sheet.markup;

import java.util.Set;

/** Writes elements as HTML. Every text and every attribute is escaped; only style sheets and scripts of the program's own stand as they are. */
public final class HtmlText {
    private static final Set<String> EMPTY = Set.of("meta", "link", "br", "hr", "img", "input");
    private static final Set<String> OWN_CODE = Set.of("script", "style");

    private final StringBuilder out = new StringBuilder();

    private HtmlText() {}

    /** A whole document. */
    public static String document(Element html) {
        HtmlText text = new HtmlText();
        text.out.append("<!DOCTYPE html>\n");
        text.write(html);
        return text.out.append('\n').toString();
    }

    public static String of(Element element) {
        HtmlText text = new HtmlText();
        text.write(element);
        return text.out.toString();
    }

    private void write(Element element) {
        out.append('<').append(element.name());
        element.attributes()
                .forEach((name, value) -> out.append(' ')
                        .append(name)
                        .append("=\"")
                        .append(escape(value))
                        .append('"'));
        out.append('>');
        if (EMPTY.contains(element.name())) {
            return;
        }
        for (Node child : element.children()) {
            if (child instanceof Element inner) {
                write(inner);
            } else if (child instanceof Text words) {
                out.append(OWN_CODE.contains(element.name()) ? own(words.words()) : escape(words.words()));
            } else if (child instanceof Picture picture) {
                write(SvgPicture.of(picture));
            }
        }
        out.append("</").append(element.name()).append('>');
    }

    private static String own(String code) {
        if (code.contains("</")) {
            throw new IllegalArgumentException("a style sheet or script that ends itself");
        }
        return code;
    }

    /** Text that a reader of HTML gives back as it was. */
    public static String escape(String words) {
        StringBuilder escaped = new StringBuilder(words.length() + 16);
        for (int i = 0; i < words.length(); i++) {
            char character = words.charAt(i);
            switch (character) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                default -> escaped.append(character);
            }
        }
        return escaped.toString();
    }
}
