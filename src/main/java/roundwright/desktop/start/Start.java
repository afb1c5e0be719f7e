package roundwright.desktop.start;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import javax.swing.SwingUtilities;
import roundwright.desktop.ask.Versions;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.LastInHand;
import roundwright.desktop.desk.ReadCourse;
import roundwright.desktop.insight.Insights;
import roundwright.desktop.look.Theme;
import roundwright.desktop.welcome.Sample;
import roundwright.desktop.welcome.Samples;
import roundwright.desktop.window.MainPanel;
import roundwright.desktop.work.EventThreadGuard;
import roundwright.desktop.work.PauseWatch;
import roundwright.desktop.work.Task;
import roundwright.desktop.work.Work;
import roundwright.store.Backup;
import roundwright.store.NativeLibrary;
import roundwright.store.Permissions;
import roundwright.store.StoreException;
import roundwright.wording.Wording;
import roundwright.workbook.Workbook;

/**
 * Starts the desktop. The file is opened beside the window, not before it.
 *
 * <p>Switches for measuring from outside: {@code -Droundwright.report-start=true} writes "ready N" when the first page with the
 * opened file is painted and takes input, N milliseconds after the start of the virtual machine;
 * {@code -Droundwright.start-only=true} closes the window then;
 * {@code -Droundwright.report-pauses=true} writes "pause N" for each time the event thread was busy for more than 50 ms;
 * {@code -Droundwright.guard=true} tells of uses of the screen off the event thread.
 */
public final class Start {
    private static final Wording WORDS = Wording.of("desktop");

    private final Folders folders;
    private final Path file;
    private final Optional<Path> made;
    private final CompletableFuture<Opened> opening;
    private Optional<String> lastVersion = Optional.empty();

    private Start(Folders folders, Path file, Optional<Path> made, CompletableFuture<Opened> opening) {
        this.folders = folders;
        this.file = file;
        this.made = made;
        this.opening = opening;
    }

    /**
     * Opens a file, or the usual one where none is named, in a window. Returns at once. A file that is not there is made, and the
     * window says so.
     *
     * @param sample whether a file without a course opens with a sample course
     */
    public static void open(Optional<Path> file, Folders folders, boolean sample) {
        System.setProperty("awt.useSystemAAFontSettings", "on");
        System.setProperty("swing.aatext", "true");
        Optional<Path> made = file.filter(Files::notExists);
        CompletableFuture<Opened> opening = CompletableFuture.supplyAsync(() -> {
            NativeLibrary.keepIn(folders.cache());
            return Opened.of(workbook(file, folders), sample);
        });
        LookSettings look = LookSettings.read(folders.settings());
        // nothing is on the screen yet: while the file is read, this is done here, and the event thread stays free
        Theme.keepFontsIn(folders.cache().resolve("fonts-" + Versions.newest()));
        look.theme().install(look.zoom());
        WarmUp.run();
        SwingUtilities.invokeLater(() -> new Start(folders, file.orElse(folders.file()), made, opening).show(look));
    }

    private static Workbook workbook(Optional<Path> file, Folders folders) {
        try {
            Path wanted = file.orElse(folders.file());
            if (Files.notExists(wanted)) {
                if (file.isEmpty()) {
                    Permissions.makeFolder(folders.data());
                }
                return Workbook.create(wanted, folders.backups(), Clock.systemDefaultZone());
            }
            return Workbook.open(wanted, folders.backups(), Clock.systemDefaultZone());
        } catch (StoreException failure) {
            throw new CompletionException(failure);
        }
    }

    /** The window is there at once, empty; what is in the file comes as soon as it has been read. */
    private void show(LookSettings look) {
        watch();
        lastVersion = look.version();
        MainWindow window = new MainWindow(folders, look);
        window.frame().setVisible(true);
        Runnable again = () -> opening.thenAccept(opened -> SwingUtilities.invokeLater(() -> fill(window, opened)));
        Thread.setDefaultUncaughtExceptionHandler(new Trouble(window.frame(), again));
        open(window, opening);
    }

    private void open(MainWindow window, CompletableFuture<Opened> reading) {
        reading.whenComplete((opened, failure) -> SwingUtilities.invokeLater(() -> {
            if (failure == null) {
                fill(window, opened);
            } else {
                refuse(window, failure instanceof CompletionException ? failure.getCause() : failure);
            }
        }));
    }

