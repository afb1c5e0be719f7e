package roundwright.desktop.ask;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import javax.swing.JTextField;
import roundwright.desktop.desk.Desk;
import roundwright.group.Group;
import roundwright.wording.Wording;
import roundwright.workbook.GroupEdit;

/** Asks what a new group is called, when it begins and where it meets. */
public final class AddGroupCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient Desk desk;
    private final transient Asking asking;
    private final JTextField name = new JTextField();
    private final JTextField start = new JTextField();
    private final JTextField place = new JTextField();

    public AddGroupCard(Desk desk, Asking asking) {
        super(WORDS.say("group-head"), 460);
        this.desk = desk;
        this.asking = asking;
        row(WORDS.say("group-name"), name, WORDS.say("group-name-hint"));
        row(WORDS.say("group-start"), start, WORDS.say("group-start-hint", desk.today()));
        row(WORDS.say("group-place"), place, WORDS.say("group-place-hint"));
        answer(WORDS.say("group-answer"), this::add);
        cancel(asking);
    }

    private void add() {
        if (name.getText().isBlank()) {
            wrong(WORDS.say("name-needed"), name);
            return;
        }
        try {
            Optional<LocalDate> day = start.getText().isBlank()
                    ? Optional.empty()
                    : Optional.of(LocalDate.parse(start.getText().strip()));
            Group group = new Group(
                    desk.workbook().newGroup(),
                    desk.choice().course().orElseThrow(),
                    name.getText().strip(),
                    day,
                    place.getText().strip());
            asking.close();
            desk.apply(new GroupEdit.AddGroup(group), () -> desk.chooseGroup(group.id()));
        } catch (DateTimeParseException notADate) {
            wrong(WORDS.say("date-wrong", start.getText(), desk.today()), start);
        }
    }
}
