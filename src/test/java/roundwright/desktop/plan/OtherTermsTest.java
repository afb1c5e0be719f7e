package roundwright.desktop.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.swing.AbstractButton;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import roundwright.desktop.DeskOnFile;
import roundwright.desktop.Inside;
import roundwright.desktop.OnEventThread;
import roundwright.desktop.chart.ChartSaver;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Theme;
import roundwright.group.RoundPlace;
import roundwright.notation.Terms;

@ExtendWith(OnEventThread.class)
class OtherTermsTest {
    @Test
    void everyRoundIsFoundWithTheSameStitchesAndTheTextStaysAsItIs() {
        try (DeskOnFile file = new DeskOnFile()) {
            file.course("harbour-light");
            var course = file.desk().course().orElseThrow();
            OtherTerms other = new OtherTerms(course);
            assertEquals(Terms.US, other.terms());
            for (RoundPlace place : course.places()) {
                var turned = other.round(place).orElseThrow(() -> new AssertionError(place.toString()));
                assertEquals(course.round(place).orElseThrow().count(), turned.count(), place.toString());
            }
            assertEquals(course.kept(), file.desk().course().orElseThrow().kept());
        }
    }

    @Test
    void aRoundIsShownInOtherTermsAtThePressOfAButton() {
        Theme.LIGHT.install(1);
        try (DeskOnFile file = new DeskOnFile()) {
            file.course("harbour-light");
            RoundCard card =
                    new RoundCard(file.desk(), new ChartSaver(file.desk(), name -> java.util.Optional.empty()));
            assertTrue(said(card).stream().anyMatch(words -> words.contains("double crochet")));
            Inside.all(card)
                    .filter(AbstractButton.class::isInstance)
                    .map(AbstractButton.class::cast)
                    .filter(button -> "Show in US terms".equals(button.getText()))
                    .findFirst()
                    .orElseThrow()
                    .doClick();
            assertTrue(
                    said(card).stream().anyMatch(words -> words.contains("single crochet")),
                    said(card).toString());
            assertTrue(
                    said(card).stream().noneMatch(words -> words.contains("double crochet")),
                    said(card).toString());
        }
    }

    private static List<String> said(RoundCard card) {
        return Inside.all(card)
                .filter(Prose.class::isInstance)
                .map(prose -> ((Prose) prose).text())
                .toList();
    }
}
