package roundwright.desktop.tables;

import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.look.Prose;
import roundwright.wording.Wording;

/** Shows which cells of a block do not fit the grid, before the others are filed. */
final class MisfitsCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");

    MisfitsCard(PastedBlock pasted, Asking asking, Runnable file) {
        super(WORDS.say("block-head"), 560);
        int counts = pasted.counts().size();
        say(WORDS.say("block-fits", counts));
        pasted.misfits().forEach(misfit -> body().below(0.75, Prose.body(misfit)));
        if (pasted.misfits().size() >= PastedBlock.MOST_MISFITS) {
            body().below(0.75, Prose.muted(WORDS.say("block-more")));
        }
        if (counts > 0) {
            answer(WORDS.say("import-answer", counts), () -> {
                asking.close();
                file.run();
            });
        }
        cancel(asking);
    }
}
