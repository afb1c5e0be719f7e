package roundwright.desktop.tables;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.group.counts.Column;
import roundwright.group.counts.ColumnMatch;
import roundwright.group.counts.Table;
import roundwright.wording.Wording;

/** The first rows of a table as they stand in the file, and above each column what it is taken for. A column can be chosen. */
final class PreviewTable extends JTable {
    private static final Wording WORDS = Wording.of("desktop");
    private static final int ROWS = 40;
    private static final int ROWS_SEEN = 6;
    private static final double COLUMN_WIDTH = 112;
    private static final double LINE = 26;
    private static final double IN = 0.75;

    private boolean showing;

    PreviewTable(IntConsumer chosen) {
        super(new Model(new Table("", List.of(), 0), new ColumnMatch(0, List.of())));
        setAutoResizeMode(AUTO_RESIZE_OFF);
        setCellSelectionEnabled(true);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setDefaultRenderer(Object.class, new CellLook());
        getTableHeader().setReorderingAllowed(false);
        getAccessibleContext().setAccessibleName(WORDS.say("import-preview"));
        getAccessibleContext().setAccessibleDescription(WORDS.say("import-preview-told"));
        Keys.leaveByTab(this);
        addFocusListener(new Keys.RepaintOnFocus(this));
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), "none");
        getColumnModel().getSelectionModel().addListSelectionListener(event -> {
            if (!showing && getSelectedColumn() >= 0) {
                chosen.accept(getSelectedColumn());
            }
        });
    }

    /** The chosen column has a ring while the keys go to it. */
    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        if (hasFocus() && getSelectedColumn() >= 0) {
            Rectangle ring = getCellRect(0, getSelectedColumn(), true);
            int wide = Space.points(2);
            graphics.setColor(Tone.PINE.color());
            for (int i = 0; i < wide; i++) {
                graphics.drawRect(ring.x + i, i, ring.width - 1 - 2 * i, getHeight() - 1 - 2 * i);
            }
        }
    }

    /** Shows a table as it is taken; the column that was chosen stays so where it is there. */
    void show(Table table, ColumnMatch match) {
        int chosen = getSelectedColumn();
        showing = true;
        setModel(new Model(table, match));
        setRowHeight(Space.points(LINE));
        HeadLook head = new HeadLook(match);
        for (int column = 0; column < getColumnCount(); column++) {
            getColumnModel().getColumn(column).setHeaderRenderer(head);
            getColumnModel().getColumn(column).setPreferredWidth(Space.points(COLUMN_WIDTH));
        }
        choose(Math.max(0, chosen));
        showing = false;
    }

    void choose(int column) {
        if (column < getColumnCount() && getRowCount() > 0) {
            changeSelection(Math.max(0, getSelectedRow()), column, false, false);
        }
    }

    /** In a pane that scrolls, a few rows high. */
    JComponent scrolled() {
        JScrollPane scroll = new JScrollPane(this) {
            @Override
            public Dimension getPreferredSize() {
                return new Dimension(
                        Space.points(COLUMN_WIDTH * 4),
                        Space.points(LINE * (ROWS_SEEN + 1))
                                + getInsets().top * 2
                                + getHorizontalScrollBar().getPreferredSize().height);
            }
        };
        scroll.setFocusable(false);
        return scroll;
    }

    private static final class Model extends AbstractTableModel {
        private final transient Table table;
        private final transient ColumnMatch match;

        Model(Table table, ColumnMatch match) {
            this.table = table;
            this.match = match;
        }

        @Override
        public int getRowCount() {
            return Math.min(ROWS, table.rows().size());
        }

        @Override
        public int getColumnCount() {
            return match.columns().size();
        }

        @Override
        public Object getValueAt(int row, int column) {
            return table.rows().get(row).cell(column);
        }

        @Override
        public String getColumnName(int column) {
            return ColumnWords.of(match.columns().get(column));
        }
    }

    /** Headings and titles are muted: no counts are looked for in them. */
    private static final class CellLook extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focus, int row, int column) {
            super.getTableCellRendererComponent(table, value, selected, focus, row, column);
            ColumnMatch match = ((Model) table.getModel()).match;
            boolean read =
                    row >= match.headingRows() && !match.columns().get(column).equals(Column.PASSED_OVER);
            setBorder(Space.pad(0, IN, 0, IN));
            if (!selected) {
                setForeground((read ? Tone.INK : Tone.MUTED).color());
            }
            return this;
        }
    }

    private static final class HeadLook extends DefaultTableCellRenderer {
        private final transient ColumnMatch match;

        HeadLook(ColumnMatch match) {
            this.match = match;
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focus, int row, int column) {
            super.getTableCellRendererComponent(table, value, false, false, row, column);
            boolean chosen = column == table.getSelectedColumn();
            boolean used = !match.columns().get(column).equals(Column.PASSED_OVER);
            setFont(Type.SMALL_STRONG.font());
            setForeground((used ? Tone.PINE : Tone.MUTED).color());
            setBackground((chosen ? Tone.WASH : Tone.SURFACE).color());
            setBorder(BorderFactory.createCompoundBorder(
                    BorderFactory.createMatteBorder(0, 0, Space.points(1), 0, Tone.LINE.color()),
                    Space.pad(0.5, IN, 0.5, IN)));
            return this;
        }
    }
}
