package roundwright.desktop.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import roundwright.desktop.DeskOnFile;
import roundwright.desktop.OnEventThread;
import roundwright.desktop.SampleCourse;
import roundwright.desktop.look.Theme;
import roundwright.notation.Terms;
import roundwright.pattern.chart.ChartSetting;

@ExtendWith(OnEventThread.class)
class ChartSaverTest {
    @TempDir
    private Path folder;

    private Path save(ChartSaver.Format format) {
        Theme.LIGHT.install(1);
        try (DeskOnFile file = new DeskOnFile()) {
            ChartSubject subject = new ChartSubject(
                    "Tower, round 3",
                    SampleCourse.round(3, 24, 18).steps().orElseThrow(),
                    Terms.UK,
                    ChartSetting.ring(false));
            new ChartSaver(file.desk(), name -> Optional.of(folder.resolve(name))).save(subject, format);
        }
        return folder.resolve("tower-round-3." + format.ending());
    }

    @Test
    void aDrawingSaysWhatItIsAndHasAKey() throws Exception {
        Path saved = save(ChartSaver.Format.SVG);
        var document = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(saved.toFile());
        assertEquals("svg", document.getDocumentElement().getNodeName());
        String text = Files.readString(saved, StandardCharsets.UTF_8);
        assertTrue(text.contains("<title>Tower, round 3. Chart of the round: 24 stitches made from 18</title>"), text);
        assertTrue(document.getElementsByTagName("path").getLength() > 10);
    }

    @Test
    void anImageIsLargeEnoughToPrint() throws Exception {
        BufferedImage image = ImageIO.read(save(ChartSaver.Format.PNG).toFile());
        assertTrue(image.getWidth() >= 1400 && image.getHeight() >= 1400, image.getWidth() + "x" + image.getHeight());
        assertEquals(0xFFFFFFFF, image.getRGB(3, 3));
    }
}
