package roundwright.desktop.strip;

import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntConsumer;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.Rounded;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;

/**
 * The strip on the screen. A round is chosen with the mouse, or with the arrow keys, Home and End, and a lesson at a time with
 * Page Up and Page Down; what is chosen is told in words.
 */
public final class StripPanel extends JComponent {
    private static final int MARGIN = 30;
    private static final int SMALLEST_FOR_NAMES = 44;

    private final transient IntConsumer chosenByHand;
    private transient StripPiece piece = new StripPiece(java.util.List.of(), java.util.List.of());
    private transient StripMarks marks = StripMarks.NONE;
    private transient StripWords words = new StripWords(piece, marks);
    private final transient EdgeDrag drag = new EdgeDrag();
    private final transient EdgeKeys edgeKeys = new EdgeKeys();
    private int chosen;
    private OptionalInt hovered = OptionalInt.empty();

    /** Tells the listener of every column that a person chooses here. */
    public StripPanel(IntConsumer chosenByHand) {
        this.chosenByHand = chosenByHand;
        setFocusable(true);
        setToolTipText("");
        Mouse mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        bindKeys();
        addFocusListener(new Keys.RepaintOnFocus(this));
    }

    /** Lets lessons' edges be moved: with the mouse, or with Alt and the arrow keys; with Shift as well, where a lesson ends. */
    public void edges(LessonEdges edges) {
        drag.use(edges);
        edgeKeys.use(edges);
    }

    public void show(StripPiece newPiece, StripMarks newMarks) {
        if (newPiece == piece && newMarks.equals(marks)) {
            return;
        }
        hovered = newPiece == piece ? hovered : OptionalInt.empty();
        piece = newPiece;
        marks = newMarks;
        words = new StripWords(piece, marks);
        chosen = Math.max(0, Math.min(chosen, piece.columns().size() - 1));
        edgeKeys.follow(piece, chosen).ifPresent(this::choose);
        repaint();
    }

    /** Shows a column as chosen without telling the listener. */
    public void setChosen(int column) {
        if (column == chosen) {
            return;
        }
        String before = words.of(chosen);
        chosen = column;
        getAccessibleContext()
                .firePropertyChange(AccessibleContext.ACCESSIBLE_DESCRIPTION_PROPERTY, before, words.of(chosen));
        repaint();
    }

    public int chosen() {
        return chosen;
    }

    private void bindKeys() {
        Keys.bind(this, "LEFT", () -> choose(chosen - 1));
        Keys.bind(this, "RIGHT", () -> choose(chosen + 1));
        Keys.bind(this, "HOME", () -> choose(0));
        Keys.bind(this, "END", () -> choose(piece.columns().size() - 1));
        Keys.bind(this, "ESCAPE", () -> {
            drag.giveUp();
            repaint();
        });
        Keys.bind(this, "alt LEFT", () -> edgeKeys.moveStart(piece, chosen, -1));
        Keys.bind(this, "alt RIGHT", () -> edgeKeys.moveStart(piece, chosen, 1));
        Keys.bind(this, "alt shift LEFT", () -> edgeKeys.moveEnd(piece, chosen, -1));
        Keys.bind(this, "alt shift RIGHT", () -> edgeKeys.moveEnd(piece, chosen, 1));
        Keys.bind(this, "PAGE_UP", () -> choose(lessonEdge(-1)));
        Keys.bind(this, "PAGE_DOWN", () -> choose(lessonEdge(1)));
    }

    /** The first column of the lesson before or after. */
    private int lessonEdge(int direction) {
        int from = piece.bracketOf(chosen).map(StripPiece.Bracket::from).orElse(chosen);
        return piece.brackets().stream()
                .mapToInt(StripPiece.Bracket::from)
                .filter(first -> direction < 0 ? first < from : first > chosen)
                .reduce((one, other) -> direction < 0 ? other : one)
                .orElse(chosen);
    }

