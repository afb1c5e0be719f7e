package roundwright.desktop.sheets;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import roundwright.desktop.desk.Desk;
import roundwright.sheet.Sheet;
import roundwright.sheet.SheetKind;
import roundwright.wording.Wording;

/** The chosen student's own page, to print or to send. */
public final class StudentSheets {
    private static final Wording WORDS = Wording.of("desktop");

    private final Desk desk;
    private final SheetMaker maker;
    private final Function<String, Optional<Path>> chooseTarget;

    public StudentSheets(Desk desk, SheetMaker maker, Function<String, Optional<Path>> chooseTarget) {
        this.desk = desk;
        this.maker = maker;
        this.chooseTarget = chooseTarget;
    }

    /** As a document to print. */
    public void savePage() {
        save(SheetKind.PROGRESS);
    }

    /** As one file for a browser or a phone. */
    public void saveWebPage() {
        save(SheetKind.PHONE);
    }

    private void save(SheetKind kind) {
        Optional<Sheet> sheet = maker.ofStudent(kind);
        if (sheet.isEmpty()) {
            desk.tell(WORDS.say("sheet-cannot"));
            return;
        }
        String name = String.valueOf(Path.of(sheet.get().file()).getFileName());
        chooseTarget.apply(name).ifPresent(path -> maker.write(sheet.get(), path));
    }
}
