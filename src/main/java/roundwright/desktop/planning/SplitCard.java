package roundwright.desktop.planning;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import javax.swing.JButton;
import javax.swing.JTextField;
import roundwright.course.planning.PlanSettings;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.ask.WhenTyped;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Wrap;
import roundwright.desktop.work.Task;
import roundwright.wording.Wording;

/**
 * Splits the pattern into lessons anew. Whatever is typed, the best split for it is worked out at once and shown beside the
 * lessons as they are; Enter takes it.
 */
public final class SplitCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double CELL = 205;

    private final transient Desk desk;
    private final transient Asking asking;
    private final transient OpenCourse course;
    private final JTextField sessions = new JTextField();
    private final JTextField minutes;
    private final JTextField pace;
    private final JTextField mostNew;
    private final JTextField homework;
    private final Stack shown = new Stack();
    private final JButton take;
    private transient Optional<SplitAnew> found = Optional.empty();
    private int asked;

    public SplitCard(Desk desk, Asking asking) {
        super(WORDS.say("split-head"), 720);
        this.desk = desk;
        this.asking = asking;
        this.course = desk.course().orElseThrow();
        PlanSettings settings = remembered();
        minutes = new JTextField(String.valueOf(Math.round(settings.minutes())));
        pace = new JTextField(Numbers.shortest(settings.pace()));
        mostNew = new JTextField(String.valueOf(settings.mostNew()));
        homework = new JTextField(String.valueOf(Math.round(settings.homeworkMinutes())));
        say(WORDS.say("split-how"));
        body().below(2, fields());
        body().below(2, shown);
        take = answer(WORDS.say("split-take"), this::take);
        cancel(asking);
        workOut();
    }

    private Wrap fields() {
        Wrap fields = new Wrap(1.5).onOneFoot();
        fields.add(cell(WORDS.say("split-sessions"), sessions, WORDS.say("split-sessions-hint")));
        fields.add(cell(WORDS.say("split-minutes"), minutes, WORDS.say("split-minutes-hint")));
        fields.add(cell(WORDS.say("split-pace"), pace, WORDS.say("split-pace-hint")));
        fields.add(cell(WORDS.say("split-new"), mostNew, WORDS.say("split-new-hint")));
        fields.add(cell(WORDS.say("split-homework"), homework, WORDS.say("split-homework-hint")));
        return fields;
    }

    private FieldCell cell(String label, JTextField field, String hint) {
        WhenTyped.atOnce(field, this::workOut);
        return new FieldCell(label, field, hint, CELL);
    }

    @Override
    public javax.swing.JComponent first() {
        return sessions;
    }

    private String memory() {
        return "split-" + course.kept().id().value();
    }

    /** What the course was split by last. */
    private PlanSettings remembered() {
        PlanSettings settings = course.planSettings();
        return desk.view()
                .setting(memory())
                .filter(text -> text.matches("\\d{1,2} \\d{1,3}"))
                .map(text -> text.split(" "))
                .map(numbers -> new PlanSettings(
                        settings.minutes(),
                        settings.pace(),
                        Integer.parseInt(numbers[0]),
                        Integer.parseInt(numbers[1])))
                .orElse(settings);
    }

    /** What is typed, as a wish; empty, and said, where it is none. */
    private Optional<SplitWish> wish() {
        boolean free = sessions.getText().isBlank();
        OptionalInt lessons = free ? OptionalInt.empty() : Numbers.whole(sessions, 1, 60);
        OptionalInt length = Numbers.whole(minutes, 20, 600);
        OptionalDouble speed = Numbers.decimal(pace, 1, 60);
        OptionalInt fresh = Numbers.whole(mostNew, 1, 9);
        OptionalInt home = Numbers.whole(homework, 0, 300);
        if (!free && lessons.isEmpty()) {
            refuse(WORDS.say("split-sessions-wrong"));
        } else if (length.isEmpty()) {
            refuse(WORDS.say("split-minutes-wrong"));
        } else if (speed.isEmpty()) {
            refuse(WORDS.say("split-pace-wrong"));
        } else if (fresh.isEmpty()) {
            refuse(WORDS.say("split-new-wrong"));
        } else if (home.isEmpty()) {
            refuse(WORDS.say("split-homework-wrong"));
        } else {
            return Optional.of(new SplitWish(
                    lessons,
                    new PlanSettings(length.getAsInt(), speed.getAsDouble(), fresh.getAsInt(), home.getAsInt())));
        }
        return Optional.empty();
    }

    private void refuse(String sentence) {
        asked++;
        found = Optional.empty();
        take.setEnabled(false);
        shown.removeAll();
        wrong(sentence, this);
    }

    private void workOut() {
        Optional<SplitWish> wish = wish();
        if (wish.isEmpty()) {
            return;
        }
        int number = ++asked;
        take.setEnabled(false);
        wrong("", this);
        desk.work().submit(new Task<SplitAnew>() {
            @Override
            public SplitAnew away() throws Exception {
                return SplitAnew.of(course, wish.get());
            }

            @Override
            public void here(SplitAnew result) {
                if (number == asked) {
                    show(result);
                }
            }

            @Override
            public void failed(Exception failure) {
                if (number == asked) {
                    refuse(String.valueOf(failure.getMessage()));
                }
            }
        });
    }

    private void show(SplitAnew result) {
        found = Optional.of(result);
        take.setEnabled(!result.same());
        shown.removeAll();
        result.summary().forEach(line -> shown.below(0.5, Prose.body(line)));
        if (result.same()) {
            shown.below(1, Prose.body(WORDS.say("split-same")));
        }
        for (SplitAnew.Row row : result.rows()) {
            shown.below(1.25, Prose.body(row.anew()));
            row.before().ifPresent(before -> shown.below(0.25, Prose.muted(before)));
        }
        revalidate();
        if (getParent() != null) {
            getParent().revalidate();
        }
        repaint();
    }

    private void take() {
        found.filter(result -> !result.same()).ifPresent(result -> {
            asking.close();
            PlanSettings settings = result.wish().settings();
            desk.workbook().remember(memory(), settings.mostNew() + " " + Math.round(settings.homeworkMinutes()));
            String what = WORDS.say("edit-split", result.plan().lessons().size());
            TakePlan.take(desk, what, open -> result.text(), () -> {});
        });
    }
}
