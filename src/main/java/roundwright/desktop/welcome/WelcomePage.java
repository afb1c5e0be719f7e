package roundwright.desktop.welcome;

import javax.swing.JComponent;
import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.look.FirstFocus;
import roundwright.desktop.look.PageCard;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.desktop.look.Wrap;
import roundwright.wording.Wording;

/** What is shown while there is no course: the ways to begin. */
public final class WelcomePage extends PageCard implements FirstFocus {
    private static final Wording WORDS = Wording.of("desktop");

    private final SampleTiles tiles;

    public WelcomePage(Desk desk, Deeds deeds) {
        this(desk, deeds, new Stack());
    }

    private WelcomePage(Desk desk, Deeds deeds, Stack body) {
        super(body);
        tiles = new SampleTiles(desk, () -> {});
        setBorder(Space.pad(4, 5, 4, 5));
        body.below(0, Prose.of(WORDS.say("welcome-head"), Type.TITLE, Tone.INK));
        body.below(1.5, Prose.page(WORDS.say("welcome")));
        body.below(4, Prose.heading(WORDS.say("welcome-samples")));
        body.below(0.75, Prose.muted(WORDS.say("welcome-samples-more")));
        body.below(2, tiles);
        body.below(4, Prose.heading(WORDS.say("welcome-own")));
        body.below(0.75, Prose.muted(WORDS.say("welcome-own-more")));
        Wrap own = body.below(2, new Wrap(1));
        own.add(deeds.mainButton(Deed.PASTE_PATTERN));
        own.add(deeds.button(Deed.OPEN_COURSE));
        body.below(4, Prose.muted(WORDS.say("welcome-where", desk.workbook().file())));
    }

    @Override
    public JComponent first() {
        return tiles.first().orElse(this);
    }
}
