package roundwright.desktop.find;

import java.awt.Component;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.ListCellRenderer;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.ask.WhenTyped;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.look.Keys;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Text;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.wording.Wording;

/** The field and what it finds. Up and down choose, Enter goes there. */
public final class FindCard extends AskCard {
    private static final int PAUSE = 60;
    private static final Wording WORDS = Wording.of("desktop");

    private final transient Desk desk;
    private final transient Asking asking;
    private final transient Finder finder;
    private final JTextField field = new JTextField();
    private final DefaultListModel<Found> found = new DefaultListModel<>();
    private final JList<Found> list = new JList<>(found);
    private final Prose nothing = Prose.muted(WORDS.say("find-what"));

    public FindCard(Desk desk, Asking asking) {
        super(WORDS.say("find-head"), 520);
        this.desk = desk;
        this.asking = asking;
        this.finder = new Finder(desk);
        row(WORDS.say("find-field"), field, "");
        field.getAccessibleContext().setAccessibleDescription(WORDS.say("find-what"));
        body().below(1, nothing);
        body().below(1, list);
        list.setCellRenderer(new Row());
        list.setFocusable(false);
        list.setVisible(false);
        list.setOpaque(false);
        list.getAccessibleContext().setAccessibleName(WORDS.say("find-results"));
        Keys.bindAround(this, "DOWN", () -> move(1));
        Keys.bindAround(this, "UP", () -> move(-1));
        list.addMouseListener(new java.awt.event.MouseAdapter() {
            @Override
            public void mouseReleased(java.awt.event.MouseEvent event) {
                go();
            }
        });
        WhenTyped.into(field, PAUSE, this::look);
        answer(WORDS.say("find-go"), this::go);
        cancel(asking);
    }

    /** The field, for those who type into it from elsewhere. */
    public JTextField field() {
        return field;
    }

    private void move(int by) {
        if (!found.isEmpty()) {
            int index = Math.max(0, Math.min(found.size() - 1, list.getSelectedIndex() + by));
            list.setSelectedIndex(index);
            field.getAccessibleContext()
                    .setAccessibleDescription(found.get(index).toString());
        }
    }

    private void go() {
        Found chosen = list.getSelectedValue();
        if (chosen == null) {
            wrong(WORDS.say("find-nothing"), field);
            return;
        }
        asking.close();
        chosen.go().run();
        Finder.showPage(desk, chosen);
    }

    private void look() {
        found.clear();
        finder.find(field.getText()).forEach(found::addElement);
        list.setVisible(!found.isEmpty());
        list.setSelectedIndex(0);
        String said = field.getText().isBlank() ? WORDS.say("find-what") : WORDS.say("find-nothing");
        nothing.setText(found.isEmpty() ? said : WORDS.say("found", found.size()));
        revalidate();
        if (getParent() != null) {
            getParent().revalidate();
        }
        repaint();
    }

    private static final class Row implements ListCellRenderer<Found> {
        private final Text text = new Text("", Type.BODY, Tone.INK);

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Found> list, Found value, int index, boolean chosen, boolean focus) {
            JLabel row = text;
            row.setText(value.more().isEmpty() ? value.words() : value.words() + "   " + value.more());
            row.setIcon(value.glyph().icon());
            row.setIconTextGap(Space.of(1));
            row.setOpaque(chosen);
            row.setBackground(Tone.WASH.color());
            row.setBorder(Space.pad(0.9, 1, 0.9, 1));
            row.getAccessibleContext().setAccessibleName(value.toString());
            return row;
        }
    }
}
