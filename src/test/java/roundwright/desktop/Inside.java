package roundwright.desktop;

import java.awt.Component;
import java.awt.Container;
import java.util.stream.Stream;
import javax.swing.AbstractButton;

/** Finds components inside others. */
public final class Inside {
    private Inside() {}

    /** Every component in a container, itself first, in the order in which they stand. */
    public static Stream<Component> all(Component component) {
        Stream<Component> own = Stream.of(component);
        return component instanceof Container container
                ? Stream.concat(own, Stream.of(container.getComponents()).flatMap(Inside::all))
                : own;
    }

    /** Presses the first button of a name. */
    static void press(Component component, String name) {
        all(component)
                .filter(AbstractButton.class::isInstance)
                .map(AbstractButton.class::cast)
                .filter(button -> name.equals(button.getText()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button " + name))
                .doClick();
    }

    /** The first of a kind. */
    public static <C extends Component> C first(Component component, Class<C> kind) {
        return all(component)
                .filter(kind::isInstance)
                .map(kind::cast)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + kind.getSimpleName()));
    }
}