    private void choose(int column) {
        edgeKeys.letGo();
        if (!piece.columns().isEmpty()) {
            setChosen(Math.max(0, Math.min(column, piece.columns().size() - 1)));
            chosenByHand.accept(chosen);
        }
    }

    private StripRooms rooms() {
        return StripRooms.of(getHeight());
    }

    private StripGeometry geometry() {
        StripRooms rooms = rooms();
        int margin = Space.points(MARGIN);
        return new StripGeometry(piece, margin, getWidth() - 2.0 * margin, rooms.top(), rooms.body());
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Space.points(900), Space.points(206));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        Rounded sheet = new Rounded(getWidth(), getHeight(), Space.arc());
        smooth.setColor(Tone.SURFACE.color());
        sheet.fill(smooth);
        smooth.setColor((hasFocus() ? Tone.PINE : Tone.LINE).color());
        sheet.draw(smooth, hasFocus() ? Space.points(2) : 1);
        if (!piece.columns().isEmpty()) {
            paintPiece(smooth);
        }
        smooth.dispose();
    }

    private void paintPiece(Graphics2D graphics) {
        StripGeometry geometry = geometry();
        StripRooms rooms = rooms();
        StripPainter painter = new StripPainter(graphics, geometry);
        painter.columns();
        new FlagPainter(graphics, geometry, rooms, getWidth() - Space.points(8)).paint(marks.flags());
        LessonPainter lessons = new LessonPainter(graphics, geometry, rooms);
        piece.brackets().forEach(bracket -> lessons.paint(bracket, bracket.lesson() == marks.lesson()));
        if (geometry.bodyHeight() > Space.points(SMALLEST_FOR_NAMES)) {
            painter.partNames(chosen);
        }
        marks.troubles().forEach(painter::trouble);
        hovered.ifPresent(column -> painter.outline(column, Tone.MUTED, 1.2));
        new StudentPainter(graphics, geometry).paint(marks.students());
        painter.outline(chosen, Tone.PINE, 2.2);
        drag.paint(graphics, geometry, rooms, getWidth());
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        return piece.columns().isEmpty() ? null : words.of(geometry().columnAt(event.getX()));
    }

    /** What the chosen column shows, in words. */
    public String chosenInWords() {
        return words.of(chosen);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleStrip();
        }
        return accessibleContext;
    }

    private final class AccessibleStrip extends AccessibleJComponent {
        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.LIST;
        }

        @Override
        public String getAccessibleName() {
            return words.whole();
        }

        @Override
        public String getAccessibleDescription() {
            return words.of(chosen) + edgeKeys.told(piece, chosen);
        }
    }

    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            if (isShowing()) {
                requestFocusInWindow();
            }
            edgeAt(event).ifPresentOrElse(drag::hold, () -> mouseDragged(event));
        }

        private Optional<StripPiece.Bracket> edgeAt(MouseEvent event) {
            return piece.columns().isEmpty()
                    ? Optional.empty()
                    : drag.at(geometry(), rooms(), event.getX(), event.getY());
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            if (drag.held()) {
                drag.drawTo(geometry(), event.getX());
                repaint();
            } else if (!piece.columns().isEmpty()) {
                choose(geometry().columnAt(event.getX()));
            }
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            drag.letGo();
            repaint();
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            boolean edge = edgeAt(event).isPresent();
            setCursor(Cursor.getPredefinedCursor(edge ? Cursor.E_RESIZE_CURSOR : Cursor.DEFAULT_CURSOR));
            hover(
                    piece.columns().isEmpty() || edge
                            ? OptionalInt.empty()
                            : OptionalInt.of(geometry().columnAt(event.getX())));
        }

        @Override
        public void mouseExited(MouseEvent event) {
            hover(OptionalInt.empty());
        }

        private void hover(OptionalInt column) {
            if (!column.equals(hovered)) {
                hovered = column;
                repaint();
            }
        }
    }
}
