package roundwright.desktop.ask;

import java.util.List;
import roundwright.desktop.action.Deed;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.wording.Wording;

/** Every key of the window, in a list made from what the window can do. */
public final class KeysCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double KEY_WIDTH = 130;

    public KeysCard(Asking asking) {
        super(WORDS.say("keys-head"), 480);
        for (Deed deed : Deed.values()) {
            deed.keyWords().ifPresent(key -> line(key, deed.words()));
        }
        for (String place : List.of("strip", "counts", "chart")) {
            body().below(2, Prose.of(WORDS.say("keys-in." + place), Type.SMALL_STRONG, Tone.INK));
            body().below(0.5, Prose.body(WORDS.say("keys-of." + place)));
        }
        answer(WORDS.say("close"), asking::close);
    }

    private void line(String key, String words) {
        KeyLine line = new KeyLine(key, words, KEY_WIDTH);
        body().below(body().getComponentCount() == 0 ? 0 : 0.75, line);
    }
}
