package roundwright.desktop.start;

import com.formdev.flatlaf.extras.FlatSVGUtils;
import java.awt.Dimension;
import java.awt.GraphicsConfiguration;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.Image;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.awt.print.Pageable;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.filechooser.FileNameExtensionFilter;
import roundwright.desktop.ask.Versions;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.look.Theme;
import roundwright.desktop.look.Tone;
import roundwright.desktop.window.Frame;
import roundwright.desktop.window.MainPanel;
import roundwright.desktop.work.Task;
import roundwright.desktop.work.Work;
import roundwright.wording.Wording;

/** The frame round the panel: title, place on the screen, file choosers, and closing. */
final class MainWindow implements Frame {
    private static final Wording WORDS = Wording.of("desktop");
    private static final Dimension USUAL = new Dimension(1280, 820);
    private static final Dimension LEAST = new Dimension(640, 480);
    private static final int ENOUGH_TO_GRASP = 80;

    private final JFrame frame = new JFrame();
    private final Work longWork = Work.queue();
    private Consumer<String> told = sentence -> {};
    private final Work looks = Work.queue();
    private final Folders folders;
    private Runnable closed = () -> {};

    /** An empty window of the size and place it had last time. */
    MainWindow(Folders folders, LookSettings look) {
        this.folders = folders;
        frame.setTitle(WORDS.say("window-title"));
        frame.getContentPane().setBackground(Tone.BACKGROUND.color());
        frame.setMinimumSize(LEAST);
        frame.setDefaultCloseOperation(JFrame.DISPOSE_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                rememberLook();
            }

            @Override
            public void windowClosed(WindowEvent event) {
                looks.close();
                closed.run();
            }
        });
        frame.setBounds(bounds(look));
    }

    /** Puts an open file into the window. */
    void fill(Desk desk, MainPanel panel, Runnable closed) {
        told = desk::tell;
        this.closed = closed;
        frame.setContentPane(panel);
        showTitle(desk);
        desk.listen(matters -> showTitle(desk));
        frame.validate();
    }

    private void showTitle(Desk desk) {
        frame.setTitle(desk.course()
                .map(course -> WORDS.say("window-title-of", course.kept().name()))
                .orElse(WORDS.say("window-title")));
    }

    /** The icon is fetched when the first page is there. */
    void showIcon() {
        looks.submit(new Task<List<Image>>() {
            @Override
            public List<Image> away() {
                return FlatSVGUtils.createWindowIconImages("/roundwright/desktop/roundwright.svg");
            }

            @Override
            public void here(List<Image> images) {
                frame.setIconImages(images);
            }

            @Override
            public void failed(Exception failure) {
                // the window has the system's icon
            }
        });
    }

    JFrame frame() {
        return frame;
    }

    /** Where the window stood last time, if enough of that is on a screen still; else in the middle. */
    private static Rectangle bounds(LookSettings look) {
        Optional<Rectangle> last = look.bounds().filter(MainWindow::onSomeScreen);
        Rectangle screen = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        int width = Math.min(USUAL.width, screen.width);
        int height = Math.min(USUAL.height, screen.height);
        return last.orElse(new Rectangle(
                screen.x + (screen.width - width) / 2, screen.y + (screen.height - height) / 2, width, height));
    }

    private static boolean onSomeScreen(Rectangle bounds) {
        for (GraphicsDevice device :
                GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices()) {
            GraphicsConfiguration configuration = device.getDefaultConfiguration();
            Rectangle shown = configuration.getBounds().intersection(bounds);
            if (shown.width >= ENOUGH_TO_GRASP && shown.height >= ENOUGH_TO_GRASP) {
                return true;
            }
        }
        return false;
    }

    @Override
    public Optional<Path> chooseFile() {
        return choose(chooser(WORDS.say("course-files"), "md", "txt"));
    }

    @Override
    public Optional<Path> chooseTable() {
        return choose(chooser(WORDS.say("table-files"), "csv", "tsv", "txt", "xlsx"));
    }

    private Optional<Path> choose(JFileChooser chooser) {
        return chooser.showOpenDialog(frame) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }

    @Override
    public Optional<Path> chooseDataFile() {
        JFileChooser chooser = new JFileChooser();
        chooser.setFileFilter(new FileNameExtensionFilter(WORDS.say("data-files"), "db"));
        return chooser.showOpenDialog(frame) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }

    @Override
    public Optional<Path> chooseTarget(String suggested) {
        JFileChooser chooser = chooser(WORDS.say("course-files"), "md", "txt");
        if (!suggested.endsWith(".md")) {
            chooser.setFileFilter(chooser.getAcceptAllFileFilter());
        }
        chooser.setSelectedFile(new File(suggested));
        return chooser.showSaveDialog(frame) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }

    @Override
    public Optional<Path> chooseFolder() {
        JFileChooser chooser = new JFileChooser();
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        chooser.setDialogTitle(WORDS.say("choose-folder"));
        chooser.setApproveButtonText(WORDS.say("choose-folder-here"));
        return chooser.showSaveDialog(frame) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }

    /** The system's own question comes first; the printing itself runs away from the event thread. */
    @Override
    public void print(Pageable pages) {
        PrinterJob job = PrinterJob.getPrinterJob();
        job.setJobName(frame.getTitle());
        job.setPageable(pages);
        if (!job.printDialog()) {
            return;
        }
        longWork.submit(new Task<Void>() {
            @Override
            public Void away() throws PrinterException {
                job.print();
                return null;
            }

            @Override
            public void here(Void nothing) {
                told.accept(WORDS.say("printed"));
            }

            @Override
            public void failed(Exception failure) {
                told.accept(WORDS.say("cannot-print", String.valueOf(failure.getMessage())));
            }
        });
    }

    @Override
    public Work longWork() {
        return longWork;
    }

    private static JFileChooser chooser(String words, String... endings) {
        JFileChooser chooser = new JFileChooser();
        chooser.setFileFilter(new FileNameExtensionFilter(words, endings));
        return chooser;
    }

    @Override
    public Path settings() {
        return folders.settings();
    }

    @Override
    public void rememberLook() {
        Theme theme = Theme.dark() ? Theme.DARK : Theme.LIGHT;
        LookSettings look =
                new LookSettings(theme, Theme.zoom(), Optional.of(frame.getBounds()), Optional.of(Versions.newest()));
        Path folder = folders.settings();
        looks.submit(new Task<Void>() {
            @Override
            public Void away() {
                look.write(folder);
                return null;
            }

            @Override
            public void here(Void nothing) {
                // nothing on the screen depends on it
            }

            @Override
            public void failed(Exception failure) {
                // the next window opens as the first one did
            }
        });
    }
}
