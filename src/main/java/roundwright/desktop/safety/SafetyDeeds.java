package roundwright.desktop.safety;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.work.Asked;
import roundwright.group.Student;
import roundwright.wording.Wording;
import roundwright.workbook.HeldAbout;
import roundwright.workbook.WholeFile;

/** Backups, what is held about a student, erasing them, and a copy with initials: what each deed does in this window. */
public final class SafetyDeeds {
    private static final Wording WORDS = Wording.of("desktop");

    private final Desk desk;
    private final Asking asking;
    private final Function<String, Optional<Path>> chooseTarget;

    private SafetyDeeds(Desk desk, Asking asking, Function<String, Optional<Path>> chooseTarget) {
        this.desk = desk;
        this.asking = asking;
        this.chooseTarget = chooseTarget;
    }

    /**
     * Says what the deeds do.
     *
     * @param chooseDataFile asks for a file to go back to
     * @param chooseTarget asks where to write a file of a suggested name
     */
    public static void bind(
            Desk desk,
            Deeds deeds,
            Asking asking,
            Supplier<Optional<Path>> chooseDataFile,
            Function<String, Optional<Path>> chooseTarget) {
        SafetyDeeds does = new SafetyDeeds(desk, asking, chooseTarget);
        deeds.on(Deed.BACKUPS, () -> asking.ask(new BackupsCard(desk, asking, chooseDataFile, chooseTarget)));
        deeds.on(Deed.SHARE_COPY, does::shareCopy);
        deeds.on(Deed.EXPORT_STUDENT, () -> desk.student().ifPresent(does::export));
        deeds.on(Deed.ERASE_STUDENT, () -> desk.student().ifPresent(does::askToErase));
        desk.listen(matters -> enable(desk, deeds));
        enable(desk, deeds);
    }

    private static void enable(Desk desk, Deeds deeds) {
        boolean student = desk.course().isPresent() && desk.student().isPresent();
        deeds.enable(Deed.EXPORT_STUDENT, student);
        deeds.enable(Deed.ERASE_STUDENT, student);
        deeds.enable(Deed.SHARE_COPY, student);
    }

    private void askToErase(Student student) {
        asking.ask(new EraseCard(desk, asking, student));
    }

    /** The text where the person says, and the same as JSON beside it. */
    private void export(Student student) {
        HeldAbout held = HeldAbout.of(desk.view(), student.id(), desk.today());
        chooseTarget
                .apply(held.fileName() + ".txt")
                .ifPresent(path -> desk.work()
                        .submit(new Asked<>(
                                () -> write(held, path),
                                json -> desk.tell(WORDS.say("export-written", path, json.getFileName())),
                                failure -> desk.tell(WORDS.say("cannot-write-file", path)))));
    }

    private static Path write(HeldAbout held, Path path) throws IOException {
        Path json = path.resolveSibling(path.getFileName().toString().replaceFirst("\\.txt$", "") + ".json");
        WholeFile.write(path, held.text());
        WholeFile.write(json, held.json());
        return json;
    }

    private void shareCopy() {
        chooseTarget.apply(WORDS.say("share-name")).ifPresent(path -> {
            if (Files.exists(path)) {
                desk.tell(WORDS.say("share-exists", path));
            } else {
                desk.work()
                        .submit(new Asked<>(
                                () -> {
                                    desk.workbook().copyWithInitials(path);
                                    return path;
                                },
                                written -> desk.tell(WORDS.say("share-written", written)),
                                failure -> desk.tell(String.valueOf(failure.getMessage()))));
            }
        });
    }
}
