package roundwright.sheet.content;

import java.util.ArrayList;
import java.util.List;
import roundwright.sheet.markup.Element;
import roundwright.sheet.markup.Node;
import roundwright.sheet.markup.Text;
import roundwright.sheet.style.SheetStyle;
import roundwright.wording.Wording;

/** Puts a sheet together: head, style, and bookmarks made of its headings. */
final class Document {
    private static final Wording WORDS = Wording.of("sheet");

    private final SheetStyle style;
    private final String title;
    private final Element body = Element.of("body");
    private final List<Element> sections = new ArrayList<>();
    private boolean landscape;
    private String kind = "";

    /**
     * @param over what stands small above the title
     * @param title the sheet's heading
     * @param file what a reader's window calls the document
     */
    Document(SheetStyle style, String over, String title, String file) {
        this.style = style;
        this.title = file;
        body.add(Element.styled("p", "over", over), Element.of("h1", title));
    }

    Document landscape() {
        landscape = true;
        return this;
    }

    /** A class of the style sheet for the whole of it. */
    Document kind(String name) {
        kind = " " + name;
        return this;
    }

    Document add(Object... content) {
        body.add(content);
        return this;
    }

    /** A section with a heading; left out where there is nothing in it. */
    Document section(String heading, Object... content) {
        Element inner = Element.of("div", content).with("class", "content");
        if (!inner.isEmpty()) {
            Element head = Element.of("h2", heading).with("id", "section-" + (sections.size() + 1));
            sections.add(head);
            boolean charts = holds(inner, "charts");
            String kept = charts ? "section with-charts" : holds(inner, "part") ? "section worked-rounds" : "section";
            body.add(Element.styled("div", kept, SectionStart.of(head, inner)));
        }
        return this;
    }

    private static boolean holds(Element inner, String name) {
        return inner.children().stream()
                .anyMatch(node -> node instanceof Element element
                        && name.equals(element.attributes().get("class")));
    }

    Element html() {
        Element head = Element.of(
                "head",
                Element.of("title", title),
                Element.of("meta").with("name", "description").with("content", title),
                Element.of("meta").with("name", "author").with("content", WORDS.say("author")),
                bookmarks(),
                Element.of("style", style.css(landscape)));
        body.with("class", style.type().style() + kind + (style.leftHanded() ? " left" : ""));
        Element html = Element.of("html", head, body).with("lang", WORDS.say("language"));
        style.type().ground().ifPresent(color -> html.with("data-ground", color));
        return html;
    }

    private Element bookmarks() {
        Element bookmarks = Element.of("bookmarks");
        for (Element section : sections) {
            Node words = section.children().get(0);
            bookmarks.add(Element.of("bookmark")
                    .with("name", words instanceof Text text ? text.words() : "")
                    .with("href", "#" + section.attributes().get("id")));
        }
        return bookmarks;
    }
}
