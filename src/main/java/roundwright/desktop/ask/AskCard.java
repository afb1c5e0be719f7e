package roundwright.desktop.ask;

import java.awt.Component;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import roundwright.desktop.look.Buttons;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.PageCard;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.desktop.look.Wrap;
import roundwright.wording.Wording;

/** A card that asks for something: a heading, rows of fields with their labels, and what can be answered. Enter answers. */
public class AskCard extends PageCard implements Question {
    private static final Wording WORDS = Wording.of("desktop");

    private final Stack body;
    private final Wrap answers = new Wrap(1);
    private final Prose wrong = new Prose("", Type.SECOND, Type.SMALL_STRONG, Tone.MARIGOLD);
    private final double width;
    private JComponent first = this;

    /** A card of a width in points. */
    public AskCard(String heading, double width) {
        this(heading, width, new Stack());
    }

    private AskCard(String heading, double width, Stack body) {
        super(body);
        this.body = body;
        this.width = width;
        setBorder(Space.pad(3, 3.5, 3, 3.5));
        Stack head = new Stack();
        head.below(0, Prose.of(heading, Type.LINE, Tone.INK));
        head.setBorder(Space.pad(0, 0, 2, 0));
        top(head);
        Stack foot = new Stack();
        foot.below(0, wrong);
        foot.below(1, answers);
        foot.setBorder(Space.pad(2, 0, 0, 0));
        foot(foot);
        getAccessibleContext().setAccessibleName(heading);
    }

    @Override
    public JComponent card() {
        return this;
    }

    @Override
    public double width() {
        return width;
    }

    /** A question is as high as it is long. */
    @Override
    protected double leastBody() {
        return 0;
    }

    @Override
    public JComponent first() {
        return first;
    }

    /** Another component that is to get the focus when the card is shown. */
    protected void first(JComponent component) {
        first = component;
    }

    /** The rows of the card. */
    protected Stack body() {
        return body;
    }

    /** A sentence above the fields. */
    protected void say(String sentence) {
        body.below(body.getComponentCount() == 0 ? 0 : 1.5, Prose.muted(sentence));
    }

    /** A field with its label and, where there is more to say, a sentence below it. All three are tied together. */
    protected <C extends JComponent> C row(String label, C field, String hint) {
        body.below(
                body.getComponentCount() == 0 ? 0 : 2,
                Prose.of(label, Type.SMALL_STRONG, Tone.INK).nameOf(field));
        body.below(0.75, field instanceof JTextArea area ? Fields.scrolled(area) : field);
        if (!hint.isEmpty()) {
            body.below(0.5, Prose.muted(hint));
            field.getAccessibleContext().setAccessibleDescription(hint);
            field.setToolTipText(hint);
        }
        if (first == this) {
            first = field;
        }
        return field;
    }

    /** The answer that most people give; Enter gives it, too. */
    protected JButton answer(String words, Runnable does) {
        JButton button = Buttons.main(words, does);
        answers.add(button);
        Keys.bindAround(this, "ENTER", () -> button.doClick(0));
        Keys.bindAround(this, "ctrl ENTER", () -> button.doClick(0));
        if (first == this) {
            first = button;
        }
        return button;
    }

    /** Another answer. */
    protected JButton other(String words, Runnable does) {
        JButton button = Buttons.quiet(words, does);
        answers.add(button);
        return button;
    }

    /** The answer that changes nothing. */
    protected void cancel(Asking asking) {
        other(WORDS.say("cancel"), asking::close);
    }

    /** Says why the answer cannot be taken. */
    protected void wrong(String sentence, Component field) {
        wrong.setText(sentence);
        getAccessibleContext().setAccessibleDescription(sentence);
        revalidate();
        if (getParent() != null) {
            getParent().revalidate();
        }
        if (field.isShowing()) {
            field.requestFocusInWindow();
        }
    }
}
