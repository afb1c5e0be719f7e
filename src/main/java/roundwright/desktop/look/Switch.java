package roundwright.desktop.look;

import java.util.List;
import java.util.function.IntConsumer;

/** A few words in one trough, of which one holds. Left and right go from one to the next. */
public final class Switch extends Trough {
    private static final double HEIGHT = 32;

    /**
     * @param told what the switch is for, for those who listen to the window
     * @param chosen is told of every place, from 0, that a person chooses
     */
    public Switch(String told, List<String> words, IntConsumer chosen) {
        super(HEIGHT, 0);
        getAccessibleContext().setAccessibleName(told);
        for (int place = 0; place < words.size(); place++) {
            int number = place;
            Pill pill = new Pill(words.get(place));
            pill.addActionListener(event -> chosen.accept(number));
            Keys.bind(pill, "LEFT", () -> step(number - 1));
            Keys.bind(pill, "RIGHT", () -> step(number + 1));
            add(pill);
        }
        show(0);
    }

    /** Shows a place as chosen without telling anyone. */
    public void show(int place) {
        pills().get(place).setSelected(true);
    }

    private void step(int place) {
        if (place >= 0 && place < pills().size()) {
            pills().get(place).requestFocusInWindow();
            pills().get(place).doClick(0);
        }
    }
}
