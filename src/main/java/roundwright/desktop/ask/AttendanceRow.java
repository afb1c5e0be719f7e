package roundwright.desktop.ask;

import java.awt.Dimension;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import roundwright.desktop.look.Flowing;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Text;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.desktop.look.Wrap;
import roundwright.group.Attendance;
import roundwright.group.Student;
import roundwright.wording.Wording;

/** One student of the register: a name and how they stood. */
final class AttendanceRow extends JPanel implements Flowing {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double NAME = 130;

    private final transient Student student;
    private final Text name;
    private final Wrap choices = new Wrap(1);
    private final ButtonGroup group = new ButtonGroup();
    private final Map<Attendance, JRadioButton> buttons = new EnumMap<>(Attendance.class);

    AttendanceRow(Student student) {
        super(null);
        this.student = student;
        this.name = new Text(student.name(), Type.BODY, Tone.INK);
        setOpaque(false);
        add(name);
        add(choices);
        for (Attendance attendance : Attendance.values()) {
            String words = WORDS.say(
                    "attendance." + attendance.name().toLowerCase(Locale.ROOT).replace('_', '-'));
            JRadioButton button = new JRadioButton(words);
            button.getAccessibleContext().setAccessibleName(student.name() + ": " + words);
            buttons.put(attendance, button);
            group.add(button);
            choices.add(button);
        }
    }

    Student student() {
        return student;
    }

    void choose(Optional<Attendance> attendance) {
        group.clearSelection();
        attendance.map(buttons::get).ifPresent(button -> button.setSelected(true));
    }

    Optional<Attendance> chosen() {
        return buttons.entrySet().stream()
                .filter(entry -> entry.getValue().isSelected())
                .map(Map.Entry::getKey)
                .findFirst();
    }

    @Override
    public int heightFor(int width) {
        return choices.heightFor(width - Space.points(NAME));
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : Space.points(480);
        return new Dimension(width, heightFor(width));
    }

    @Override
    public void doLayout() {
        int left = Space.points(NAME);
        int line = buttons.get(Attendance.THERE).getPreferredSize().height;
        name.setBounds(0, 0, left, line);
        choices.setBounds(left, 0, getWidth() - left, getHeight());
    }
}
