package roundwright.desktop.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import roundwright.desktop.DeskOnFile;
import roundwright.desktop.Inside;
import roundwright.desktop.OnEventThread;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.ask.Question;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.look.Theme;
import roundwright.desktop.work.Work;
import roundwright.group.CountReport;
import roundwright.group.Group;
import roundwright.group.RoundPlace;
import roundwright.group.Standing;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.group.counts.CountsTables;
import roundwright.group.counts.NotATable;
import roundwright.group.counts.Table;
import roundwright.group.counts.TableFile;
import roundwright.group.counts.TableWriter;
import roundwright.workbook.GroupEdit;
import roundwright.workbook.StudentEdit;

@ExtendWith(OnEventThread.class)
class ImportCardTest {
    private DeskOnFile file;
    private Desk desk;
    private final List<JComponent> asked = new ArrayList<>();
    private final Asking asking = new Asking() {
        @Override
        public void ask(Question card) {
            asked.add(card.card());
        }

        @Override
        public void close() {
            asked.clear();
        }
    };

    @BeforeEach
    void groupOfThree() {
        Theme.LIGHT.install(1);
        file = new DeskOnFile().course("harbour-light");
        desk = file.desk();
        group("Mondays", "Oda", "Piet", "Inés");
    }

    private void group(String name, String... names) {
        Group group =
                new Group(desk.workbook().newGroup(), desk.choice().course().orElseThrow(), name, Optional.empty(), "");
        desk.apply(new GroupEdit.AddGroup(group), () -> desk.chooseGroup(group.id()));
        List<Student> students = Stream.of(names)
                .map(one -> new Student(desk.workbook().newStudent(), one, false, false, ""))
                .toList();
        desk.apply(new StudentEdit.AddStudents(group.id(), students));
    }

    @AfterEach
    void close() {
        file.close();
    }

