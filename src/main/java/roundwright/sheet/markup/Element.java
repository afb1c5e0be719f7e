package roundwright.sheet.markup;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An element of a document while it is put together: {@code Element.of("p", "Count ", Element.of("b", "18"))}.
 *
 * <p>What is put in may be a text, an element, an {@link Optional} or an {@link Iterable} of them.
 */
public final class Element implements Node {
    private final String name;
    private final Map<String, String> attributes = new LinkedHashMap<>();
    private final List<Node> children = new ArrayList<>();

    private Element(String name) {
        this.name = name;
    }

    public static Element of(String name, Object... content) {
        return new Element(name).add(content);
    }

    /** An element of a class of the style sheet. */
    public static Element styled(String name, String style, Object... content) {
        return of(name, content).with("class", style);
    }

    public Element with(String attribute, String value) {
        attributes.put(attribute, Text.printable(value));
        return this;
    }

    public Element add(Object... content) {
        for (Object piece : content) {
            if (piece instanceof Node node) {
                children.add(node);
            } else if (piece instanceof Optional<?> optional) {
                optional.ifPresent(this::add);
            } else if (piece instanceof Iterable<?> pieces) {
                pieces.forEach(this::add);
            } else {
                children.add(new Text(String.valueOf(piece)));
            }
        }
        return this;
    }

    public String name() {
        return name;
    }

    /** In the order in which they were given. */
    public Map<String, String> attributes() {
        return Collections.unmodifiableMap(attributes);
    }

    public List<Node> children() {
        return Collections.unmodifiableList(children);
    }

    public boolean isEmpty() {
        return children.isEmpty();
    }
}
