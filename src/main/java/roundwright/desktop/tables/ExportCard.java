package roundwright.desktop.tables;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.ButtonGroup;
import javax.swing.JRadioButton;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.work.Task;
import roundwright.desktop.work.Work;
import roundwright.group.Standing;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.group.counts.CountsTables;
import roundwright.group.counts.OutTable;
import roundwright.group.counts.TableWriter;
import roundwright.wording.Wording;
import roundwright.workbook.GroupView;
import roundwright.workbook.WholeFile;

/** Asks in what form the group's counts are to be saved, and saves them. */
public final class ExportCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient Desk desk;
    private final transient Asking asking;
    private final transient Work writing;
    private final transient Function<String, Optional<Path>> target;
    private final JRadioButton spreadsheet = new JRadioButton(WORDS.say("export-spreadsheet"), true);
    private final JRadioButton group = new JRadioButton(WORDS.say("export-group"));
    private final JRadioButton reports = new JRadioButton(WORDS.say("export-reports"));

    /**
     * A card for the group in hand.
     *
     * @param target asks where a file of a suggested name goes
     */
    public ExportCard(Desk desk, Asking asking, Work writing, Function<String, Optional<Path>> target) {
        super(WORDS.say("export-head"), 520);
        this.desk = desk;
        this.asking = asking;
        this.writing = writing;
        this.target = target;
        say(WORDS.say("export-how"));
        ButtonGroup one = new ButtonGroup();
        for (JRadioButton form : List.of(spreadsheet, group, reports)) {
            one.add(form);
            body().below(1.5, form);
        }
        answer(WORDS.say("export-answer"), this::save);
        cancel(asking);
    }

    private void save() {
        GroupView kept = desk.group().orElseThrow();
        String name = kept.group().name().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
        Optional<Path> chosen = target.apply(name + (spreadsheet.isSelected() ? ".xlsx" : ".csv"));
        chosen.ifPresent(path -> {
            asking.close();
            write(path, kept, desk.course().orElseThrow());
        });
    }

    private byte[] bytes(GroupView kept, OpenCourse course) {
        OutTable wide = CountsTables.group(
                course.expectations(),
                kept.students(),
                student -> Standing.derivedFrom(course.expectations(), kept.reports(student.id())));
        java.util.Map<StudentId, String> names =
                kept.students().stream().collect(Collectors.toMap(Student::id, Student::name));
        OutTable every = CountsTables.reports(kept.reports(), names::get, ZoneId.systemDefault());
        if (spreadsheet.isSelected()) {
            return TableWriter.spreadsheet(List.of(wide, every));
        }
        return TableWriter.csv(group.isSelected() ? wide : every);
    }

    private void write(Path path, GroupView kept, OpenCourse course) {
        writing.submit(new Task<Void>() {
            @Override
            public Void away() throws IOException {
                WholeFile.write(path, bytes(kept, course));
                return null;
            }

            @Override
            public void here(Void nothing) {
                desk.tell(WORDS.say("export-done", path));
            }

            @Override
            public void failed(Exception failure) {
                desk.tell(WORDS.say("cannot-write-file", path));
            }
        });
    }
}
