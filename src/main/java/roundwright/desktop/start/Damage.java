package roundwright.desktop.start;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import roundwright.store.Backup;
import roundwright.store.StoreException;
import roundwright.wording.Wording;
import roundwright.workbook.Mending;

/** What the person can choose when their file is damaged: go on with a backup, save what can be read, or leave it. */
final class Damage {
    private static final Wording WORDS = Wording.of("desktop");

    private final JFrame frame;
    private final Path file;
    private final Clock clock;

    Damage(JFrame frame, Path file, Clock clock) {
        this.frame = frame;
        this.file = file;
        this.clock = clock;
    }

    /** Asks, and does what was chosen; whether the file can be opened again. */
    boolean mended(String sentence, Path backups) {
        try {
            Optional<Backup> backup = Mending.newestGood(file, backups);
            List<String> choices = new ArrayList<>();
            backup.ifPresent(found -> choices.add(WORDS.say("damage-backup", day(found))));
            choices.add(WORDS.say("damage-rescue"));
            choices.add(WORDS.say("damage-leave"));
            int chosen = ask(sentence, choices);
            boolean withBackup = backup.isPresent() && chosen == 0;
            if (!withBackup && chosen != choices.size() - 2) {
                return false;
            }
            tell(
                    withBackup
                            ? Mending.fromBackup(file, backup.get().file(), clock.instant())
                            : Mending.rescue(file, clock.instant()));
            return true;
        } catch (StoreException failure) {
            say(String.valueOf(failure.getMessage()));
            return false;
        }
    }

    private int ask(String sentence, List<String> choices) {
        return JOptionPane.showOptionDialog(
                frame,
                lines(sentence + "\n\n" + WORDS.say("damage-ask")),
                WORDS.say("window-title"),
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.WARNING_MESSAGE,
                null,
                choices.toArray(),
                choices.get(0));
    }

    private void tell(Mending.Mended mended) {
        List<String> said = new ArrayList<>(mended.told());
        said.add(WORDS.say("damage-kept", mended.damaged()));
        say(String.join("\n", said));
    }

    private void say(String text) {
        JOptionPane.showMessageDialog(frame, lines(text), WORDS.say("window-title"), JOptionPane.INFORMATION_MESSAGE);
    }

    /** A dialog breaks no lines by itself. */
    private static Object lines(String text) {
        javax.swing.JTextArea area = new javax.swing.JTextArea(text, 0, 60);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setEditable(false);
        area.setOpaque(false);
        area.getAccessibleContext().setAccessibleName(text);
        area.setSize(area.getPreferredSize().width, Short.MAX_VALUE);
        return area;
    }

    private static String day(Backup backup) {
        return DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.UK)
                .withZone(ZoneId.systemDefault())
                .format(backup.when());
    }
}
