package roundwright.desktop.insight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.EventQueue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import roundwright.desktop.DeskOnFile;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.work.Work;
import roundwright.group.CountReport;
import roundwright.group.StudentId;
import roundwright.workbook.Change;
import roundwright.workbook.CountEdit;
import roundwright.workbook.NewCount;
import roundwright.workbook.WorkbookListener;
import roundwright.workbook.WorkbookView;

/** Explanations of counts that are on their way to the disk. */
class InsightsTest {
    private DeskOnFile file;
    private Desk desk;
    private StudentId student;

    @BeforeEach
    void open() {
        file = new DeskOnFile().course("harbour-light").group(6);
        desk = file.desk();
        student = desk.student().orElseThrow().id();
    }

    @AfterEach
    void close() {
        file.close();
    }

    @Test
    void aCountIsExplainedBesideItsFiling() {
        Insights insights = looked();
        List<String> told = new ArrayList<>();
        insights.listen(() -> told.add("worked out"));
        count(5);
        assertEquals(newest(), explained(insights));
        assertEquals(List.of(), told, "it was worked out only when it was asked for");
    }

    @Test
    void nothingIsSaidOfACountThatIsNotOnTheDisk() {
        Insights insights = looked();
        Optional<CountReport> before = explained(insights);
        List<Optional<CountReport>> meanwhile = new ArrayList<>();
        desk.follow(new WorkbookListener() {
            @Override
            public void coming(WorkbookView then, List<Change> changes) {
                meanwhile.add(explained(insights));
            }

            @Override
            public void changed(List<Change> changes) {
                meanwhile.add(explained(insights));
            }
        });
        count(5);
        assertEquals(List.of(before, newest()), meanwhile);
    }

    @Test
    void aCountThatCannotBeFiledLeavesTheExplanationThatHolds() throws IOException {
        Insights insights = looked();
        Optional<StudentInsights> before = insights.of(student);
        Path away = file.path().resolveSibling("elsewhere.db");
        Files.move(file.path(), away);
        count(5);
        assertTrue(
                desk.notice().orElseThrow().startsWith("Not filed: count of round "),
                desk.notice().orElseThrow());
        assertEquals(before, insights.of(student));
        Files.move(away, file.path());
        count(6);
        assertEquals(newest(), explained(insights));
    }

    @Test
    void ofTwoQuickCountsTheNewestIsExplained() throws Exception {
        Work thinking = Work.queue();
        Insights insights = new Insights(desk, thinking);
        CountDownLatch looked = new CountDownLatch(1);
        CountDownLatch both = new CountDownLatch(1);
        EventQueue.invokeAndWait(() -> {
            insights.listen(looked::countDown);
            insights.of(student);
        });
        assertTrue(looked.await(1, TimeUnit.MINUTES));
        EventQueue.invokeAndWait(() -> {
            insights.listen(() -> {
                if (explained(insights).equals(newest())) {
                    both.countDown();
                }
            });
            count(5);
            count(6);
            insights.of(student);
        });
        assertTrue(both.await(1, TimeUnit.MINUTES));
        EventQueue.invokeAndWait(() -> {
            assertEquals(newest(), explained(insights));
            assertEquals(6, newest().orElseThrow().count().orElseThrow());
        });
        thinking.close();
    }

    /** With the picture of the group made, and its explanations known. */
    private Insights looked() {
        Insights insights = new Insights(desk, Work.atOnce());
        insights.of(student);
        assertTrue(insights.of(student).isPresent());
        return insights;
    }

    private void count(int stitches) {
        NewCount count = NewCount.of(
                student,
                desk.place().orElseThrow().part(),
                desk.place().orElseThrow().round(),
                stitches);
        desk.apply(new CountEdit.ReportCounts(desk.choice().group().orElseThrow(), count));
    }

    private Optional<CountReport> newest() {
        List<CountReport> reports = desk.reports(student);
        return Optional.of(reports.get(reports.size() - 1));
    }

    /** The newest report that has an explanation. */
    private Optional<CountReport> explained(Insights insights) {
        List<CountReport> reports = desk.reports(student);
        return insights.of(student)
                .flatMap(known -> reports.stream()
                        .filter(report -> known.of(report).isPresent())
                        .reduce((earlier, later) -> later));
    }
}
