package roundwright.desktop.work;

import roundwright.wording.Wording;

/** A piece of work failed in a way that nobody foresaw; the message is for the person, the details are told elsewhere. */
public final class Unforeseen extends Exception {
    Unforeseen(Throwable cause) {
        super(Wording.of("desktop").say("unforeseen"), cause);
    }
}
