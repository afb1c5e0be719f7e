package roundwright.desktop.window;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import roundwright.course.file.CourseFile;
import roundwright.desktop.action.Deed;
import roundwright.desktop.action.Deeds;
import roundwright.desktop.ask.AboutCard;
import roundwright.desktop.ask.AddGroupCard;
import roundwright.desktop.ask.AddStudentsCard;
import roundwright.desktop.ask.Asking;
import roundwright.desktop.ask.KeysCard;
import roundwright.desktop.ask.NoteCard;
import roundwright.desktop.ask.Question;
import roundwright.desktop.ask.RegisterCard;
import roundwright.desktop.ask.StudentCard;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Matter;
import roundwright.desktop.desk.Page;
import roundwright.desktop.find.FindCard;
import roundwright.desktop.insight.Insights;
import roundwright.desktop.look.Theme;
import roundwright.desktop.messages.MessagesCard;
import roundwright.desktop.planning.DatesCard;
import roundwright.desktop.planning.RestCard;
import roundwright.desktop.planning.SplitCard;
import roundwright.desktop.welcome.PastePatternCard;
import roundwright.desktop.welcome.SamplesCard;
import roundwright.desktop.work.Task;
import roundwright.group.RoundPlace;
import roundwright.group.Student;
import roundwright.wording.Wording;
import roundwright.workbook.CourseEdit;
import roundwright.workbook.WholeFile;
import roundwright.workbook.Workbook;

/** Says what each deed does in this window, and which can be done now. */
final class WindowDeeds {
    private static final Wording WORDS = Wording.of("desktop");

    /** What is done here besides turning to the pages. */
    private static final Set<Deed> MINE = EnumSet.of(
            Deed.UNDO,
            Deed.REDO,
            Deed.HIDE_NAMES,
            Deed.LARGER,
            Deed.SMALLER,
            Deed.USUAL_SIZE,
            Deed.LIGHT_OR_DARK,
            Deed.OPEN_COURSE,
            Deed.SAVE_COURSE,
            Deed.STUDENT_BEFORE,
            Deed.STUDENT_AFTER,
            Deed.EDIT_STUDENT,
            Deed.NOTE,
            Deed.KEYS,
            Deed.ABOUT,
            Deed.FIND,
            Deed.SAMPLE_COURSE,
            Deed.PASTE_PATTERN,
            Deed.PLAN_REST,
            Deed.DATES,
            Deed.SPLIT,
            Deed.ADD_GROUP,
            Deed.ADD_STUDENTS,
            Deed.REGISTER,
            Deed.PASTE_MESSAGES);

    private final Desk desk;
    private final Insights insights;
    private final Deeds deeds;
    private final Asking asking;
    private final Frame frame;

    WindowDeeds(Desk desk, Insights insights, Deeds deeds, Asking asking, Frame frame) {
        this.insights = insights;
        this.desk = desk;
        this.deeds = deeds;
        this.asking = asking;
        this.frame = frame;
    }

    void bind() {
        for (Page page : Page.values()) {
            deeds.on(PageSwitch.deedOf(page), () -> desk.choosePage(page));
        }
        MINE.forEach(deed -> deeds.on(deed, () -> perform(deed)));
        desk.listen(this::changed);
        changed(Set.of(Matter.values()));
    }

    private void perform(Deed deed) {
        switch (deed) {
            case UNDO -> desk.undo();
            case REDO -> desk.redo();
            case HIDE_NAMES -> desk.hideNames(!desk.choice().namesHidden());
            case LARGER -> look(Theme::zoomIn);
            case SMALLER -> look(Theme::zoomOut);
            case USUAL_SIZE -> look(Theme::zoomReset);
            case LIGHT_OR_DARK -> look(() -> (Theme.dark() ? Theme.LIGHT : Theme.DARK).install(Theme.zoom()));
            case OPEN_COURSE -> frame.chooseFile().ifPresent(this::openCourse);
            case SAVE_COURSE -> saveCourse();
            case STUDENT_BEFORE -> turn(-1);
            case STUDENT_AFTER -> turn(1);
            case EDIT_STUDENT ->
                desk.student().ifPresent(student -> asking.ask(new StudentCard(desk, asking, student)));
            case NOTE -> desk.student().ifPresent(student -> desk.place().ifPresent(place -> note(student, place)));
            default -> asking.ask(question(deed));
        }
    }

