package roundwright.desktop.start;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javax.swing.JFrame;
import roundwright.desktop.safety.DamageCard;
import roundwright.desktop.safety.ToldCard;
import roundwright.desktop.work.Asked;
import roundwright.desktop.work.Work;
import roundwright.wording.Wording;
import roundwright.workbook.Mending;

/** A file that could not be opened: the person is told, and chooses what is done about a damaged one. */
final class Damage {
    private static final Wording WORDS = Wording.of("desktop");

    private final CardPage page;
    private final Work work = Work.queue();
    private final Path file;
    private final Clock clock;
    private final Runnable leave;

    /** @param leave what comes when the file is not opened */
    Damage(JFrame frame, Path file, Clock clock, Runnable leave) {
        this.page = new CardPage(frame, leave);
        this.file = file;
        this.clock = clock;
        this.leave = leave;
    }

    /** Tells why the file cannot be opened. */
    void tell(String sentence) {
        told(WORDS.say("cannot-open-head"), List.of(sentence), WORDS.say("close"), leave);
    }

    /**
     * Asks what shall be done about a damaged file, and does it.
     *
     * @param backups the folder of the file's backups
     * @param again opens the file again when it is mended
     */
    void mend(String sentence, Path backups, Runnable again) {
        submit(
                () -> Mending.newestGood(file, backups),
                backup -> page.ask(new DamageCard(
                        sentence,
                        backup,
                        found -> submit(
                                () -> Mending.fromBackup(file, found.file(), clock.instant()),
                                mended -> tell(mended, again)),
                        () -> submit(() -> Mending.rescue(file, clock.instant()), mended -> tell(mended, again)),
                        this::leave)));
    }

    private void leave() {
        page.close();
        leave.run();
    }

    private void tell(Mending.Mended mended, Runnable again) {
        List<String> sentences = new ArrayList<>(mended.told());
        sentences.add(WORDS.say("damage-kept", mended.damaged()));
        told(WORDS.say("damage-mended"), sentences, WORDS.say("damage-open"), again);
    }

    private void told(String heading, List<String> sentences, String answer, Runnable then) {
        page.ask(new ToldCard(heading, sentences, answer, () -> {
            page.close();
            work.close();
            then.run();
        }));
    }

    private <R> void submit(Callable<R> away, Consumer<R> here) {
        page.close();
        work.submit(new Asked<>(away, here, failure -> tell(String.valueOf(failure.getMessage()))));
    }
}
