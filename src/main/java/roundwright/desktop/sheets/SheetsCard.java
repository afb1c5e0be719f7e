package roundwright.desktop.sheets;

import java.awt.print.Pageable;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import roundwright.course.Lesson;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.desk.Desk;
import roundwright.sheet.SheetKind;
import roundwright.sheet.SheetOrder;
import roundwright.wording.Wording;

/** Asks which sheets are wanted, of which lesson, and where they are to be written. */
public final class SheetsCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");
    private static final Set<SheetKind> NEED_A_GROUP =
            EnumSet.of(SheetKind.COUNTS, SheetKind.PROGRESS, SheetKind.FINISH);
    private static final Set<SheetKind> USUAL = EnumSet.of(SheetKind.TEACHER, SheetKind.STUDENT);

    private final transient SheetMaker maker;
    private final transient Asking asking;
    private final transient Supplier<Optional<Path>> chooseFolder;
    private final transient Consumer<Pageable> print;
    private final JComboBox<Wanted> lessons = new JComboBox<>();
    private final transient Map<SheetKind, JCheckBox> kinds = new EnumMap<>(SheetKind.class);

    /** One lesson, or all of them. */
    private record Wanted(Optional<Lesson> lesson) {
        @Override
        public String toString() {
            return lesson.map(found -> WORDS.say("lesson-named", found.number(), found.name()))
                    .orElseGet(() -> WORDS.say("sheets-all-lessons"));
        }
    }

    public SheetsCard(
            Desk desk,
            SheetMaker maker,
            Asking asking,
            Supplier<Optional<Path>> chooseFolder,
            Consumer<Pageable> print) {
        super(WORDS.say("sheets-head"), 480);
        this.maker = maker;
        this.asking = asking;
        this.chooseFolder = chooseFolder;
        this.print = print;
        lessons.addItem(new Wanted(Optional.empty()));
        desk.course()
                .orElseThrow()
                .course()
                .lessons()
                .forEach(lesson -> lessons.addItem(new Wanted(Optional.of(lesson))));
        row(WORDS.say("sheets-lesson"), lessons, "");
        for (SheetKind kind : SheetKind.values()) {
            if (desk.group().isPresent() || !NEED_A_GROUP.contains(kind)) {
                String words = WORDS.say("sheet-kind." + kind.name().toLowerCase(Locale.ROOT));
                JCheckBox box = new JCheckBox(words, USUAL.contains(kind));
                kinds.put(kind, box);
                body().below(kinds.size() == 1 ? 2 : 0.75, box);
            }
        }
        answer(WORDS.say("sheets-print"), this::print);
        other(WORDS.say("sheets-answer"), this::make);
        cancel(asking);
    }

    /** What is ticked; empty, with a sentence that says so, where nothing is. */
    private Optional<SheetOrder> order() {
        Set<SheetKind> wanted = EnumSet.noneOf(SheetKind.class);
        kinds.forEach((kind, box) -> {
            if (box.isSelected()) {
                wanted.add(kind);
            }
        });
        if (wanted.isEmpty()) {
            wrong(WORDS.say("sheets-none"), lessons);
            return Optional.empty();
        }
        SheetOrder all = maker.order(wanted);
        Wanted lesson = (Wanted) lessons.getSelectedItem();
        return Optional.of(lesson.lesson().map(one -> all.lesson(one.number())).orElse(all));
    }

    private void print() {
        order().ifPresent(order -> {
            asking.close();
            maker.preview(order, print);
        });
    }

    private void make() {
        order().ifPresent(order -> chooseFolder.get().ifPresent(folder -> {
            asking.close();
            maker.write(order, folder);
        }));
    }
}
