package roundwright.desktop.editor;

import java.awt.Graphics;
import java.awt.image.BufferedImage;
import java.util.List;
import javax.swing.JScrollPane;
import javax.swing.border.Border;
import org.fife.ui.rsyntaxtextarea.RSyntaxDocument;
import org.fife.ui.rsyntaxtextarea.RSyntaxTextArea;
import org.fife.ui.rsyntaxtextarea.parser.AbstractParser;
import org.fife.ui.rsyntaxtextarea.parser.DefaultParseResult;
import org.fife.ui.rsyntaxtextarea.parser.DefaultParserNotice;
import org.fife.ui.rsyntaxtextarea.parser.ParseResult;
import org.fife.ui.rsyntaxtextarea.parser.ParserNotice;
import roundwright.course.file.FileProblem;
import roundwright.desktop.look.FocusEdge;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.notation.Span;
import roundwright.wording.Wording;

/** The text with line numbers, problems underlined and the counts of rounds in the margin. */
final class CourseText extends RSyntaxTextArea {
    private static final Wording WORDS = Wording.of("desktop");

    private final transient EditorPresenter presenter;
    private final transient Marks marks = new Marks();
    private final JScrollPane scroll;
    private final MarginView margin = new MarginView(this);

    CourseText(EditorPresenter presenter) {
        this.presenter = presenter;
        this.scroll = new JScrollPane(this);
        setLineWrap(true);
        setWrapStyleWord(true);
        setCodeFoldingEnabled(false);
        setAutoIndentEnabled(false);
        setBracketMatchingEnabled(false);
        setParserDelay(Integer.MAX_VALUE);
        addParser(marks);
        scroll.setRowHeaderView(margin);
        scroll.setFocusable(false);
        addFocusListener(new Keys.RepaintOnFocus(scroll));
        getAccessibleContext().setAccessibleName(WORDS.say("editor-text"));
        setText(presenter.kept());
        setCaretPosition(0);
        discardAllEdits();
        dress();
    }

    /** The text measures its font before it is first painted; without a window there is nothing to measure on but a picture. */
    @Override
    public Graphics getGraphics() {
        Graphics own = super.getGraphics();
        return own != null ? own : new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).getGraphics();
    }

    JScrollPane scroll() {
        return scroll;
    }

    private void dress() {
        // the library finds the place of a line by the margin, and paints it by the border: they must say the same
        Border room = Space.pad(0.75, 1, 0.75, 1);
        setBorder(room);
        setMargin(room.getBorderInsets(this));
        setFont(Type.BODY.font());
        setBackground(Tone.SURFACE.color());
        setForeground(Tone.INK.color());
        setCaretColor(Tone.INK.color());
        setSelectionColor(Tone.WASH.color());
        setUseSelectedTextColor(false);
        setCurrentLineHighlightColor(Tone.BACKGROUND.color());
        getSyntaxScheme().restoreDefaults(Type.BODY.font());
        for (int i = 0; i < getSyntaxScheme().getStyleCount(); i++) {
            if (getSyntaxScheme().getStyle(i) != null) {
                getSyntaxScheme().getStyle(i).foreground = Tone.INK.color();
            }
        }
        scroll.setBorder(new FocusEdge(this));
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (scroll != null) {
            dress();
        }
    }

    /** Shows what was found in the text as it was read; nothing while the text has gone on since. */
    void showProblems() {
        forceReparsing(marks);
        boolean current = getText().equals(presenter.readText());
        margin.show(current ? presenter.counts() : List.of());
    }

    /** Writes words in place of a stretch of the text. */
    void write(Span at, String words) {
        replaceRange(words, at.start(), at.end());
    }

    /** Underlines what the presenter found; it reads nothing itself. */
    private final class Marks extends AbstractParser {
        @Override
        public ParseResult parse(RSyntaxDocument document, String style) {
            DefaultParseResult result = new DefaultParseResult(this);
            if (getText().equals(presenter.readText())) {
                presenter.problems().forEach(problem -> result.addNotice(notice(problem)));
            }
            return result;
        }

        private ParserNotice notice(FileProblem problem) {
            Span span = problem.problem().span();
            DefaultParserNotice notice = new DefaultParserNotice(
                    this, problem.problem().message(), problem.line() - 1, span.start(), Math.max(1, span.length()));
            boolean grave = EditorPresenter.grave(problem);
            notice.setLevel(grave ? ParserNotice.Level.ERROR : ParserNotice.Level.INFO);
            notice.setColor((grave ? Tone.OVER : Tone.MARIGOLD).color());
            return notice;
        }
    }
}
