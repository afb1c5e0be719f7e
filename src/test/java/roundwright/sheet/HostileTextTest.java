package roundwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.Random;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import roundwright.course.Course;
import roundwright.sheet.markup.Element;
import roundwright.sheet.markup.HtmlText;

/** Whatever a person types stays text. */
class HostileTextTest {
    private static final long SEED = Long.getLong("seed", 8);
    private static final String PIECES =
            "<>&\"'/=!-{}[]()$\\`%# \t\u0000\u0007\u00AD\u200B\u202E\u2066\uD83E\uFFFFaZé½×א中";

    private static String text(Random random, int longest) {
        StringBuilder text = new StringBuilder();
        int length = random.nextInt(longest);
        for (int i = 0; i < length; i++) {
            text.append(PIECES.charAt(random.nextInt(PIECES.length())));
        }
        return text.toString();
    }

    @Test
    void anyTextComesBackOutOfTheMarkupAsText() throws Exception {
        Random random = new Random(SEED);
        for (int run = 0; run < 500; run++) {
            String text = text(random, 60);
            String html =
                    HtmlText.of(Element.of("p", text, Element.of("b", "end")).with("title", text));
            Document read = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(html)));
            org.w3c.dom.Element paragraph = read.getDocumentElement();
            assertEquals(1, paragraph.getElementsByTagName("*").getLength(), "seed " + SEED + ": " + text);
            String kept = text.replaceAll("[\\p{Cc}&&[^\\t\\n\\r]]|[\\p{Cs}\\uFFFF\\u202E\\u2066]", "");
            assertEquals(kept + "end", paragraph.getTextContent(), "seed " + SEED);
        }
    }

    @Test
    void coursesAndNamesOfAnyTextBecomeSheets() throws Exception {
        Random random = new Random(SEED);
        for (int run = 0; run < 4; run++) {
            StringBuilder lines =
                    new StringBuilder("# " + oneLine(random) + "\n\n## Part: A" + oneLine(random) + "\n\n");
            for (int i = 1; i < 6; i++) {
                lines.append("- Rnd ")
                        .append(i)
                        .append(": ")
                        .append(oneLine(random))
                        .append(" 6 dc (6)\n");
            }
            Course course = SampleSheets.read(lines.toString());
            List<String> names = List.of("x" + oneLine(random), "y".repeat(1500));
            List<Sheet> sheets = Sheets.of(SheetOrder.of(course).forGroup(SampleSheets.group(course, names)));
            for (Sheet sheet : sheets) {
                assertTrue(sheet.bytes().get().length > 500, "seed " + SEED + ", " + sheet.file() + " of " + lines);
            }
        }
    }

    private static String oneLine(Random random) {
        return text(random, 80).replaceAll("[\\r\\n]", " ");
    }
}
