package roundwright.desktop.window;

import java.awt.print.Pageable;
import java.nio.file.Path;
import java.util.Optional;
import roundwright.desktop.work.Work;

/** What only a real window can do for the panel inside it. */
public interface Frame {
    /** Asks for a course file to open; empty where the person thinks better of it. */
    Optional<Path> chooseFile();

    /** Asks for a file of this program, such as a backup on a stick. */
    Optional<Path> chooseDataFile();

    /** Asks for a file with a table of counts. */
    Optional<Path> chooseTable();

    /** Asks where to write a file of a suggested name. */
    Optional<Path> chooseTarget(String suggested);

    /** Asks for a folder to write into. */
    Optional<Path> chooseFolder();

    /** Asks for a printer, and sends pages to it. */
    void print(Pageable pages);

    /** A queue for work that takes seconds. */
    Work longWork();

    /** The folder in which it is kept how the window looks. */
    Path settings();

    /** Keeps how the window looks for the next start. */
    void rememberLook();
}
