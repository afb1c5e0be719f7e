package roundwright.desktop.counts;

import java.awt.Dimension;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.Space;
import roundwright.group.RoundStanding;
import roundwright.wording.Wording;

/** The grid of students by rounds. Typing a number and Enter reports a count; arrows move; a few letters say the rest. */
final class CountsTable extends JTable {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double ROW = 42;
    private static final double LOW_ROW = 32;
    private static final double ROUND_WIDTH = 84;
    private static final double LEAST_WIDTH = 74;

    private final transient CountsPresenter presenter;
    private final transient CountsModel model;
    private boolean low;
    private int headed = -1;

    CountsTable(CountsPresenter presenter) {
        super(new CountsModel(presenter));
        this.presenter = presenter;
        this.model = (CountsModel) getModel();
        setDefaultRenderer(RoundStanding.class, new CountCellView(presenter));
        setShowGrid(false);
        setIntercellSpacing(new Dimension(0, 0));
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellSelectionEnabled(true);
        setOpaque(false);
        setFillsViewportHeight(false);
        getTableHeader().setReorderingAllowed(false);
        getTableHeader().setResizingAllowed(false);
        getTableHeader().setOpaque(false);
        getAccessibleContext().setAccessibleName(WORDS.say("counts-table"));
        getAccessibleContext().setAccessibleDescription(WORDS.say("counts-keys-told"));
        putClientProperty("JTable.autoStartsEdit", false);
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(javax.swing.KeyStroke.getKeyStroke("F2"), "none");
        Keys.leaveByTab(this);
        bindKeys();
        addMouseListener(new Mouse());
        addFocusListener(new Keys.RepaintOnFocus(this));
        dress();
    }

    private void bindKeys() {
        Keys.bind(this, "UP", () -> shown(() -> presenter.move(-1, 0)));
        Keys.bind(this, "DOWN", () -> shown(() -> presenter.move(1, 0)));
        Keys.bind(this, "LEFT", () -> shown(() -> presenter.move(0, -1)));
        Keys.bind(this, "RIGHT", () -> shown(() -> presenter.move(0, 1)));
        Keys.bind(this, "HOME", () -> shown(() -> presenter.choose(presenter.chosenRow(), 0)));
        Keys.bind(
                this,
                "END",
                () -> shown(() -> presenter.choose(
                        presenter.chosenRow(), presenter.columns().size() - 1)));
        Keys.bind(this, "ENTER", () -> shown(presenter::enter));
        Keys.bind(this, "ESCAPE", () -> shown(presenter::cancel));
        Keys.bind(this, "BACK_SPACE", () -> shown(presenter::rubOut));
        Keys.bind(this, "DELETE", () -> shown(presenter::takeBack));
        addKeyListener(new KeyAdapter() {
            @Override
            public void keyTyped(KeyEvent event) {
                typed(event.getKeyChar());
            }
        });
    }

    /** Says what pasting into the grid does. */
    void pasteBy(Runnable paste) {
        Keys.bind(this, WHEN_FOCUSED, Keys.menu(KeyEvent.VK_V), () -> shown(paste));
    }

    /** What a typed character does. */
    void typed(char character) {
        switch (Character.toLowerCase(character)) {
            case '=' -> shown(presenter::asPattern);
            case 'p', '*' -> shown(presenter::pulledBack);
            case 'u', '/' -> shown(presenter::unfinished);
            case 'd' -> shown(() -> presenter.onward(Onward.DOWN));
            case 'r' -> shown(() -> presenter.onward(Onward.RIGHT));
            default -> shown(() -> presenter.type(character));
        }
    }

    private void shown(Runnable change) {
        change.run();
        showChosen();
    }

    /** Takes in what has changed. */
    void refresh() {
        follow();
        getTableHeader().repaint();
    }

    /** Another cell may be chosen, and with it other rounds. */
    void follow() {
        if (model.refresh()) {
            model.fireTableStructureChanged();
            dress();
        }
        showChosen();
    }

    /** Keeps the chosen cell in sight. */
    private void showChosen() {
        int row = presenter.chosenRow();
        int column = presenter.chosenColumn();
        if (row >= 0 && column >= 0 && row < getRowCount() && column < getColumnCount()) {
            setRowSelectionInterval(row, row);
            setColumnSelectionInterval(column, column);
            if (isShowing()) {
                scrollRectToVisible(getCellRect(row, column, true));
            }
            // what is being typed stands there
            repaint(getCellRect(row, column, true));
        }
        if (column != headed) {
            headed = column;
            getTableHeader().repaint();
        }
    }

    /** With little height the rows are low, so that more students are seen. */
    void setLow(boolean low) {
        if (this.low != low) {
            this.low = low;
            setRowHeight(rowPixels());
        }
    }

    private int rowPixels() {
        return Space.points(low ? LOW_ROW : ROW);
    }

    private void dress() {
        setRowHeight(rowPixels());
        RoundHeadView head = new RoundHeadView(presenter);
        for (int i = 0; i < getColumnModel().getColumnCount(); i++) {
            var column = getColumnModel().getColumn(i);
            column.setHeaderRenderer(head);
            column.setMinWidth(Space.points(LEAST_WIDTH));
            column.setPreferredWidth(Space.points(ROUND_WIDTH));
        }
    }

    /** Where the rounds need more width than there is, the grid scrolls sideways. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() == null || getParent().getWidth() >= leastWidth();
    }

    private int leastWidth() {
        return Space.points(LEAST_WIDTH * getColumnCount());
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (model != null) {
            dress();
        }
    }

    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            int row = rowAtPoint(event.getPoint());
            int column = columnAtPoint(event.getPoint());
            if (row >= 0) {
                shown(() -> presenter.choose(row, column));
            }
        }
    }
}
