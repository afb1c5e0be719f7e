package roundwright.desktop.desk;

import roundwright.group.Student;
import roundwright.wording.Wording;

/** What students are called on the screen: their names, or numbers for all but the chosen one while names are hidden. */
public final class Names {
    private static final Wording WORDS = Wording.of("desktop");

    private Names() {}

    /** Whether the screen may be read by others: names are hidden by hand, or a student's own page is shown. */
    public static boolean hidden(Desk desk) {
        return desk.choice().namesHidden() || desk.choice().page() == Page.NEXT;
    }

    public static String of(Student student, Desk desk) {
        boolean chosen = desk.choice().student().equals(java.util.Optional.of(student.id()));
        if (!hidden(desk) || chosen) {
            return student.name();
        }
        int place =
                desk.group().map(group -> group.place(student.id()).orElse(-1)).orElse(-1);
        return WORDS.say("student-numbered", place + 1);
    }
}
