package roundwright.desktop.desk;

import java.util.Set;

/** Is told on the event thread what has changed on the desk; the desk holds the news. */
public interface DeskListener {
    void changed(Set<Matter> matters);
}
