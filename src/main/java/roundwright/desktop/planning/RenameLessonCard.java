package roundwright.desktop.planning;

import javax.swing.JTextField;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Asking;
import roundwright.wording.Wording;

/** Asks for a lesson's title. */
final class RenameLessonCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");

    RenameLessonCard(LessonsByHand lessons, Asking asking) {
        super(WORDS.say("rename-lesson-head", lessons.lesson().orElseThrow().number()), 460);
        String now = lessons.lesson().flatMap(lesson -> lesson.name()).orElse("");
        JTextField name = row(WORDS.say("lesson-title"), new JTextField(now), WORDS.say("lesson-title-hint"));
        name.selectAll();
        answer(WORDS.say("keep"), () -> {
            asking.close();
            lessons.rename(name.getText());
        });
        cancel(asking);
    }
}
