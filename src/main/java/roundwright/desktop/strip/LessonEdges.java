package roundwright.desktop.strip;

/** What can be done to the edges between lessons on the strip. Columns are counted from 0, lessons as the brackets number them. */
public interface LessonEdges {
    /** A strip whose lessons stay as they are. */
    LessonEdges FIXED = new LessonEdges() {
        @Override
        public boolean movable() {
            return false;
        }

        @Override
        public String told(int lesson, int column) {
            return "";
        }

        @Override
        public void move(int lesson, int column) {
            // the lessons stay as they are
        }
    };

    /** Whether edges can be moved now. */
    boolean movable();

    /** What it would come to if a lesson began with a column, in a few words. */
    String told(int lesson, int column);

    /** Makes a lesson begin with a column. */
    void move(int lesson, int column);
}
