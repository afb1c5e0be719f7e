package roundwright.desktop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import roundwright.course.file.CourseFile;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.insight.Insights;
import roundwright.desktop.welcome.Samples;
import roundwright.desktop.window.Frame;
import roundwright.desktop.window.MainPanel;
import roundwright.desktop.work.Work;
import roundwright.group.CourseId;
import roundwright.store.StoreException;
import roundwright.workbook.CourseEdit;
import roundwright.workbook.SampleGroup;
import roundwright.workbook.Workbook;

/** A desk over a real file in a temporary folder; whatever is done to it is done at once. */
public final class DeskOnFile implements AutoCloseable {
    /** A Tuesday in the middle of the invented group's course. */
    public static final Instant NOW = Instant.parse("2027-03-16T18:30:00Z");

    private final Path folder;
    private final Workbook workbook;
    private final Desk desk;

    public DeskOnFile() {
        try {
            folder = Files.createTempDirectory("roundwright-desk");
            Clock clock = Clock.fixed(NOW, ZoneOffset.UTC);
            workbook = Workbook.create(folder.resolve("courses.db"), folder.resolve("backups"), clock);
            desk = new Desk(workbook, Work.atOnce(), clock);
            desk.open(Optional.empty());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (StoreException failure) {
            throw new IllegalStateException(failure);
        }
    }

    /** Where it is kept. */
    public Path path() {
        return folder.resolve("courses.db");
    }

    public Desk desk() {
        return desk;
    }

    /** Puts a sample course on the desk, with no group. */
    public DeskOnFile course(String sample) {
        return course(sample, Samples.text(sample).orElseThrow());
    }

    public DeskOnFile course(String name, String text) {
        CourseId id = workbook.newCourse();
        String title = CourseFile.read(text).course().name();
        desk.apply(new CourseEdit.AddCourse(id, title.isBlank() ? name : title, text));
        desk.chooseCourse(id, Optional.empty());
        return this;
    }

    /** Gives the course an invented group that is half-way through. */
    public DeskOnFile group(int students) {
        CourseId id = desk.choice().course().orElseThrow();
        LocalDate start = desk.today()
                .minusWeeks((desk.course().orElseThrow().course().lessons().size() + 1) / 2 - 1L);
        SampleGroup.Sample sample =
                SampleGroup.of(workbook, id, desk.course().orElseThrow().course(), students, 11, start);
        desk.apply(sample.edit(), () -> desk.chooseGroup(sample.group()));
        return this;
    }

    /** The window's panel over this desk, with no window round it. */
    public MainPanel panel() {
        return panel(Work.atOnce());
    }

    /** The same with its own queue for what takes long. */
    public MainPanel panel(Work longWork) {
        return new MainPanel(desk, new Insights(desk, Work.atOnce()), new NoFrame(longWork)).begin();
    }

    /** The same, but nothing is worked out about what the counts say: in the window that happens on another thread. */
    public MainPanel panelWithoutInsight() {
        return new MainPanel(desk, new Insights(desk, Work.never()), new NoFrame(Work.atOnce())).begin();
    }

    @Override
    public void close() {
        try {
            workbook.close();
        } catch (StoreException failure) {
            throw new IllegalStateException(failure);
        }
    }

    private record NoFrame(Work longWork) implements Frame {
        @Override
        public Optional<Path> chooseFile() {
            return Optional.empty();
        }

        @Override
        public Optional<Path> chooseDataFile() {
            return Optional.empty();
        }

        @Override
        public Optional<Path> chooseTable() {
            return Optional.empty();
        }

        @Override
        public Optional<Path> chooseTarget(String suggested) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> chooseFolder() {
            return Optional.empty();
        }

        @Override
        public Path settings() {
            return Path.of("settings");
        }

        @Override
        public void print(java.awt.print.Pageable pages) {
            // there is no printer
        }

        @Override
        public void rememberLook() {
            // there is no next start
        }
    }
}
