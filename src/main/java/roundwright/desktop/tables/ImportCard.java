package roundwright.desktop.tables;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.swing.JButton;
import javax.swing.JComboBox;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.work.Task;
import roundwright.desktop.work.Work;
import roundwright.group.Student;
import roundwright.group.counts.Table;
import roundwright.wording.Wording;
import roundwright.workbook.GroupView;

/**
 * Counts out of a table: its first rows as they stand, what each column is taken for, what has to be decided, what would be filed and
 * what cannot be. Nothing is filed before the teacher says so, and then all of it in one step.
 */
public final class ImportCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient Desk desk;
    private final transient Asking asking;
    private final transient Work reading;
    private final transient List<Table> tables;
    private final transient OpenCourse course;
    private final transient GroupView group;
    private final transient List<Student> students;
    private final String file;
    private final ColumnMatching columns;
    private final QuestionRows questions = new QuestionRows(this::answered);
    private final ImportSummary summary = new ImportSummary();
    private final JButton answer;
    private transient ImportWish wish = ImportWish.NOTHING;
    private transient Optional<ImportFound> found = Optional.empty();
    private int readings;

    /**
     * A card for the group in hand.
     *
     * @param reading a queue for work that can take a second
     * @param file what the table is called
     * @param tables of it, at least one
     */
    public ImportCard(Desk desk, Asking asking, Work reading, String file, List<Table> tables) {
        super(WORDS.say("import-head", file), 760);
        this.desk = desk;
        this.asking = asking;
        this.reading = reading;
        this.file = file;
        this.tables = tables;
        this.course = desk.course().orElseThrow();
        this.group = desk.group().orElseThrow();
        this.students = group.students();
        this.columns = new ColumnMatching(ColumnWords.all(course.places(), students), this::matched);
        if (tables.size() > 1) {
            row(WORDS.say("import-sheet"), sheets(), "");
        }
        columns.into(body(), this::row);
        first(columns.preview());
        body().below(2, questions);
        body().below(2, summary);
        answer = answer(WORDS.say("import-answer", 0), this::file);
        cancel(asking);
        read();
    }

    private JComboBox<String> sheets() {
        JComboBox<String> sheets =
                new JComboBox<>(tables.stream().map(Table::name).toArray(String[]::new));
        sheets.addActionListener(event -> {
            questions.forget();
            wish = wish.ofSheet(sheets.getSelectedIndex());
            read();
        });
        return sheets;
    }

    private void matched(roundwright.group.counts.ColumnMatch match) {
        questions.forget();
        wish = ImportWish.NOTHING
                .ofSheet(wish.sheet())
                .usualPart(wish.usualPart())
                .matched(match);
        read();
    }

    private void answered(UnaryOperator<ImportWish> answer) {
        wish = answer.apply(wish);
        read();
    }

    /** Reads the table as is wished now; what an older wish came to is no longer looked at. */
    private void read() {
        int number = ++readings;
        ImportWish wanted = wish;
        answer.setEnabled(false);
        summary.reading();
        reading.submit(new Task<ImportFound>() {
            @Override
            public ImportFound away() {
                return ImportFound.read(tables.get(wanted.sheet()), wanted, course, group, ZoneId.systemDefault());
            }

            @Override
            public void here(ImportFound read) {
                if (number == readings) {
                    show(read);
                }
            }

            @Override
            public void failed(Exception failure) {
                wrong(String.valueOf(failure.getMessage()), answer);
            }
        });
    }

    private void show(ImportFound read) {
        found = Optional.of(read);
        columns.show(read.table(), read.match());
        questions.ask(Questions.of(read.result().unknowns(), course, students));
        summary.show(read);
        answer.setText(WORDS.say("import-answer", read.fresh().size()));
        answer.setEnabled(!read.fresh().isEmpty());
        revalidate();
        if (getParent() != null) {
            getParent().revalidate();
        }
        repaint();
    }

    private void file() {
        boolean stillThere = desk.group().filter(now -> now == group).isPresent();
        if (!stillThere) {
            wrong(WORDS.say("import-group-changed"), answer);
            return;
        }
        found.filter(read -> !read.fresh().isEmpty()).ifPresent(read -> {
            asking.close();
            desk.apply(
                    read.edit(desk.workbook(), group, file, ZoneId.systemDefault()),
                    () -> desk.tell(WORDS.say("import-done", read.fresh().size(), file)));
        });
    }
}
