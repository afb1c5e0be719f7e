package roundwright.desktop.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import roundwright.course.file.FileProblem;
import roundwright.desktop.DeskOnFile;
import roundwright.desktop.OnEventThread;
import roundwright.desktop.look.Theme;
import roundwright.group.RoundPlace;

@ExtendWith(OnEventThread.class)
class EditorPresenterTest {
    private static final String BALL = """
            # Ball

            - terms: UK

            ## Part: Ball

            - Rnd 1: 6 dc in magic ring. (6)
            - Rnd 2: inc x 6 (12)
            - Rnd 3: (dc, inc) x 6 (%s)

            ## Lesson 1: All of it

            - rounds: Ball 1-3
            """;

    private DeskOnFile file;
    private EditorPresenter presenter;
    private int timesRead;

    @BeforeEach
    void open() {
        Theme.LIGHT.install(1);
        file = new DeskOnFile().course("ball", BALL.formatted("18"));
        presenter = new EditorPresenter(file.desk(), () -> timesRead++);
    }

    @AfterEach
    void close() {
        file.close();
    }

    @Test
    void whatIsTypedIsInTheFileAtOnceAndCanBeUndone() {
        presenter.take(BALL.formatted("20"));
        assertEquals(1, timesRead);
        assertTrue(file.desk().course().orElseThrow().kept().text().contains("(20)"));
        file.desk().undo();
        assertTrue(file.desk().course().orElseThrow().kept().text().contains("(18)"));
    }

    @Test
    void aLineThatDoesNotAddUpIsFoundWithWhatToWriteInstead() {
        presenter.take(BALL.formatted("20"));
        int at = BALL.indexOf("(dc, inc)");
        FileProblem problem = presenter.near(at + 16).orElseThrow();
        EditorPresenter.Instead instead = presenter.instead(problem).orElseThrow();
        String mended = new StringBuilder(presenter.readText())
                .replace(instead.at().start(), instead.at().end(), instead.words())
                .toString();
        presenter.take(mended);
        assertEquals(
                Optional.empty(),
                presenter.problems().stream().filter(FileProblem::isError).findFirst());
    }

    @Test
    void theMarginShowsWhatEachRoundMakes() {
        presenter.take(BALL.formatted("20"));
        assertEquals(3, presenter.counts().size());
        MarginCount third = presenter.counts().get(2);
        assertEquals(18, third.count());
        assertTrue(third.wrong());
        assertFalse(presenter.counts().get(1).wrong());
        assertEquals(
                "- Rnd 3: (dc, inc) x 6 (20)",
                presenter.readText().lines().toList().get(third.line()));
    }

    @Test
    void theCourseOnTheDeskFollowsTheText() {
        presenter.take(BALL.formatted("18").replace("- Rnd 3", "- Rnd 3: 12 dc (12)\n- Rnd 4"));
        assertTrue(file.desk()
                .course()
                .orElseThrow()
                .round(new RoundPlace("Ball", 4))
                .isPresent());
    }

    @Test
    void anyTextCanBeTaken() {
        presenter.take("");
        presenter.take("nothing of a course\u0000\n\n- - -");
        assertEquals(
                "nothing of a course\u0000\n\n- - -",
                file.desk().course().orElseThrow().kept().text());
    }
}
