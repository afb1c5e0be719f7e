package roundwright.desktop.safety;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComboBox;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.look.Buttons;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Wrap;
import roundwright.desktop.work.Asked;
import roundwright.store.Backup;
import roundwright.wording.Dates;
import roundwright.wording.Wording;

/** The dated copies of the file: where they are, what going back to one would change, and going back. */
final class BackupsCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient Desk desk;
    private final transient Asking asking;
    private final transient List<Path> paths = new ArrayList<>();
    private final JComboBox<String> choice = new JComboBox<>();
    private final Prose change = Prose.body("");
    private final JButton back;

    /**
     * @param otherFile asks for a file to go back to
     * @param target asks where to write a file of a suggested name
     */
    BackupsCard(Desk desk, Asking asking, Supplier<Optional<Path>> otherFile, Function<String, Optional<Path>> target) {
        super(WORDS.say("backups-head"), 560);
        this.desk = desk;
        this.asking = asking;
        say(WORDS.say("backups-where", desk.workbook().backupFolder()));
        row(WORDS.say("backups-choose"), choice, "");
        body().below(1.5, change);
        Wrap deeds = body().below(1.5, new Wrap(1));
        back = Buttons.quiet(WORDS.say("backups-go-back"), this::goBack);
        deeds.add(back);
        deeds.add(Buttons.quiet(
                WORDS.say("backups-other-file"), () -> otherFile.get().ifPresent(this::add)));
        deeds.add(Buttons.quiet(WORDS.say("backups-make"), this::make));
        deeds.add(Buttons.quiet(
                WORDS.say("backups-copy"),
                () -> target.apply(WORDS.say("backups-copy-name")).ifPresent(this::copy)));
        answer(WORDS.say("close"), asking::close);
        back.setEnabled(false);
        choice.addActionListener(event -> compare());
        fillList();
    }

    private void fillList() {
        desk.work()
                .submit(new Asked<>(
                        () -> desk.workbook().backups(),
                        backups -> {
                            paths.clear();
                            choice.removeAllItems();
                            for (Backup backup : backups) {
                                paths.add(backup.file());
                                choice.addItem(words(backup));
                            }
                            if (backups.isEmpty()) {
                                change.setText(WORDS.say("backups-none"));
                            }
                        },
                        this::refused));
    }

    private static String words(Backup backup) {
        return Dates.as("EEEE d MMMM uuuu, HH:mm")
                .withZone(ZoneId.systemDefault())
                .format(backup.when());
    }

    /** A file from elsewhere, as from a stick. */
    private void add(Path path) {
        paths.add(0, path);
        choice.insertItemAt(String.valueOf(path.getFileName()), 0);
        choice.setSelectedIndex(0);
    }

    private Optional<Path> chosen() {
        int index = choice.getSelectedIndex();
        return index >= 0 && index < paths.size() ? Optional.of(paths.get(index)) : Optional.empty();
    }

    private void compare() {
        back.setEnabled(false);
        chosen().ifPresent(path -> {
            say(List.of(WORDS.say("backups-comparing")));
            desk.work()
                    .submit(new Asked<>(
                            () -> desk.workbook().compareWith(path),
                            difference -> {
                                if (chosen().equals(Optional.of(path))) {
                                    say(difference.sentences());
                                    back.setEnabled(!difference.nothing());
                                }
                            },
                            this::refused));
        });
    }

    private void say(List<String> sentences) {
        change.setText(String.join("\n", sentences));
        revalidate();
        if (getParent() != null) {
            getParent().revalidate();
        }
    }

    private void make() {
        desk.work()
                .submit(new Asked<>(
                        () -> desk.workbook().backUp(),
                        made -> {
                            say(List.of(WORDS.say("backups-made", made.file().getFileName())));
                            fillList();
                        },
                        this::refused));
    }

    /** A copy for a stick: whole, with all names. */
    private void copy(Path path) {
        desk.work()
                .submit(new Asked<>(
                        () -> {
                            desk.workbook().copyTo(path);
                            return path;
                        },
                        written -> say(List.of(WORDS.say("backups-copied", written))),
                        this::refused));
    }

    private void goBack() {
        chosen().ifPresent(path -> {
            asking.close();
            desk.work()
                    .submit(new Asked<>(
                            () -> desk.workbook().restore(path),
                            kept -> desk.tell(
                                    WORDS.say("backups-gone-back", kept.file().getFileName())),
                            failure -> desk.tell(String.valueOf(failure.getMessage()))));
        });
    }

    private void refused(Exception failure) {
        say(List.of(String.valueOf(failure.getMessage())));
    }
}
