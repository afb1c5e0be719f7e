package roundwright.sheet.content;

import java.util.List;
import roundwright.sheet.markup.Element;

/** Small things of which sheets are made. */
final class Boxes {
    private Boxes() {}

    /** A square to tick. */
    static Element tick() {
        return Element.styled("span", "tick", " ");
    }

    /** A box to write a number into. */
    static Element count() {
        return Element.styled("span", "count", " ");
    }

    /** So many lines to write on. */
    static Element lines(int lines) {
        Element notes = Element.styled("div", "lines");
        for (int i = 0; i < lines; i++) {
            notes.add(Element.styled("div", "line", " "));
        }
        return notes;
    }

    /** A list with a dot for each thing; nothing where there are none. */
    static Object list(List<String> things) {
        Element list = Element.of("ul");
        things.forEach(thing -> list.add(Element.of("li", thing)));
        return list.isEmpty() ? List.of() : list;
    }

    static Element headRow(String... names) {
        Element row = Element.of("tr");
        for (String name : names) {
            row.add(Element.of("th", name).with("scope", "col"));
        }
        return Element.of("thead", row);
    }

    static Element rowHead(Object... content) {
        return Element.of("th", content).with("scope", "row");
    }

    static Element cell(String style, Object... content) {
        return Element.styled("td", style, content);
    }
}
