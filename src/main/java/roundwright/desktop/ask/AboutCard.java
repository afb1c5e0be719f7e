package roundwright.desktop.ask;

import java.nio.file.Path;
import javax.swing.JTextField;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Text;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.wording.Wording;

/** Which version this is, what it brought, and where everything is kept. */
public final class AboutCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");

    /**
     * Where the program keeps what it keeps.
     *
     * @param file the teacher's file
     * @param backups the folder of its copies
     * @param settings the folder of how the window looks
     */
    public record Kept(Path file, Path backups, Path settings) {}

    public AboutCard(Asking asking, Kept kept) {
        super(WORDS.say("about-head", Versions.newest()), 560);
        body().below(0, Prose.body(WORDS.say("about-job")));
        place(WORDS.say("about-file"), kept.file());
        place(WORDS.say("about-backups"), kept.backups());
        place(WORDS.say("about-settings"), kept.settings());
        body().below(1, Prose.muted(WORDS.say("about-moving")));
        for (String version : Versions.all()) {
            body().below(2, Prose.of(WORDS.say("about-changes", version), Type.SMALL_STRONG, Tone.INK));
            Versions.changes(version).forEach(change -> body().below(0.5, Prose.body("• " + change)));
        }
        answer(WORDS.say("close"), asking::close);
    }

    /** A path can be marked and copied. */
    private void place(String name, Path path) {
        Text label = new Text(name, Type.SMALL_STRONG, Tone.INK);
        JTextField field = new JTextField(path.toAbsolutePath().toString());
        field.setEditable(false);
        field.setCaretPosition(0);
        field.getAccessibleContext().setAccessibleName(name);
        field.getAccessibleContext().setAccessibleDescription(WORDS.say("about-path"));
        body().below(1.5, label);
        body().below(0.5, field);
    }
}