    private void refuse(MainWindow window, Throwable reason) {
        boolean foreseen = reason instanceof StoreException;
        String sentence = WORDS.say("cannot-open", foreseen ? reason.getMessage() : WORDS.say("unforeseen"));
        System.err.println(sentence);
        Damage damage = new Damage(window.frame(), file, Clock.systemDefaultZone(), window.frame()::dispose);
        if (reason instanceof StoreException.Damaged) {
            damage.mend(
                    sentence,
                    folders.backups(),
                    () -> open(
                            window,
                            CompletableFuture.supplyAsync(
                                    () -> Opened.of(workbook(Optional.of(file), folders), false))));
        } else {
            damage.tell(sentence);
        }
    }

    private static void watch() {
        if (Boolean.getBoolean("roundwright.report-pauses")) {
            java.awt.Toolkit.getDefaultToolkit()
                    .getSystemEventQueue()
                    .push(new PauseWatch(pause -> System.err.println("pause " + pause)));
        }
        if (Boolean.getBoolean("roundwright.guard")) {
            EventThreadGuard.install(found -> System.err.println(found.getMessage()));
        }
    }

    private void fill(MainWindow window, Opened opened) {
        Desk desk = new Desk(opened.workbook(), Work.queue(), Clock.systemDefaultZone());
        if (!window.frame().isDisplayable()) {
            close(desk);
            return;
        }
        Thread.setDefaultUncaughtExceptionHandler(new Trouble(window.frame(), () -> {
            desk.leave();
            fill(window, Opened.of(opened.workbook(), false));
        }));
        desk.open(opened.course());
        opened.sample().ifPresent(sample -> sample.openOn(desk));
        inTurn(() -> {
            MainPanel panel = new MainPanel(desk, new Insights(desk, Work.queue()), window);
            inTurn(() -> {
                window.fill(desk, panel, () -> close(desk));
                inTurn(() -> begin(desk, panel, window));
            });
        });
    }

    private void begin(Desk desk, MainPanel panel, MainWindow window) {
        panel.begin();
        panel.whenPainted(() -> ready(window, desk));
        made.ifPresent(path -> desk.tell(WORDS.say("file-made", path)));
        lastVersion.filter(last -> !last.equals(Versions.newest())).ifPresent(last -> tellWhatIsNew(desk, window));
    }

    /** The state that the file was opened in is copied before anything is done to it: edits wait in the same queue. */
    private static void backUp(Desk desk) {
        desk.work().submit(new Task<Optional<Backup>>() {
            @Override
            public Optional<Backup> away() throws StoreException {
                return desk.workbook().backUpIfDue();
            }

            @Override
            public void here(Optional<Backup> made) {
                // a copy that was made as always is nothing to tell
            }

            @Override
            public void failed(Exception failure) {
                desk.tell(WORDS.say("no-backup", String.valueOf(failure.getMessage())));
            }
        });
    }

    private void tellWhatIsNew(Desk desk, MainWindow window) {
        String newest = Versions.newest();
        lastVersion = Optional.of(newest);
        desk.tell(WORDS.say("new-version", newest, String.join(" ", Versions.changes(newest))));
        window.rememberLook();
    }

    private static void ready(MainWindow window, Desk desk) {
        if (Boolean.getBoolean("roundwright.report-start")) {
            reportReady();
        }
        if (Boolean.getBoolean("roundwright.start-only")) {
            window.frame().dispose();
        } else {
            window.showIcon();
            WarmUp.later();
            backUp(desk);
            StartArchive.ofThisProgram().ifPresent(StartArchive::makeLater);
        }
    }

    /** Goes on in an event of its own: keys are taken, and what is there is painted, in between. */
    private static void inTurn(Runnable next) {
        SwingUtilities.invokeLater(next);
    }

    private static void reportReady() {
        long began = ManagementFactory.getRuntimeMXBean().getStartTime();
        System.err.println("ready " + (System.currentTimeMillis() - began));
    }

    private static void close(Desk desk) {
        desk.work().close();
        try {
            desk.workbook().close();
        } catch (StoreException failure) {
            System.err.println(failure.getMessage());
        }
    }

    /** The open file with the course that was last in hand, or the sample to begin with, read while the look is put on. */
    private record Opened(Workbook workbook, Optional<ReadCourse> course, Optional<Sample> sample) {
        static Opened of(Workbook workbook, boolean withSample) {
            Optional<ReadCourse> course =
                    LastInHand.of(workbook.view()).course().map(kept -> ReadCourse.of(kept, workbook.view()));
            Optional<Sample> sample = withSample && workbook.view().courses().isEmpty()
                    ? Samples.names().stream().findFirst().flatMap(Sample::named)
                    : Optional.empty();
            return new Opened(workbook, course, sample);
        }
    }
}
