package roundwright.growth;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import roundwright.course.Course;
import roundwright.course.file.CourseFile;
import roundwright.course.planning.PlanItems;
import roundwright.course.planning.PlanRequest;
import roundwright.course.planning.PlanSettings;
import roundwright.course.planning.Planner;
import roundwright.group.Student;
import roundwright.group.StudentId;
import roundwright.group.messages.MessagesReader;
import roundwright.group.messages.MessagesSpeed;
import roundwright.mistakes.Explanations;
import roundwright.mistakes.TrialClass;
import roundwright.mistakes.story.Rates;
import roundwright.notation.Terms;
import roundwright.pattern.GrowingPattern;
import roundwright.pattern.Line;
import roundwright.pattern.PatternReader;
import roundwright.sheet.Sheet;
import roundwright.sheet.SheetKind;
import roundwright.sheet.SheetOrder;
import roundwright.sheet.Sheets;
import roundwright.sheet.content.GroupReports;
import roundwright.technique.FirstUses;
import roundwright.technique.Techniques;
import roundwright.workbook.LargeGroup;
import roundwright.workbook.Workbook;

/**
 * How everything that takes long grows with what it is given. The yardstick is the exponent that the work should have, told beside the one
 * that it has: 1, in proportion to the input, but for the items of the planner, which weighs every item against all that may share its
 * session: 2.
 *
 * <p>{@code java -cp target/roundwright.jar roundwright.growth.Growths [beginning of a name]}
 */
public final class Growths {
    private static final PlanSettings SETTINGS = new PlanSettings(90, 8, PlanSettings.USUAL_MOST_NEW, 0);

    private final Map<String, Callable<Void>> all = new LinkedHashMap<>();

    private Growths() {
        reading();
        explanations();
        planner();
        sheets();
        messages();
        opening();
    }

    public static void main(String[] arguments) throws Exception {
        String wanted = arguments.length > 0 ? arguments[0] : "";
        for (Map.Entry<String, Callable<Void>> growth : new Growths().all.entrySet()) {
            if (growth.getKey().startsWith(wanted)) {
                growth.getValue().call();
            }
        }
    }

    private void add(String name, int first, double aim, Growth.Work work) {
        all.put(name, () -> {
            Growth.print(name, first, aim, work);
            return null;
        });
    }

    private void reading() {
        add("reading: rounds", 500, 1, rounds -> read(GrowingPattern.of(rounds)));
        add("reading: rounds, one without a count", 500, 1, rounds -> read(
                GrowingPattern.of(rounds).replace(" (6)\n", "\n")));
        add("reading: steps in one line", 100, 1, steps -> read("Rnd 1: " + "sc, inc, ".repeat(steps / 2) + "sc"));
    }

    private static Callable<?> read(String text) {
        return () -> {
            PatternReader.readBare(Optional.empty(), text).parts().forEach(part -> part.lines().forEach(Line::words));
            return null;
        };
    }

    private void explanations() {
        add("explanations: students", 5, 1, students -> explain(new TrialClass(students, 60, 40, 7)));
        add("explanations: rounds", 20, 1, rounds -> explain(new TrialClass(5, rounds, 40, 7)));
        add("explanations: stitches of a round", 16, 1, stitches -> explain(new TrialClass(5, 60, stitches, 7)));
    }

    private static Callable<?> explain(TrialClass trial) {
        Set<StudentId> students = trial.students();
        return () -> {
            Explanations explanations = Explanations.of(trial.pattern(), trial.reports(), id -> Rates.STORY);
            return students.stream().mapToInt(id -> explanations.of(id).size()).sum();
        };
    }

    private void planner() {
        add("planner: items, as many sessions as are best", 50, 2, items -> plan(items, OptionalInt.empty()));
        add("planner: items, eight sessions", 50, 2, items -> plan(items, OptionalInt.of(8)));
        add("planner: sessions for 800 items", 4, 1, sessions -> plan(800, OptionalInt.of(sessions)));
    }

    private static Callable<?> plan(int rounds, OptionalInt sessions) {
        var pattern = PatternReader.readBare(Optional.of(Terms.US), GrowingPattern.of(rounds));
        PlanItems items = PlanItems.of(FirstUses.of(pattern, Techniques.catalogue()), SETTINGS.pace());
        return () -> Planner.plan(PlanRequest.of(items.items(), SETTINGS, sessions));
    }

    private void sheets() {
        add("sheets: lessons", 1, 1, lessons -> sheets(
                course(lessons), Optional.empty(), Set.of(SheetKind.TEACHER, SheetKind.STUDENT)));
        add("sheets: students", 2, 1, students -> sheets(
                course(4), Optional.of(group(students)), Set.of(SheetKind.PROGRESS, SheetKind.FINISH)));
    }

    private static Callable<?> sheets(Course course, Optional<GroupReports> group, Set<SheetKind> kinds) {
        SheetOrder order = SheetOrder.of(course).only(kinds);
        return () -> {
            List<Sheet> sheets = Sheets.of(group.map(order::forGroup).orElse(order));
            return sheets.stream().mapToInt(sheet -> sheet.bytes().get().length).sum();
        };
    }

    private static Course course(int lessons) {
        StringBuilder text = new StringBuilder("# Tall\n\n- terms: US\n\n## Part: Body\n\n");
        GrowingPattern.of(5 * lessons).lines().forEach(line -> text.append("- ").append(line).append('\n'));
        for (int lesson = 1; lesson <= lessons; lesson++) {
            text.append("\n## Lesson %d: Part %d\n\n- rounds: Body %d-%d\n"
                    .formatted(lesson, lesson, 5 * lesson - 4, 5 * lesson));
        }
        return CourseFile.read(text.toString()).course();
    }

    private static GroupReports group(int students) {
        List<Student> all = IntStream.range(0, students)
                .mapToObj(seat -> new Student(new StudentId(seat), "Seat " + seat, false, false, ""))
                .toList();
        return new GroupReports(
                "Hall", all, new TrialClass(students, 20, 40, 7).reports(), List.of(), List.of(), LocalDate.EPOCH);
    }

    private void messages() {
        add("messages: lines of a chat", 500, 1, lines -> messages(MessagesSpeed.chat(lines)));
        add("messages: lines of a list", 500, 1, lines -> messages(MessagesSpeed.list(lines)));
    }

    private static Callable<?> messages(String text) {
        MessagesReader reader = MessagesSpeed.reader();
        return () -> reader.read(text);
    }

    private void opening() {
        add("opening: rounds counted by 500 students", 7, 1, rounds -> {
            Path folder = Files.createTempDirectory("roundwright-growth");
            Path file = folder.resolve("large.db");
            try (Workbook workbook = Workbook.create(file, folder.resolve("backups"), Clock.systemUTC())) {
                LargeGroup.fill(workbook, rounds);
            }
            return () -> {
                try (Workbook workbook = Workbook.open(file, folder.resolve("backups"), Clock.systemUTC())) {
                    return workbook.view().groups().size();
                }
            };
        });
        add("opening: rounds of a course file", 60, 1, rounds -> {
            String text = "# Tall\n\n## Part: Body\n\n- " + GrowingPattern.of(rounds).strip().replace("\n", "\n- ") + "\n";
            return () -> CourseFile.read(text);
        });
    }
}
