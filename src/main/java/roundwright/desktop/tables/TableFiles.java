package roundwright.desktop.tables;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.work.Task;
import roundwright.desktop.work.Work;
import roundwright.group.counts.NotATable;
import roundwright.group.counts.Table;
import roundwright.group.counts.TableFile;
import roundwright.wording.Wording;

/** Opens a file with counts: reads it away from the event thread, then lays the card over the page that shows what is in it. */
public final class TableFiles {
    private static final Wording WORDS = Wording.of("desktop");

    private final Desk desk;
    private final Asking asking;
    private final Work reading;

    public TableFiles(Desk desk, Asking asking, Work reading) {
        this.desk = desk;
        this.asking = asking;
        this.reading = reading;
    }

    /** Opens a file; where it is no table, says why. */
    public void open(Path path) {
        String name = String.valueOf(path.getFileName());
        desk.tell(WORDS.say("import-opening", name));
        reading.submit(new Task<List<Table>>() {
            @Override
            public List<Table> away() throws IOException, NotATable {
                try (InputStream stream = Files.newInputStream(path)) {
                    return TableFile.read(stream.readNBytes(TableFile.LARGEST + 1));
                }
            }

            @Override
            public void here(List<Table> tables) {
                desk.clearNotice();
                show(name, tables);
            }

            @Override
            public void failed(Exception failure) {
                desk.tell(
                        failure instanceof NotATable
                                ? WORDS.say("import-no-table", name, failure.getMessage())
                                : WORDS.say("import-cannot-read", name));
            }
        });
    }

    /** Shows tables that are read already, such as a block from the clipboard. */
    public void show(String name, List<Table> tables) {
        List<Table> filled =
                tables.stream().filter(table -> !table.rows().isEmpty()).toList();
        boolean ready = desk.course().isPresent() && desk.group().isPresent();
        if (filled.isEmpty()) {
            desk.tell(WORDS.say("import-empty", name));
        } else if (ready) {
            asking.ask(new ImportCard(desk, asking, reading, name, filled));
        }
    }
}
