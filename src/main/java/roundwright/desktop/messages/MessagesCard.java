package roundwright.desktop.messages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JCheckBox;
import javax.swing.JTextArea;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.ask.Fields;
import roundwright.desktop.ask.WhenTyped;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Stack;
import roundwright.desktop.messages.FoundCounts.FoundCount;
import roundwright.desktop.work.Task;
import roundwright.group.RoundPlace;
import roundwright.group.Student;
import roundwright.wording.Wording;
import roundwright.workbook.CountEdit;
import roundwright.workbook.NewCount;

/** Asks for messages; shows each count found in them with the words it was read from; files those that are ticked. */
public final class MessagesCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");
    private static final int PAUSE = 300;

    private final transient Desk desk;
    private final transient Asking asking;
    private final JTextArea text = Fields.lines("", 7);
    private final Stack found = new Stack();
    private final transient Map<JCheckBox, NewCount> ticked = new LinkedHashMap<>();

    public MessagesCard(Desk desk, Asking asking) {
        super(WORDS.say("messages-head"), 680);
        this.desk = desk;
        this.asking = asking;
        row(WORDS.say("messages-text"), text, WORDS.say("messages-hint"));
        body().below(1.5, found);
        answer(WORDS.say("messages-answer"), this::file);
        cancel(asking);
        WhenTyped.into(text, PAUSE, this::read);
    }

    private void read() {
        String typed = text.getText();
        OpenCourse course = desk.course().orElseThrow();
        List<Student> students = desk.students();
        String part = desk.place().map(RoundPlace::part).orElse("");
        desk.work().submit(new Task<FoundCounts>() {
            @Override
            public FoundCounts away() {
                return FoundCounts.read(typed, course, students, part);
            }

            @Override
            public void here(FoundCounts read) {
                show(read);
            }

            @Override
            public void failed(Exception failure) {
                wrong(String.valueOf(failure.getMessage()), text);
            }
        });
    }

    private void show(FoundCounts read) {
        found.removeAll();
        ticked.clear();
        read.counts().forEach(this::addCount);
        if (read.counts().isEmpty()) {
            found.below(0, Prose.muted(WORDS.say("messages-none")));
        }
        if (!read.undecided().isEmpty()) {
            found.below(
                    1.5,
                    Prose.body(WORDS.say("messages-undecided", read.undecided().size())));
            read.undecided().forEach(words -> found.below(0.5, Prose.muted("“" + words + "”")));
        }
        revalidate();
        if (getParent() != null) {
            getParent().revalidate();
        }
        repaint();
    }

    private void addCount(FoundCount count) {
        String expected = count.expected().isPresent() && count.expected().getAsInt() != count.count()
                ? WORDS.say("messages-instead", count.expected().getAsInt())
                : "";
        String words = WORDS.say(
                "messages-count",
                count.student().name(),
                count.place().part(),
                count.place().round(),
                count.count(),
                expected);
        JCheckBox box = new JCheckBox(words, count.sure());
        box.setToolTipText(count.source());
        ticked.put(box, count.filed());
        found.below(1, box);
        found.below(
                0.25,
                Prose.muted("“" + count.source() + "”" + (count.sure() ? "" : " " + WORDS.say("messages-unsure"))));
    }

    private void file() {
        List<NewCount> wanted = new ArrayList<>();
        ticked.forEach((box, count) -> {
            if (box.isSelected()) {
                wanted.add(count);
            }
        });
        if (wanted.isEmpty()) {
            wrong(WORDS.say("messages-none"), text);
            return;
        }
        asking.close();
        desk.apply(new CountEdit.ReportCounts(desk.choice().group().orElseThrow(), wanted));
    }
}
