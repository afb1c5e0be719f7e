package roundwright.fuzz;

import java.nio.file.Path;
import java.util.Random;

/** A way for input to come into the program. */
interface Door {
    /** What it is called in the figures. */
    String name();

    /** Seconds of processor time that one input may take. */
    default int seconds() {
        return 2;
    }

    /**
     * Puts one input through; fails with an error where anything comes back that should not reach a person.
     *
     * @param chance what the input is made of
     * @param folder an empty folder to work in; everything the program may write to is below {@code folder/inside}
     */
    void once(Random chance, Path folder) throws Exception;
}
