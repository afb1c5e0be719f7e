package roundwright.desktop.tables;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Text;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.group.counts.Column;
import roundwright.group.counts.ColumnMatch;
import roundwright.group.counts.Table;
import roundwright.wording.Wording;

/** The preview of a table, and below it what the chosen column is taken for, to be put right. */
final class ColumnMatching {
    private static final Wording WORDS = Wording.of("desktop");
    private static final int MOST_TITLES = 10;

    private final Consumer<ColumnMatch> matched;
    private final PreviewTable preview = new PreviewTable(column -> showColumn());
    private final Text about = new Text("", Type.SMALL_STRONG, Tone.INK);
    private final JComboBox<ColumnWords.Meaning> meanings;
    private final JComboBox<Integer> titles = new JComboBox<>();
    private ColumnMatch match = new ColumnMatch(0, List.of());
    private Table table = new Table("", List.of(), 0);
    private boolean showing;

    /** A labelled row of a card. */
    interface Rows {
        JComponent row(String label, JComponent field, String hint);
    }

    ColumnMatching(List<ColumnWords.Meaning> all, Consumer<ColumnMatch> matched) {
        this.matched = matched;
        this.meanings = new JComboBox<>(all.toArray(new ColumnWords.Meaning[0]));
        for (int above = 0; above <= MOST_TITLES; above++) {
            titles.addItem(above);
        }
        about.setLabelFor(meanings);
        meanings.addActionListener(event -> {
            if (!showing && meanings.getSelectedItem() instanceof ColumnWords.Meaning meaning) {
                matched.accept(match.with(chosen(), meaning.column()));
            }
        });
        titles.addActionListener(event -> {
            if (!showing) {
                matched.accept(new ColumnMatch(titles.getSelectedIndex(), match.columns()));
            }
        });
    }

    /** Lays everything into a card. */
    void into(Stack body, Rows rows) {
        body.below(body.getComponentCount() == 0 ? 0 : 2, Prose.muted(WORDS.say("import-preview-told")));
        body.below(1, preview.scrolled());
        body.below(1.5, about);
        body.below(0.5, meanings);
        rows.row(WORDS.say("import-titles"), titles, "");
    }

    JComponent preview() {
        return preview;
    }

    private int chosen() {
        return Math.max(0, preview.getSelectedColumn());
    }

    void show(Table shown, ColumnMatch taken) {
        table = shown;
        match = taken;
        preview.show(shown, taken);
        showing = true;
        titles.setSelectedIndex(Math.min(MOST_TITLES, taken.headingRows()));
        showing = false;
        showColumn();
    }

    private void showColumn() {
        int column = chosen();
        boolean there = column < match.columns().size();
        meanings.setEnabled(there);
        if (there) {
            Column taken = match.columns().get(column);
            String heading = match.headingRows() == 0
                    ? ""
                    : table.rows().get(match.headingRows() - 1).cell(column);
            about.setText(
                    heading.isEmpty()
                            ? WORDS.say("import-column", column + 1)
                            : WORDS.say("import-column-named", column + 1, heading));
            meanings.getAccessibleContext().setAccessibleName(about.getText());
            showing = true;
            select(new ColumnWords.Meaning(taken));
            showing = false;
        }
    }

    /** A round whose part is not said, and a student who is not in the list, are meanings of their own. */
    private void select(ColumnWords.Meaning meaning) {
        meanings.setSelectedItem(meaning);
        if (!meaning.equals(meanings.getSelectedItem())) {
            meanings.addItem(meaning);
            meanings.setSelectedItem(meaning);
        }
    }
}
