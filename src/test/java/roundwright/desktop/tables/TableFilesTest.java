package roundwright.desktop.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.desktop.DeskOnFile;
import roundwright.desktop.OnEventThread;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.ask.Question;
import roundwright.desktop.look.Theme;
import roundwright.desktop.work.Work;

@ExtendWith(OnEventThread.class)
class TableFilesTest {
    @TempDir
    private Path folder;

    private final List<Question> asked = new ArrayList<>();

    private final Asking asking = new Asking() {
        @Override
        public void ask(Question card) {
            asked.add(card);
        }

        @Override
        public void close() {
            asked.clear();
        }
    };

    private record Bad(String name, byte[] bytes, String says) {
        @Override
        public String toString() {
            return name;
        }
    }

    static List<Bad> bad() {
        byte[] noise = new byte[20_000];
        new Random(9).nextBytes(noise);
        byte[] locked = noise.clone();
        System.arraycopy(new byte[] {(byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0}, 0, locked, 0, 4);
        byte[] zip = noise.clone();
        System.arraycopy(new byte[] {'P', 'K', 3, 4}, 0, zip, 0, 4);
        return List.of(
                new Bad("noise.csv", noise, "neither a text nor a spreadsheet"),
                new Bad("locked.xlsx", locked, "locked with a password"),
                new Bad("broken.xlsx", zip, "none that can be read"),
                new Bad("empty.csv", new byte[0], "There is nothing in empty.csv."),
                new Bad("blank.csv", ",,,\n,,\n".getBytes(StandardCharsets.UTF_8), "There is nothing in"));
    }

    @ParameterizedTest
    @MethodSource("bad")
    void aFileThatIsNoTableIsSaidInASentenceAndNothingIsFiled(Bad bad) throws IOException {
        Theme.LIGHT.install(1);
        try (DeskOnFile file = new DeskOnFile().course("harbour-light").group(3)) {
            int before = file.desk().group().orElseThrow().reports().size();
            Path path = Files.write(folder.resolve(bad.name()), bad.bytes());
            new TableFiles(file.desk(), asking, Work.atOnce()).open(path);
            String notice = file.desk().notice().orElse("");
            assertTrue(notice.contains(bad.says()), notice);
            assertFalse(notice.contains("Exception"), notice);
            assertEquals(List.of(), asked);
            assertEquals(before, file.desk().group().orElseThrow().reports().size());
        }
    }

    @Test
    void aFileThatIsNotThereIsSaid() {
        Theme.LIGHT.install(1);
        try (DeskOnFile file = new DeskOnFile().course("harbour-light").group(3)) {
            new TableFiles(file.desk(), asking, Work.atOnce()).open(folder.resolve("gone.csv"));
            assertEquals(
                    "gone.csv cannot be read. Check the file and that you may read it.",
                    file.desk().notice().orElse(""));
        }
    }

    @Test
    void aTableOfAnotherKindIsShownAndCannotBeFiled() throws IOException {
        Theme.LIGHT.install(1);
        try (DeskOnFile file = new DeskOnFile().course("harbour-light").group(3)) {
            Path path = Files.writeString(folder.resolve("bills.csv"), "date,shop,price\n2027-03-02,Yarn,12.50\n");
            new TableFiles(file.desk(), asking, Work.atOnce()).open(path);
            assertTrue(asked.get(0) instanceof ImportCard);
            assertTrue(file.desk().notice().isEmpty());
        }
    }
}
