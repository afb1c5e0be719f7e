package roundwright.workbook;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.sqlite.SQLiteConfig;
import roundwright.group.CountReport;
import roundwright.group.CourseId;
import roundwright.group.Group;
import roundwright.group.GroupId;
import roundwright.group.Student;
import roundwright.group.StudentId;

/**
 * A million reports filed in one step, as an import files them, held against the bare statement for the same rows into the same tables
 * with the same settings, prepared once and sent as one batch, in the same run.
 * {@code java -cp target/roundwright.jar roundwright.workbook.ImportComparison [REPORTS]}
 */
public final class ImportComparison {
    private static final int USUAL = 1_000_000;
    private static final int STUDENTS = 30;
    private static final int ROUNDS = 60;
    private static final int MEASURED = 5;
    private static final Instant FIRST = Instant.parse("2027-01-05T18:00:00Z");

    private final Path folder;
    private final int reports;

    private ImportComparison(Path folder, int reports) {
        this.folder = folder;
        this.reports = reports;
    }

    public static void main(String[] arguments) throws Exception {
        int reports = arguments.length == 0 ? USUAL : Integer.parseInt(arguments[0]);
        ImportComparison comparison =
                new ImportComparison(Files.createTempDirectory("roundwright-import"), reports);
        double[] bare = new double[MEASURED];
        double[] filed = new double[MEASURED];
        for (int run = -1; run < MEASURED; run++) {
            double one = comparison.bare();
            double other = comparison.filed();
            if (run >= 0) {
                bare[run] = one;
                filed[run] = other;
            }
            System.out.printf("%s bare batch %.0f ms, import %.0f ms%n", run < 0 ? "(warming)" : "         ", one, other);
        }
        System.out.printf(
                "%d reports, medians: bare batch %.0f ms, import %.0f ms: %.2f of the bare speed%n",
                reports, median(bare), median(filed), median(bare) / median(filed));
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private Path file() throws Exception {
        Path file = folder.resolve("import.db");
        Files.deleteIfExists(file);
        return file;
    }

    private Workbook empty(Path file) throws Exception {
        Workbook workbook = Workbook.create(file, folder.resolve("backups"), Clock.systemUTC());
        CourseId course = workbook.newCourse();
        workbook.apply(new CourseEdit.AddCourse(course, "Tall", "# Tall\n"));
        Group group = new Group(workbook.newGroup(), course, "Hall", Optional.empty(), "");
        workbook.apply(new GroupEdit.AddGroup(group));
        List<Student> students = IntStream.range(0, STUDENTS)
                .mapToObj(seat -> new Student(workbook.newStudent(), "Seat " + seat, false, false, ""))
                .toList();
        workbook.apply(new StudentEdit.AddStudents(group.id(), students));
        return workbook;
    }

    private List<NewCount> counts() {
        List<NewCount> counts = new ArrayList<>(reports);
        for (int each = 0; each < reports; each++) {
            counts.add(new NewCount(
                    new StudentId(1 + each % STUDENTS),
                    "Body",
                    1 + each / STUDENTS % ROUNDS,
                    CountReport.Kind.COUNTED,
                    OptionalInt.of(30 + each % 7),
                    Optional.of(FIRST.plusSeconds(each)),
                    ""));
        }
        return counts;
    }

    private double filed() throws Exception {
        Path file = file();
        List<NewCount> counts = counts();
        try (Workbook workbook = empty(file)) {
            GroupId group = workbook.view().groups().get(0).id();
            System.gc();
            long start = System.nanoTime();
            workbook.apply(new CountEdit.ReportCounts(group, counts));
            return (System.nanoTime() - start) / 1e6;
        }
    }

    private double bare() throws Exception {
        Path file = file();
        empty(file).close();
        List<NewCount> counts = counts();
        SQLiteConfig config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        System.gc();
        try (Connection connection = config.createConnection("jdbc:sqlite:" + file);
                Statement settings = connection.createStatement()) {
            settings.execute("PRAGMA journal_mode = DELETE");
            settings.execute("PRAGMA synchronous = FULL");
            connection.setAutoCommit(false);
            long start = System.nanoTime();
            insert(connection, counts);
            connection.commit();
            return (System.nanoTime() - start) / 1e6;
        }
    }

    private static void insert(Connection connection, List<NewCount> counts) throws Exception {
        try (PreparedStatement statement = connection.prepareStatement("""
                INSERT INTO report (id, group_id, student_id, part, round, kind, count, at, note, withdrawn)
                VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""")) {
            long id = 0;
            for (NewCount count : counts) {
                statement.setLong(1, ++id);
                statement.setLong(2, 1);
                statement.setLong(3, count.student().value());
                statement.setString(4, count.part());
                statement.setInt(5, count.round());
                statement.setString(6, "counted");
                statement.setInt(7, count.count().getAsInt());
                statement.setString(8, count.at().orElseThrow().toString());
                statement.setString(9, count.note());
                statement.setNull(10, java.sql.Types.VARCHAR);
                statement.addBatch();
            }
            statement.executeBatch();
        }
    }
}
