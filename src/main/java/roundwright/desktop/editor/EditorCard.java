package roundwright.desktop.editor;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.KeyEvent;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import roundwright.course.file.FileProblem;
import roundwright.desktop.ask.WhenTyped;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.DeskListener;
import roundwright.desktop.look.Buttons;
import roundwright.desktop.look.Card;
import roundwright.desktop.look.Flowing;
import roundwright.desktop.look.HeadRow;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Text;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.desktop.look.Wrap;
import roundwright.desktop.look.WrittenLine;
import roundwright.wording.Wording;

/** The text of the course with, below it, the problem nearest to the caret and what to write instead. */
public final class EditorCard extends Card implements Flowing {
    private static final Wording WORDS = Wording.of("desktop");
    private static final int PAUSE = 450;
    private static final double HEIGHT = 460;

    private final transient EditorPresenter presenter;
    private final CourseText text;
    private final Text summary = Text.muted("");
    private final Stack foot = new Stack();
    private final transient WhenTyped typing;
    private final transient DeskListener following = matters -> keepUp();
    private transient Optional<FileProblem> shown = Optional.empty();

    /** Goes back to what was there before when it is left. */
    public EditorCard(Desk desk, Runnable leave) {
        super(new BorderLayout());
        presenter = new EditorPresenter(desk, this::read);
        text = new CourseText(presenter);
        Wrap words = new Wrap(1);
        words.add(Text.heading(WORDS.say("editor-head")));
        words.add(summary);
        JButton back = Buttons.quiet(WORDS.say("editor-leave"), () -> {
            take();
            desk.forget(following);
            leave.run();
        });
        add(new HeadRow(words, back), BorderLayout.NORTH);
        add(text.scroll(), BorderLayout.CENTER);
        JPanel below = new JPanel(new BorderLayout());
        below.setOpaque(false);
        below.add(foot);
        add(below, BorderLayout.SOUTH);
        Keys.bind(text, "alt ENTER", this::takeSuggestion);
        Keys.bind(text, "F8", this::nextProblem);
        bindHistory(desk);
        text.addCaretListener(event -> showProblem(presenter.near(text.getCaretPosition())));
        typing = WhenTyped.into(text, PAUSE, this::take);
        desk.listen(following);
        read();
    }

    /** What was typed here is taken back and done again first; where there is none of it, the steps of the file. */
    private void bindHistory(Desk desk) {
        Keys.bind(text, JComponent.WHEN_FOCUSED, Keys.menu(KeyEvent.VK_Z), () -> {
            if (text.canUndo()) {
                text.undoLastAction();
            } else {
                desk.undo();
            }
        });
        Keys.bind(text, JComponent.WHEN_FOCUSED, Keys.menu(KeyEvent.VK_Y), () -> {
            if (text.canRedo()) {
                text.redoLastAction();
            } else {
                desk.redo();
            }
        });
    }

    /** What gets the focus when the card is shown. */
    public JComponent first() {
        return text;
    }

    /** Text that came from elsewhere, as from undo, takes the place of what is shown. */
    private void keepUp() {
        boolean mine = text.getText().equals(presenter.kept());
        if (!mine && !typing.waiting() && presenter.readText().equals(text.getText())) {
            int caret = text.getCaretPosition();
            text.setText(presenter.kept());
            text.discardAllEdits();
            text.setCaretPosition(Math.min(caret, text.getDocument().getLength()));
            take();
        }
    }

    private void take() {
        typing.stop();
        presenter.take(text.getText());
    }

    private void read() {
        summary.setText(presenter.summary());
        text.showProblems();
        showProblem(presenter.near(text.getCaretPosition()));
    }

    private void nextProblem() {
        presenter.after(text.getCaretPosition()).ifPresent(problem -> {
            text.setCaretPosition(Math.min(
                    problem.problem().span().start(), text.getDocument().getLength()));
            showProblem(Optional.of(problem));
        });
    }

    private void takeSuggestion() {
        boolean current = text.getText().equals(presenter.readText());
        if (current) {
            shown.flatMap(presenter::instead).ifPresent(instead -> {
                text.write(instead.at(), instead.words());
                take();
            });
        }
    }

    private void showProblem(Optional<FileProblem> problem) {
        if (problem.equals(shown) && foot.getComponentCount() > 0 == problem.isPresent()) {
            return;
        }
        shown = problem;
        foot.removeAll();
        foot.setBorder(problem.isPresent() ? Space.pad(1.5, 0, 0, 0) : Space.none());
        problem.ifPresent(this::show);
        revalidate();
        repaint();
    }

    private void show(FileProblem problem) {
        Tone tone = EditorPresenter.grave(problem) ? Tone.OVER : Tone.MARIGOLD;
        String words =
                WORDS.say("editor-line", problem.line(), problem.problem().message());
        foot.below(0, new Prose(words, Type.BODY, Type.STRONG, tone));
        presenter.instead(problem).ifPresent(instead -> foot.below(1, new WrittenLine(instead.words())));
        Wrap buttons = foot.below(1, new Wrap(1));
        if (presenter.instead(problem).isPresent()) {
            buttons.add(Buttons.main(WORDS.say("editor-take"), this::takeSuggestion));
        }
        buttons.add(Buttons.quiet(WORDS.say("editor-next"), this::nextProblem));
    }

    @Override
    public int heightFor(int width) {
        return Space.points(HEIGHT);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Space.points(560), Space.points(HEIGHT));
    }
}