    private Question question(Deed deed) {
        return switch (deed) {
            case KEYS -> new KeysCard(asking);
            case ABOUT -> new AboutCard(asking, kept());
            case FIND -> new FindCard(desk, asking);
            case SAMPLE_COURSE -> new SamplesCard(desk, asking);
            case PASTE_PATTERN -> new PastePatternCard(desk, asking);
            case PLAN_REST -> new RestCard(desk, asking, insights, frame.longWork());
            case DATES -> new DatesCard(desk, asking, frame::chooseTarget);
            case SPLIT -> new SplitCard(desk, asking);
            case ADD_GROUP -> new AddGroupCard(desk, asking);
            case ADD_STUDENTS -> new AddStudentsCard(desk, asking);
            case REGISTER -> new RegisterCard(desk, asking);
            case PASTE_MESSAGES -> new MessagesCard(desk, asking);
            default -> throw new IllegalArgumentException("not done here: " + deed);
        };
    }

    private void note(Student student, RoundPlace place) {
        asking.ask(new NoteCard(desk, asking, student, place));
    }

    private AboutCard.Kept kept() {
        Workbook workbook = desk.workbook();
        return new AboutCard.Kept(workbook.file(), workbook.backupFolder(), frame.settings());
    }

    private void look(Runnable change) {
        change.run();
        frame.rememberLook();
    }

    private void turn(int by) {
        List<Student> students = desk.students();
        int now = desk.student().map(students::indexOf).orElse(0);
        desk.chooseStudent(
                students.get(Math.floorMod(now + by, students.size())).id());
    }

    private void changed(Set<Matter> matters) {
        boolean course = desk.course().isPresent();
        boolean group = course && desk.group().isPresent();
        boolean student = group && desk.student().isPresent();
        for (Page page : Page.values()) {
            deeds.enable(PageSwitch.deedOf(page), course);
        }
        deeds.enable(Deed.SAVE_COURSE, course);
        deeds.enable(Deed.FIND, course);
        deeds.enable(Deed.SPLIT, course);
        deeds.enable(Deed.DATES, group);
        deeds.enable(Deed.PLAN_REST, student);
        deeds.enable(Deed.EDIT_PATTERN, course);
        deeds.enable(Deed.ADD_GROUP, course);
        deeds.enable(Deed.ADD_STUDENTS, course);
        deeds.enable(Deed.REGISTER, student);
        deeds.enable(Deed.EDIT_STUDENT, student);
        deeds.enable(Deed.PASTE_MESSAGES, student);
        deeds.enable(Deed.STUDENT_BEFORE, student);
        deeds.enable(Deed.STUDENT_AFTER, student);
        deeds.enable(Deed.NOTE, student && desk.place().isPresent());
        deeds.enable(Deed.HIDE_NAMES, student);
        deeds.call(Deed.HIDE_NAMES, desk.choice().namesHidden() ? WORDS.say("show-names") : Deed.HIDE_NAMES.words());
    }

    private void openCourse(Path path) {
        desk.work().submit(new Task<CourseFile>() {
            @Override
            public CourseFile away() throws IOException {
                return CourseFile.read(Files.readString(path, StandardCharsets.UTF_8));
            }

            @Override
            public void here(CourseFile file) {
                var id = desk.workbook().newCourse();
                String name = file.course().name().isBlank()
                        ? String.valueOf(path.getFileName())
                        : file.course().name();
                desk.apply(
                        new CourseEdit.AddCourse(id, name, file.text()), () -> desk.chooseCourse(id, Optional.empty()));
            }

            @Override
            public void failed(Exception failure) {
                desk.tell(WORDS.say("cannot-read-file", path));
            }
        });
    }

    private void saveCourse() {
        desk.course().ifPresent(course -> {
            String suggested =
                    course.kept().name().toLowerCase(java.util.Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
            frame.chooseTarget(suggested + ".md")
                    .ifPresent(path -> write(path, course.kept().text()));
        });
    }

    private void write(Path path, String text) {
        desk.work().submit(new Task<Void>() {
            @Override
            public Void away() throws IOException {
                WholeFile.write(path, text);
                return null;
            }

            @Override
            public void here(Void nothing) {
                desk.tell(WORDS.say("course-saved", path));
            }

            @Override
            public void failed(Exception failure) {
                desk.tell(WORDS.say("cannot-write-file", path));
            }
        });
    }
}
