package roundwright.store;

import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import roundwright.group.CountReport;
import roundwright.group.GroupId;
import roundwright.group.StudentId;

/** The count reports of all groups, with the answers to checks made at the table. */
final class ReportStore implements Shelf<FiledReport> {
    private static final String INSERT = """
            INSERT INTO report (id, group_id, student_id, part, round, kind, count, at, note, withdrawn)
            VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""";

    private final Database database;

    ReportStore(Database database) {
        this.database = database;
    }

    @Override
    public List<FiledReport> all() throws StoreException {
        Map<Long, Map<String, String>> answers = answers();
        return database.query("""
                SELECT id, group_id, student_id, part, round, kind, count, at, note, withdrawn
                FROM report ORDER BY id""", row -> report(row, answers.getOrDefault(row.id("id"), Map.of())));
    }

    @Override
    public void insert(FiledReport filed) throws StoreException {
        database.write(1, INSERT, row(filed));
        insertAnswers(filed.report());
    }

    /** An import files very many. */
    @Override
    public void insertAll(List<FiledReport> all) throws StoreException {
        database.insertAll(INSERT, all.stream().map(ReportStore::row).iterator());
        for (FiledReport filed : all) {
            insertAnswers(filed.report());
        }
    }

    private static Object[] row(FiledReport filed) {
        CountReport report = filed.report();
        return new Object[] {
            report.sequence(),
            filed.group().value(),
            report.student().value(),
            report.part(),
            report.round(),
            Words.of(report.kind()),
            report.count(),
            IsoDates.text(report.at()),
            report.note(),
            report.withdrawn().map(IsoDates::text)
        };
    }

    /** A report keeps its student, kind, count and time for ever: its note, its checks, whether it stands and what its round is called can change. */
    @Override
    public void replace(FiledReport before, FiledReport after) throws StoreException {
        database.write(
                1,
                "UPDATE report SET note = ?, withdrawn = ?, part = ?, round = ? WHERE id = ?",
                after.report().note(),
                after.report().withdrawn().map(IsoDates::text),
                after.report().part(),
                after.report().round(),
                before.report().sequence());
        if (!before.report().checks().equals(after.report().checks())) {
            deleteAnswers(before.report());
            insertAnswers(after.report());
        }
    }

    @Override
    public void delete(FiledReport filed) throws StoreException {
        deleteAnswers(filed.report());
        database.write(1, "DELETE FROM report WHERE id = ?", filed.report().sequence());
    }

    private void insertAnswers(CountReport report) throws StoreException {
        for (Map.Entry<String, String> answer : report.checks().entrySet()) {
            database.write(
                    1,
                    "INSERT INTO answer (report_id, check_name, answer) VALUES (?, ?, ?)",
                    report.sequence(),
                    answer.getKey(),
                    answer.getValue());
        }
    }

    private void deleteAnswers(CountReport report) throws StoreException {
        if (!report.checks().isEmpty()) {
            database.write(report.checks().size(), "DELETE FROM answer WHERE report_id = ?", report.sequence());
        }
    }

    private Map<Long, Map<String, String>> answers() throws StoreException {
        Map<Long, Map<String, String>> answers = new HashMap<>();
        database.query(
                "SELECT report_id, check_name, answer FROM answer",
                row -> answers.computeIfAbsent(row.id("report_id"), id -> new TreeMap<>())
                        .put(row.text("check_name"), row.text("answer")));
        return answers;
    }

    private static FiledReport report(Fields row, Map<String, String> checks) throws SQLException {
        CountReport report = new CountReport(
                row.id("id"),
                new StudentId(row.id("student_id")),
                row.text("part"),
                row.number("round"),
                row.word("kind", CountReport.Kind.class),
                row.numberIfAny("count"),
                row.time("at"),
                row.text("note"),
                checks,
                row.timeIfAny("withdrawn"));
        return new FiledReport(new GroupId(row.id("group_id")), report);
    }
}
