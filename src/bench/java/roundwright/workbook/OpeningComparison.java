package roundwright.workbook;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.Clock;
import java.util.Arrays;
import java.util.concurrent.Callable;

/**
 * Opening a file with a group of 500 students and 120 rounds of counts, checked and read into memory, held against the bare query for
 * the same rows in the same run, by the clock and, as others may use the machine, by the processor's time. {@code java -cp target/roundwright.jar roundwright.workbook.OpeningComparison}
 */
public final class OpeningComparison {
    private static final int WARM_UP = 4;
    private static final int MEASURED = 9;

    private OpeningComparison() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("roundwright-opening");
        Path file = folder.resolve("large.db");
        try (Workbook workbook = Workbook.create(file, folder.resolve("backups"), Clock.systemUTC())) {
            LargeGroup.fill(workbook, LargeGroup.ROUNDS);
        }
        Took query = median(() -> query(file));
        Took open = median(() -> open(file, folder));
        System.out.printf(
                "bare query %.1f ms, opening %.1f ms (%.2f times as long); processor %.1f and %.1f ms (%.2f times), %d rows%n",
                query.clock,
                open.clock,
                open.clock / query.clock,
                query.processor,
                open.processor,
                open.processor / query.processor,
                query(file));
    }

    private static int open(Path file, Path folder) throws Exception {
        try (Workbook workbook = Workbook.open(file, folder.resolve("backups"), Clock.systemUTC())) {
            return workbook.view().groups().size();
        }
    }

    /** Every column of every report, read and thrown away. */
    private static int query(Path file) throws Exception {
        int rows = 0;
        long sink = 0;
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(
                        "SELECT id, group_id, student_id, part, round, kind, count, at, note, withdrawn FROM report ORDER BY id")) {
            while (row.next()) {
                sink += row.getLong(1) + row.getLong(2) + row.getLong(3) + row.getInt(5) + row.getInt(7);
                sink += row.getString(4).length() + row.getString(6).length() + row.getString(8).length();
                sink += row.getString(9).length() + (row.getString(10) == null ? 1 : 0);
                rows++;
            }
        }
        return sink == 0 ? 0 : rows;
    }

    /** In milliseconds; the processor's time is that of the thread alone. */
    private record Took(double clock, double processor) {}

    private static Took median(Callable<Integer> work) throws Exception {
        double[] clock = new double[MEASURED];
        double[] processor = new double[MEASURED];
        for (int run = -WARM_UP; run < MEASURED; run++) {
            long began = System.nanoTime();
            long busy = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            work.call();
            if (run >= 0) {
                clock[run] = (System.nanoTime() - began) / 1e6;
                processor[run] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - busy) / 1e6;
            }
        }
        return new Took(middle(clock), middle(processor));
    }

    private static double middle(double[] times) {
        Arrays.sort(times);
        return times[times.length / 2];
    }
}
