package roundwright.store;

import java.nio.file.Path;
import roundwright.wording.Wording;

/**
 * The file could not be opened, read or written. The message is a sentence for the person; what was asked for was not done,
 * not even in part, and what had been acknowledged before is still in the file.
 */
public abstract sealed class StoreException extends Exception {
    private static final Wording WORDS = Wording.of("store");

    private StoreException(String sentence, Throwable cause) {
        super(sentence, cause);
    }

    /** Another program, or another window, has the file open. */
    public static final class Locked extends StoreException {
        Locked(Path file, Throwable cause) {
            super(WORDS.say("locked", file), cause);
        }
    }

    /** A newer program wrote the file. */
    public static final class NewerVersion extends StoreException {
        NewerVersion(Path file, int version, int known) {
            super(WORDS.say("newer-version", file, version, known), null);
        }
    }

    /** The file is ours and broken. */
    public static final class Damaged extends StoreException {
        private final String how;

        Damaged(Path file, String how, Throwable cause) {
            super(WORDS.say("damaged", file, how), cause);
            this.how = how;
        }

        /** What is wrong with it, without the sentence round it. */
        public String how() {
            return how;
        }
    }

    /** The file, or folder, is not one of ours. */
    public static final class Foreign extends StoreException {
        Foreign(Path file) {
            super(WORDS.say("foreign", file), null);
        }

        private Foreign(String sentence) {
            super(sentence, null);
        }

        static Foreign folder(Path folder) {
            return new Foreign(WORDS.say("foreign-folder", folder));
        }
    }

    /** The file, or the folder it is in, may not be written to. */
    public static final class ReadOnly extends StoreException {
        ReadOnly(Path file, Throwable cause) {
            super(WORDS.say("read-only", file), cause);
        }
    }

    /** There is no such file, or it went away while it was open. */
    public static final class Missing extends StoreException {
        private Missing(String sentence) {
            super(sentence, null);
        }

        static Missing file(Path file) {
            return new Missing(WORDS.say("missing", file));
        }

        static Missing folder(Path folder) {
            return new Missing(WORDS.say("missing-folder", folder));
        }

        static Missing gone(Path file) {
            return new Missing(WORDS.say("gone", file));
        }
    }

    /** The edit does not fit what the file holds. */
    public static final class Constraint extends StoreException {
        Constraint(Path file, String what, Throwable cause) {
            super(WORDS.say("constraint", file, what), cause);
        }
    }

    /** The disk is full. */
    public static final class Full extends StoreException {
        Full(Path file, Throwable cause) {
            super(WORDS.say("full", file), cause);
        }
    }

    /** The disk failed when the edit was all but kept, and did not say which; the file says now. */
    public static final class Unsure extends StoreException {
        private Unsure(String sentence, Throwable cause) {
            super(sentence, cause);
        }

        /** It is in the file, but may not be there for good. */
        public static Unsure kept(Path file, Throwable cause) {
            return new Unsure(WORDS.say("unsure", file), cause);
        }

        /** The file cannot be read now, so nobody knows. */
        public static Unsure unknown(Path file, Throwable cause) {
            return new Unsure(WORDS.say("unsure-unknown", file), cause);
        }
    }

    /** Anything else that the machine refused. */
    public static final class Failed extends StoreException {
        Failed(Path file, String what, Throwable cause) {
            super(WORDS.say("failed", file, what), cause);
        }

        private Failed(String sentence) {
            super(sentence, null);
        }

        static Failed itself(Path file) {
            return new Failed(WORDS.say("itself", file));
        }

        static Failed tooLarge(Path file) {
            return new Failed(WORDS.say("too-large", file));
        }

        static Failed exists(Path file) {
            return new Failed(WORDS.say("exists", file));
        }
    }
}
