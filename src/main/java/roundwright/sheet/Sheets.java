package roundwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import roundwright.course.Lesson;
import roundwright.group.Student;
import roundwright.mistakes.help.GroupPicture;
import roundwright.sheet.content.CountsSheet;
import roundwright.sheet.content.CourseWork;
import roundwright.sheet.content.FinishSheet;
import roundwright.sheet.content.GroupReports;
import roundwright.sheet.content.OverviewSheet;
import roundwright.sheet.content.ProgressSheet;
import roundwright.sheet.content.RegisterSheet;
import roundwright.sheet.content.StudentSheet;
import roundwright.sheet.content.TeacherSheet;
import roundwright.sheet.markup.Element;
import roundwright.sheet.pdf.PdfWriter;
import roundwright.sheet.phone.PhonePage;
import roundwright.sheet.style.SheetStyle;
import roundwright.sheet.style.TypeSetting;
import roundwright.wording.Wording;

/**
 * Works out which documents an order comes to. {@code Sheets.of(SheetOrder.of(course))} lists them at once; each is made only when its bytes
 * are asked for.
 */
public final class Sheets {
    private static final Wording WORDS = Wording.of("sheet");

    private final SheetOrder order;
    private final CourseWork work;
    private final FileNames names;
    private final SheetStyle plain;
    private final Lazy<Optional<GroupPicture>> picture;
    private final List<Sheet> sheets = new ArrayList<>();

    private Sheets(SheetOrder order) {
        this.order = order;
        this.work = CourseWork.of(order.course());
        this.names = new FileNames(order.course().name());
        this.plain = new SheetStyle(order.paper(), TypeSetting.PLAIN, false);
        this.picture = new Lazy<>(() -> order.group().map(group -> group.picture(order.course())));
    }

    /** The documents of an order, in the order in which a teacher uses them. */
    public static List<Sheet> of(SheetOrder order) {
        Sheets sheets = new Sheets(order);
        sheets.course();
        sheets.work.lessons().stream()
                .filter(lesson -> order.lesson().isEmpty() || order.lesson().getAsInt() == lesson.number())
                .forEach(sheets::lesson);
        order.group().ifPresent(sheets::students);
        return List.copyOf(sheets.sheets);
    }

    private void course() {
        boolean all = order.lesson().isEmpty();
        if (all) {
            add(
                    SheetKind.OVERVIEW,
                    "overview",
                    WORDS.say("over-overview"),
                    () -> OverviewSheet.of(work, plain, order.group()));
            add(
                    SheetKind.REGISTER,
                    "register",
                    WORDS.say("register"),
                    () -> RegisterSheet.of(work, plain, order.group()));
        }
        if (order.group().isEmpty() && wanted(SheetKind.PHONE)) {
            phone(Optional.empty(), names.of("phone", ".html"), WORDS.say("phone"));
        }
        order.group()
                .filter(group -> all)
                .ifPresent(group ->
                        add(SheetKind.COUNTS, "counts", WORDS.say("counts"), () -> CountsSheet.of(work, plain, group)));
    }

    private void lesson(Lesson lesson) {
        int size = order.group().map(group -> group.students().size()).orElse(0);
        add(
                SheetKind.TEACHER,
                names.lesson(lesson.number()) + "-teacher",
                WORDS.say("title-teacher", lesson.number()),
                () -> TeacherSheet.of(work, lesson, plain, picture.get(), size));
        for (SheetStyle style : order.styles()) {
            SheetStyle onPaper = new SheetStyle(order.paper(), style.type(), style.leftHanded());
            add(
                    SheetKind.STUDENT,
                    names.lesson(lesson.number()) + "-student" + style.suffix(),
                    WORDS.say("title-student", lesson.number()),
                    () -> StudentSheet.of(work, lesson, onPaper));
        }
    }

    private void students(GroupReports group) {
        for (int i = 0; i < group.students().size(); i++) {
            Student student = group.students().get(i);
            String own = names.student(i + 1, student.name());
            SheetStyle style = new SheetStyle(
                    order.paper(), student.largePrint() ? TypeSetting.LARGE : TypeSetting.PLAIN, student.leftHanded());
            if (order.lesson().isEmpty()) {
                add(
                        SheetKind.PROGRESS,
                        "progress-" + own,
                        WORDS.say("title-progress", student.name()),
                        () -> ProgressSheet.of(work, group, student, style));
                add(
                        SheetKind.FINISH,
                        "last-page-" + own,
                        WORDS.say("title-finish", student.name()),
                        () -> FinishSheet.of(work, group, student, plain));
            }
            if (wanted(SheetKind.PHONE)) {
                phone(
                        Optional.of(student),
                        names.of("phone-" + own, ".html"),
                        WORDS.say("title-phone", student.name()));
            }
        }
    }

    private void phone(Optional<Student> student, String file, String title) {
        sheets.add(new Sheet(file, title, SheetKind.PHONE, () -> PhonePage.bytes(work, order.lesson(), student)));
    }

    private boolean wanted(SheetKind kind) {
        return order.kinds().contains(kind);
    }

    private void add(SheetKind kind, String file, String title, Supplier<Element> html) {
        if (wanted(kind)) {
            sheets.add(new Sheet(names.of(file, ".pdf"), title, kind, () -> PdfWriter.write(html.get())));
        }
    }
}
