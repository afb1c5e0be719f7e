package roundwright.desktop.sheets;

import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.look.Bar;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Tone;
import roundwright.wording.Wording;

/** How far the making of sheets is, and a way to stop it. */
final class ProgressCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");

    private final Prose told = Prose.body(WORDS.say("sheets-begin"));
    private final Bar bar = new Bar(0, Tone.PINE);

    ProgressCard(Asking asking, Runnable stop) {
        super(WORDS.say("sheets-making"), 420);
        body().below(0, told);
        body().below(1, bar);
        answer(WORDS.say("sheets-stop"), () -> {
            stop.run();
            asking.close();
        });
    }

    void show(int done, int of) {
        told.setText(WORDS.say("sheets-done", done, of));
        bar.setShare(of == 0 ? 0 : done / (double) of);
        bar.getAccessibleContext().setAccessibleName(told.text());
    }
}
