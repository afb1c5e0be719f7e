package roundwright.sheet.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import roundwright.sheet.markup.Element;
import roundwright.sheet.markup.Node;

/** Keeps a heading on the page of what it heads: the paragraph that leads in, and the first round or chart below it. */
final class SectionStart {
    private static final String CLASS = "class";
    private static final String LEAD = "lead";

    /** A first round in a block, or a chart: whole on one page themselves. */
    private static final Set<String> WHOLE = Set.of("first", "chart");

    private SectionStart() {}

    /** The heading and what follows it, in elements of which the first does not break over pages. */
    static List<Element> of(Element heading, Element content) {
        List<Node> rest = new ArrayList<>(content.children());
        Element start = Element.styled("div", "start", heading);
        while (!rest.isEmpty() && named(rest.get(0)).equals(LEAD)) {
            start.add(rest.remove(0));
        }
        if (!rest.isEmpty() && rest.get(0) instanceof Element holder && holdsWhole(holder)) {
            List<Node> held = holder.children();
            start.add(like(holder, held.subList(0, 1)));
            rest.set(0, like(holder, held.subList(1, held.size())));
            return List.of(start, like(content, rest));
        }
        return List.of(heading, content);
    }

    private static boolean holdsWhole(Element holder) {
        return !holder.isEmpty() && WHOLE.contains(named(holder.children().get(0)));
    }

    private static Element like(Element holder, List<Node> children) {
        return Element.styled(holder.name(), named(holder), children);
    }

    private static String named(Node node) {
        return node instanceof Element element ? element.attributes().getOrDefault(CLASS, "") : "";
    }
}
