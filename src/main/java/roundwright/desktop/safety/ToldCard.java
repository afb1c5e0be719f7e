package roundwright.desktop.safety;

import java.util.List;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.look.Prose;

/** Tells what was done, or why something could not be done, where there is no page yet to tell it on. */
public final class ToldCard extends AskCard {
    private static final double WIDTH = 560;

    /**
     * @param heading what happened
     * @param sentences the rest, a paragraph each
     * @param words what the button says
     * @param then what comes when it has been read
     */
    public ToldCard(String heading, List<String> sentences, String words, Runnable then) {
        super(heading, WIDTH);
        sentences.forEach(sentence -> body().below(1, Prose.body(sentence)));
        answer(words, then);
    }
}
