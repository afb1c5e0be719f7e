package roundwright.desktop.welcome;

import javax.swing.JTextArea;
import javax.swing.JTextField;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.ask.Fields;
import roundwright.desktop.ask.WhenTyped;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.LinesToMend;
import roundwright.desktop.look.Prose;
import roundwright.desktop.work.Task;
import roundwright.group.CourseId;
import roundwright.pattern.Pattern;
import roundwright.wording.Wording;
import roundwright.workbook.CourseEdit;

/** Asks for a pattern as it is written somewhere, and makes a course of it; says at once what was understood. */
public final class PastePatternCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");
    private static final int PAUSE = 300;

    private final transient Desk desk;
    private final transient Asking asking;
    private final JTextField name = new JTextField();
    private final JTextField minutes = new JTextField("90");
    private final JTextArea pattern = Fields.lines("", 11);
    private final Prose understood = Prose.body("");
    private String suggested = "";

    public PastePatternCard(Desk desk, Asking asking) {
        super(WORDS.say("paste-head"), 640);
        this.desk = desk;
        this.asking = asking;
        row(WORDS.say("paste-pattern"), pattern, WORDS.say("paste-hint"));
        body().below(1, understood);
        row(WORDS.say("paste-name"), name, WORDS.say("paste-name-hint"));
        row(WORDS.say("paste-minutes"), minutes, WORDS.say("paste-minutes-hint"));
        answer(WORDS.say("paste-answer"), this::make);
        cancel(asking);
        WhenTyped.into(pattern, PAUSE, this::read);
    }

    private void read() {
        String text = pattern.getText();
        suggestName(text);
        desk.work().submit(new Task<String>() {
            @Override
            public String away() {
                return text.isBlank() ? "" : told(NewCourses.pattern(text));
            }

            @Override
            public void here(String told) {
                understood.setText(told);
                revalidate();
            }

            @Override
            public void failed(Exception failure) {
                understood.setText(String.valueOf(failure.getMessage()));
            }
        });
    }

    /** The pattern's own heading, as long as the teacher has not thought of a name. */
    private void suggestName(String text) {
        if (name.getText().equals(suggested)) {
            suggested = NewCourses.heading(text).orElse("");
            name.setText(suggested);
        }
    }

    /** How much was understood: rounds, parts, terms, and what the first trouble is. */
    static String told(Pattern pattern) {
        int rounds =
                pattern.parts().stream().mapToInt(part -> part.rounds().size()).sum();
        if (rounds == 0) {
            return WORDS.say("paste-no-rounds");
        }
        return WORDS.say("paste-read", rounds, pattern.parts().size(), pattern.terms())
                + " "
                + LinesToMend.told(pattern).orElseGet(() -> WORDS.say("paste-all-right"));
    }

    private void make() {
        if (name.getText().isBlank()) {
            wrong(WORDS.say("name-needed"), name);
        } else if (pattern.getText().isBlank()) {
            wrong(WORDS.say("paste-nothing"), pattern);
        } else if (!minutes.getText().strip().matches("\\d{2,3}")) {
            wrong(WORDS.say("paste-minutes-wrong"), minutes);
        } else {
            make(
                    name.getText().strip(),
                    pattern.getText(),
                    Integer.parseInt(minutes.getText().strip()));
        }
    }

    private void make(String course, String pasted, int session) {
        asking.close();
        desk.work().submit(new Task<String>() {
            @Override
            public String away() {
                return NewCourses.text(course, pasted, session);
            }

            @Override
            public void here(String text) {
                CourseId id = desk.workbook().newCourse();
                desk.apply(
                        new CourseEdit.AddCourse(id, course, text),
                        () -> desk.chooseCourse(id, java.util.Optional.empty()));
            }

            @Override
            public void failed(Exception failure) {
                desk.tell(String.valueOf(failure.getMessage()));
            }
        });
    }
}
