package roundwright.desktop.safety;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.look.Prose;
import roundwright.store.Backup;
import roundwright.wording.Wording;

/** Asks what shall be done about a damaged file: go on with a backup, save what can be read, or leave it. */
public final class DamageCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double WIDTH = 600;

    /**
     * @param sentence what is wrong with the file
     * @param backup the newest backup that is whole
     * @param restore goes on with that backup
     * @param rescue saves what can be read
     * @param leave leaves the file as it is, and closes the window
     */
    public DamageCard(
            String sentence, Optional<Backup> backup, Consumer<Backup> restore, Runnable rescue, Runnable leave) {
        super(WORDS.say("damage-head"), WIDTH);
        body().below(0, Prose.body(sentence));
        body().below(1.5, Prose.body(WORDS.say("damage-ask")));
        backup.ifPresentOrElse(
                found -> {
                    answer(WORDS.say("damage-backup", day(found)), () -> restore.accept(found));
                    other(WORDS.say("damage-rescue"), rescue);
                },
                () -> {
                    say(WORDS.say("damage-no-backup"));
                    answer(WORDS.say("damage-rescue"), rescue);
                });
        other(WORDS.say("damage-leave"), leave);
    }

    private static String day(Backup backup) {
        return DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.UK)
                .withZone(ZoneId.systemDefault())
                .format(backup.when());
    }
}
