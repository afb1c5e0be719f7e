package roundwright.desktop.planning;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.TextStyle;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.JCheckBox;
import javax.swing.JTextField;
import roundwright.course.calendar.ImpossibleDates;
import roundwright.course.calendar.Meeting;
import roundwright.desktop.ask.AskCard;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.desktop.look.Wrap;
import roundwright.group.Group;
import roundwright.wording.Wording;

/** Asks when and where the group meets, shows the date of every lesson, and saves them as a calendar file. */
public final class DatesCard extends AskCard {
    private static final Wording WORDS = Wording.of("desktop");
    private static final double CELL = 200;

    private final transient Asking asking;
    private final transient Group group;
    private final transient RunKeeping keeping;
    private final transient LessonDates dates;
    private final transient Desk desk;
    private final String key;
    private final JTextField start;
    private final JTextField time;
    private final JTextField zone;
    private final JTextField place;
    private final JTextField off;
    private final transient Map<DayOfWeek, JCheckBox> days = new EnumMap<>(DayOfWeek.class);
    private final Stack shown = new Stack();

    /**
     * @param target asks where to write a file of a suggested name
     */
    public DatesCard(Desk desk, Asking asking, Function<String, Optional<Path>> target) {
        super(WORDS.say("dates-head"), 720);
        this.desk = desk;
        this.asking = asking;
        this.group = desk.group().orElseThrow().group();
        this.dates = new LessonDates(desk);
        this.keeping = new RunKeeping(desk, target);
        Optional<GroupRun> run = dates.run();
        key = run.map(GroupRun::key)
                .filter(known -> !known.isEmpty())
                .orElseGet(() -> UUID.randomUUID().toString());
        start = new JTextField(group.start().map(LocalDate::toString).orElse(""));
        time = new JTextField(
                run.map(GroupRun::time).orElse(LocalTime.of(19, 0)).toString());
        zone = new JTextField(
                run.map(GroupRun::zone).orElseGet(ZoneId::systemDefault).getId());
        place = new JTextField(group.place());
        off = new JTextField(DaysOff.written(run.map(GroupRun::off).orElse(Set.of())));
        addFields(run.map(GroupRun::days).orElse(Set.of()));
        answer(WORDS.say("dates-keep"), () -> read().ifPresent(this::keep));
        other(WORDS.say("dates-save"), () -> read().ifPresent(this::save));
        cancel(asking);
        show(run);
    }

    private void addFields(Set<DayOfWeek> chosen) {
        Wrap fields = new Wrap(1.5).onOneFoot();
        fields.add(new FieldCell(WORDS.say("group-start"), start, WORDS.say("group-start-hint", desk.today()), CELL));
        fields.add(new FieldCell(WORDS.say("dates-time"), time, WORDS.say("dates-time-hint"), CELL));
        fields.add(new FieldCell(WORDS.say("dates-zone"), zone, WORDS.say("dates-zone-hint"), CELL));
        fields.add(new FieldCell(WORDS.say("group-place"), place, WORDS.say("group-place-hint"), CELL));
        fields.add(new FieldCell(WORDS.say("dates-off"), off, WORDS.say("dates-off-hint"), CELL * 2 + 12));
        body().below(0, fields);
        body().below(2, Prose.of(WORDS.say("dates-days"), Type.SMALL_STRONG, Tone.INK));
        Wrap week = new Wrap(1);
        for (DayOfWeek day : DayOfWeek.values()) {
            JCheckBox box = new JCheckBox(day.getDisplayName(TextStyle.FULL, Locale.UK), chosen.contains(day));
            box.addActionListener(event -> look());
            days.put(day, box);
            week.add(box);
        }
        body().below(0.75, week);
        shown.setBorder(Space.pad(0, 0, 0, 0));
        body().below(2, shown);
        for (JTextField field : List.of(start, time, zone, off)) {
            field.addFocusListener(new java.awt.event.FocusAdapter() {
                @Override
                public void focusLost(java.awt.event.FocusEvent event) {
                    look();
                }
            });
        }
    }

    @Override
    public javax.swing.JComponent first() {
        return start;
    }

    /** Shows the dates by what is typed, where that can be read. */
    private void look() {
        show(read());
    }

    private void show(Optional<GroupRun> run) {
        shown.removeAll();
        run.flatMap(this::meetings).ifPresent(meetings -> {
            for (Meeting meeting : meetings) {
                shown.below(0.5, Prose.body(keeping.line(meeting)));
            }
            keeping.remarks(run.get(), changed(), meetings).forEach(text -> shown.below(0.75, Prose.muted(text)));
        });
        revalidate();
        if (getParent() != null) {
            getParent().revalidate();
        }
        repaint();
    }

    private Optional<List<Meeting>> meetings(GroupRun run) {
        if (changed().start().isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(dates.meetings(desk.course().orElseThrow(), changed(), run, 0));
        } catch (ImpossibleDates impossible) {
            wrong(impossible.getMessage(), start);
            return Optional.empty();
        }
    }

    /** The group with the start and the place that are typed. */
    private Group changed() {
        Optional<LocalDate> day = DaysOff.date(start.getText());
        return new Group(
                group.id(), group.course(), group.name(), day, place.getText().strip());
    }

    /** The run as it is typed; empty, and said, where it cannot be read. */
    private Optional<GroupRun> read() {
        wrong("", this);
        Optional<Set<LocalDate>> free = DaysOff.read(off.getText());
        Set<DayOfWeek> chosen = days.entrySet().stream()
                .filter(day -> day.getValue().isSelected())
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
        if (DaysOff.date(start.getText()).isEmpty()) {
            wrong(WORDS.say("date-wrong", start.getText(), desk.today()), start);
        } else if (free.isEmpty()) {
            wrong(WORDS.say("dates-off-wrong", desk.today()), off);
        } else {
            return clock().map(time -> new GroupRun(chosen, time, zoneOf(), free.get(), key));
        }
        return Optional.empty();
    }

    private ZoneId zoneOf() {
        return ZoneId.of(zone.getText().strip());
    }

    private Optional<LocalTime> clock() {
        try {
            zoneOf();
        } catch (DateTimeException unknown) {
            wrong(WORDS.say("dates-zone-wrong", zone.getText()), zone);
            return Optional.empty();
        }
        try {
            String typed = time.getText().strip().replace('.', ':');
            return Optional.of(LocalTime.parse(typed.length() == 4 ? "0" + typed : typed));
        } catch (DateTimeException noTime) {
            wrong(WORDS.say("dates-time-wrong", time.getText()), time);
            return Optional.empty();
        }
    }

    private void keep(GroupRun run) {
        if (meetings(run).isPresent()) {
            asking.close();
            keeping.keep(changed(), run, () -> {});
        }
    }

    private void save(GroupRun run) {
        meetings(run).ifPresent(meetings -> {
            asking.close();
            keeping.keep(changed(), run, () -> keeping.save(changed(), run, meetings));
        });
    }
}
