package roundwright.desktop.messages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JTextArea;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.ask.Fields;
import roundwright.desktop.ask.WhenTyped;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.work.Task;
import roundwright.group.RoundPlace;
import roundwright.group.Student;
import roundwright.wording.Wording;
import roundwright.workbook.CountEdit;
import roundwright.workbook.NewCount;

/** Asks for messages; marks in them what was read; shows each count with the words it was read from; files those that are ticked. */
public final class MessagesCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");
    private static final int PAUSE = 300;

    private final transient Desk desk;
    private final transient Asking asking;
    private final JTextArea text = Fields.lines("", 7);
    private final transient MarkedText marked = new MarkedText(text);
    private final JComboBox<String> nameless;
    private final transient WhenTyped typing;
    private final FoundRows found = new FoundRows();
    private final transient List<Student> students;

    public MessagesCard(Desk desk, Asking asking) {
        super(WORDS.say("messages-head"), 680);
        this.desk = desk;
        this.asking = asking;
        this.students = desk.students();
        row(WORDS.say("messages-text"), text, WORDS.say("messages-hint"));
        nameless = row(WORDS.say("messages-nameless"), new JComboBox<>(names()), "");
        nameless.addActionListener(chosen -> read());
        body().below(1, found);
        answer(WORDS.say("messages-answer"), this::file);
        cancel(asking);
        typing = WhenTyped.into(text, PAUSE, this::read);
    }

    private String[] names() {
        List<String> names = new ArrayList<>(List.of(WORDS.say("messages-nobody")));
        students.forEach(student -> names.add(student.name()));
        return names.toArray(String[]::new);
    }

    private Optional<Student> chosen() {
        int place = nameless.getSelectedIndex();
        return place > 0 ? Optional.of(students.get(place - 1)) : Optional.empty();
    }

    /** Puts a text into the field and reads it at once. */
    public void paste(String pasted) {
        text.setText(pasted);
        typing.stop();
        read();
    }

    private void read() {
        String typed = text.getText();
        FoundCounts.Setting setting = new FoundCounts.Setting(
                desk.course().orElseThrow(),
                students,
                desk.place().map(RoundPlace::part).orElse(""),
                chosen(),
                desk.group().orElseThrow()::reports);
        desk.work().submit(new Task<FoundCounts>() {
            @Override
            public FoundCounts away() {
                return FoundCounts.read(typed, setting);
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
        marked.show(read);
        found.show(read);
        revalidate();
        if (getParent() != null) {
            getParent().revalidate();
        }
        repaint();
    }

    private void file() {
        List<NewCount> wanted = found.wanted();
        if (wanted.isEmpty()) {
            wrong(WORDS.say("messages-none"), text);
            return;
        }
        asking.close();
        desk.apply(new CountEdit.ReportCounts(desk.choice().group().orElseThrow(), wanted));
    }
}