    private ImportCard card(String text) {
        try {
            ImportCard card = new ImportCard(
                    desk,
                    asking,
                    Work.atOnce(),
                    "counts.csv",
                    TableFile.read(text.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
            asked.add(card);
            return card;
        } catch (NotATable refused) {
            throw new AssertionError(refused);
        }
    }

    private static String words(Component card) {
        return Inside.all(card)
                .map(component -> component.getAccessibleContext())
                .filter(context -> context != null && context.getAccessibleName() != null)
                .map(context -> context.getAccessibleName())
                .collect(Collectors.joining("\n"));
    }

    private static AbstractButton button(Component card, String start) {
        return Inside.all(card)
                .filter(AbstractButton.class::isInstance)
                .map(AbstractButton.class::cast)
                .filter(button -> button.getText() != null && button.getText().startsWith(start))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button " + start + " in " + words(card)));
    }

    private static JComboBox<?> choice(Component card, String start) {
        return Inside.all(card)
                .filter(JComboBox.class::isInstance)
                .map(component -> (JComboBox<?>) component)
                .filter(box -> String.valueOf(box.getAccessibleContext().getAccessibleName())
                        .startsWith(start))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no choice " + start + " in " + words(card)));
    }

    private static void choose(JComboBox<?> box, String words) {
        for (int item = 0; item < box.getItemCount(); item++) {
            if (box.getItemAt(item).toString().equals(words)) {
                box.setSelectedIndex(item);
                return;
            }
        }
        throw new AssertionError("no answer " + words);
    }

    private List<String> filed() {
        return desk.group().orElseThrow().reports().stream()
                .filter(CountReport::stands)
                .map(report -> desk.group()
                                .orElseThrow()
                                .student(report.student())
                                .orElseThrow()
                                .name()
                        + " " + report.part() + " " + report.round() + " "
                        + (report.count().isPresent() ? report.count().getAsInt() : report.kind()))
                .toList();
    }

    @Test
    void whatIsReadIsFiledInOneStepAndUndoneInOne() {
        ImportCard card = card("Name;Piece;Rnd;Sts;When\nOda;Tower;1;6;2027-03-02\nInes;Tower;1;7;2027-03-02 19:30\n");
        assertTrue(words(card).contains("2 counts will be filed."), words(card));
        button(card, "File 2 counts").doClick();
        assertEquals(List.of("Oda Tower 1 6", "Inés Tower 1 7"), filed());
        assertEquals(
                "19:30",
                desk.group()
                        .orElseThrow()
                        .reports()
                        .get(1)
                        .at()
                        .atZone(ZoneId.systemDefault())
                        .toLocalTime()
                        .toString());
        assertEquals(
                Optional.of("Undo: 2 counts from counts.csv"), desk.workbook().undoName());
        desk.undo();
        assertEquals(List.of(), filed());
        assertTrue(asked.isEmpty());
    }

    @Test
    void aColumnThatIsTakenWronglyIsPutRight() {
        ImportCard card = card("a,b,c,d\nOda,x,2,12\nPiet,x,2,13\n");
        assertFalse(button(card, "File").isEnabled());
        JTable preview = Inside.first(card, PreviewTable.class);
        String[] meanings = {"Student", "(passed over)", "Round", "Count"};
        choose(choice(card, "Rows above"), "1");
        for (int column = 0; column < meanings.length; column++) {
            preview.changeSelection(0, column, false, false);
            choose(choice(card, "Column " + (column + 1)), meanings[column]);
        }
        assertTrue(words(card).contains("Which part is meant where none is named?"), words(card));
        choose(choice(card, "Which part"), "Tower");
        button(card, "File 2 counts").doClick();
        assertEquals(List.of("Oda Tower 2 12", "Piet Tower 2 13"), filed());
    }

    @Test
    void unknownPeoplePartsAndRoundsAreDecidedOn() {
        ImportCard card = card(
                "student,part,round,count\nRania,Tower,1,6\nOdo,Tower,1,6\nPeit,Turm,1,6\nPiet,Tower,999,12\nPiet,Tower,3,18\n");
        assertTrue(words(card).contains("1 count will be filed"), words(card));
        choose(choice(card, "Who is “Rania”"), "A new student of this group");
        choose(choice(card, "Who is “Odo”"), "Oda");
        choose(choice(card, "Which part is “Turm”"), "Tower");
        choose(choice(card, "The pattern has no Tower, round 999"), "Tower, round 2");
        choose(choice(card, "“Peit” is taken for Piet"), "Inés");
        button(card, "File 5 counts").doClick();
        assertEquals(
                List.of("Rania Tower 1 6", "Oda Tower 1 6", "Inés Tower 1 6", "Piet Tower 2 12", "Piet Tower 3 18"),
                filed());
        assertEquals(4, desk.students().size());
        desk.undo();
        assertEquals(3, desk.students().size());
        assertEquals(List.of(), filed());
    }

    @Test
    void theSameFileTwiceFilesNothingTwiceAndACorrectionIsSaid() {
        String first = "Name,Tower 1,Tower 2\nOda,6,12\nPiet,6,13\n";
        button(card(first), "File 4 counts").doClick();
        ImportCard again = card(first);
        assertFalse(button(again, "File nothing").isEnabled());
        assertTrue(words(again).contains("4 are in the history already"), words(again));
        ImportCard corrected = card(first.replace("13", "12"));
        assertTrue(words(corrected).contains("One of them corrects"), words(corrected));
        button(corrected, "File 1 count").doClick();
        assertEquals(5, filed().size());
        button(card(first), "File 1 count").doClick();
        assertEquals("Piet Tower 2 13", filed().get(5));
    }

    @Test
    void rowsOfOtherCoursesAreLeftOutAndSaid() {
        ImportCard card = card("course,student,part,round,count\nHarbour light,Oda,Tower,1,6\nOther,Oda,Tower,2,12\n");
        assertTrue(words(card).contains("One row is of another course (Other)"), words(card));
        button(card, "File 1 count").doClick();
        assertEquals(List.of("Oda Tower 1 6"), filed());
    }

    @Test
    void whatCannotBeUsedIsShownWithItsPlace() {
        ImportCard card = card("student,part,round,count\nOda,Tower,1,six\nOda,Tower,2,-3\nPiet,Tower,1,6\n");
        assertTrue(words(card).contains("Line 2, column 4: The count \"six\" is not a whole number."), words(card));
        assertTrue(words(card).contains("Line 3, column 4: A count cannot be -3."), words(card));
    }

    @Test
    void whatAGroupSavesAnotherTakesIn() throws NotATable {
        button(card("Name,Tower 1,Tower 2,Tower 3\nOda,6,12,…7\nPiet,6,13,\nInés,6,12,18\n"), "File 8 counts")
                .doClick();
        Standing oda = desk.standing(desk.students().get(0).id());
        List<byte[]> saved = new ArrayList<>();
        var expectations = desk.course().orElseThrow().expectations();
        var reports = desk.group().orElseThrow().reports();
        var names = desk.students().stream().collect(Collectors.toMap(Student::id, Student::name));
        saved.add(TableWriter.csv(CountsTables.reports(reports, names::get, ZoneId.systemDefault())));
        saved.add(TableWriter.spreadsheet(
                List.of(CountsTables.group(expectations, desk.students(), student -> desk.standing(student.id())))));
        for (byte[] bytes : saved) {
            group("Other", "Oda", "Piet", "Inés");
            List<Table> tables = TableFile.read(bytes);
            ImportCard card = new ImportCard(desk, asking, Work.atOnce(), "saved", tables);
            button(card, "File 8 counts").doClick();
            StudentId other = desk.students().get(0).id();
            assertEquals(
                    oda.rounds().stream()
                            .map(round -> round.state() + " " + round.count())
                            .toList(),
                    desk.standing(other).rounds().stream()
                            .map(round -> round.state() + " " + round.count())
                            .toList());
        }
    }

    @Test
    void aHundredThousandLinesAreTakenInTime() throws NotATable {
        StringBuilder text = new StringBuilder("student,part,round,count\n");
        for (int line = 0; line < 100_000; line++) {
            text.append(line % 3 == 0 ? "Oda" : line % 3 == 1 ? "Nobody " + line : "Piet")
                    .append(",Tower,")
                    .append(1 + line % 20)
                    .append(',')
                    .append(line % 97)
                    .append('\n');
        }
        long start = System.nanoTime();
        ImportCard card = card(text.toString());
        assertEquals(
                Questions.MOST,
                Inside.all(card)
                        .filter(JComboBox.class::isInstance)
                        .filter(box -> String.valueOf(box.getAccessibleContext().getAccessibleName())
                                .startsWith("Who is"))
                        .count());
        assertTrue((System.nanoTime() - start) / 1e9 < 15);
        assertTrue(button(card, "File").isEnabled());
    }

    @Test
    void aBlockIsLaidOnTheGridFromTheChosenCountOn() {
        BlockPaste paste = new BlockPaste(desk, asking, new TableFiles(desk, asking, Work.atOnce()));
        desk.chooseStudent(desk.students().get(1).id());
        desk.choosePlace(new RoundPlace("Tower", 3));
        paste.take("18\t24\r\n\t…9\r\n");
        assertEquals(List.of("Piet Tower 3 18", "Piet Tower 4 24", "Inés Tower 4 9"), filed());
        desk.undo();
        assertEquals(List.of(), filed());
    }

    @Test
    void whatDoesNotFitOfABlockIsShownBeforeAnythingIsFiled() {
        BlockPaste paste = new BlockPaste(desk, asking, new TableFiles(desk, asking, Work.atOnce()));
        desk.chooseStudent(desk.students().get(2).id());
        desk.choosePlace(new RoundPlace("Tower", 3));
        paste.take("18\tabout twenty\n18\t24\n");
        assertEquals(List.of(), filed());
        JComponent card = asked.get(0);
        assertTrue(
                words(card).contains("Row 1, column 2 of the block, “about twenty”: it is not a count."), words(card));
        assertTrue(words(card).contains("Row 2, column 1 of the block, “18”: there are fewer students"), words(card));
        button(card, "File 1 count").doClick();
        assertEquals(List.of("Inés Tower 3 18"), filed());
    }

    @Test
    void aBlockWithNamesOfItsOwnIsLookedAtLikeAFile() {
        BlockPaste paste = new BlockPaste(desk, asking, new TableFiles(desk, asking, Work.atOnce()));
        desk.chooseStudent(desk.students().get(2).id());
        paste.take("Name\tTower 1\tTower 2\nOda\t6\t12\n");
        assertTrue(asked.get(0) instanceof ImportCard);
        button(asked.get(0), "File 2 counts").doClick();
        assertEquals(List.of("Oda Tower 1 6", "Oda Tower 2 12"), filed());
    }

    @Test
    void rubbishInTheClipboardIsSaid() {
        BlockPaste paste = new BlockPaste(desk, asking, new TableFiles(desk, asking, Work.atOnce()));
        for (String rubbish : List.of("", "\n\n", "\u0000\u0001", "\t\t\t")) {
            desk.clearNotice();
            paste.take(rubbish);
            assertTrue(desk.notice().isPresent() || !asked.isEmpty(), "nothing said of " + rubbish);
            asked.clear();
        }
        assertEquals(List.of(), filed());
    }
}
