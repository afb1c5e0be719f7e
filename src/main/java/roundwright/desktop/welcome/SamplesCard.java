package roundwright.desktop.welcome;

import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.desk.Desk;
import roundwright.wording.Wording;

/** Offers the sample courses beside those that are in the file. */
public final class SamplesCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");

    public SamplesCard(Desk desk, Asking asking) {
        super(WORDS.say("welcome-samples"), 860);
        say(WORDS.say("welcome-samples-more"));
        body().below(2, new SampleTiles(desk, asking::close));
        other(WORDS.say("cancel"), asking::close);
    }
}
