package roundwright.mistakes.story;

/** What any number of stitches below can become in one round. */
public interface Story {
    /** What becomes of so many stitches below; the same object for the same number. */
    Landing at(int below);
}
