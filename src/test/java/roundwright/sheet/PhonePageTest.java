package roundwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import roundwright.course.Course;
import roundwright.group.messages.MessagesReader;
import roundwright.group.messages.Reading;

/** The page for a phone: as text, and in a real browser where this machine has one. */
class PhonePageTest {
    private static final Course LIGHT = SampleSheets.course("harbour-light.md");

    @TempDir
    private Path home;

    static final List<String> HARD_NAMES = SampleSheets.HARD_NAMES;

    private static String page(String name) {
        return pages(List.of(name)).get(0);
    }

    private static List<String> pages(List<String> names) {
        return Sheets.of(SheetOrder.of(LIGHT)
                        .forGroup(SampleSheets.group(LIGHT, names))
                        .only(EnumSet.of(SheetKind.PHONE)))
                .stream()
                .map(sheet -> new String(sheet.bytes().get(), StandardCharsets.UTF_8))
                .toList();
    }

    @ParameterizedTest
    @FieldSource("HARD_NAMES")
    void noNameBecomesMarkup(String name) {
        String page = page(name);
        String without = page("Ines");
        for (String tag : List.of("<script", "</title>", "<b>", "<h1", "<input", " data-name=")) {
            assertEquals(count(without, tag), count(page, tag), tag + " in the page of " + name);
        }
    }

    private static int count(String text, String piece) {
        return text.split(Pattern.quote(piece), -1).length - 1;
    }

    @Test
    void nothingPointsOutOfThePage() {
        String page = page("Ines");
        assertFalse(
                Pattern.compile("(?i)(?:src|href|action|url)\\s*[=(]|https?:|//[a-z]")
                        .matcher(page)
                        .find(),
                page);
        assertTrue(page.contains("default-src &#39;none&#39;"));
    }

    @Test
    void aPageIsOfOneStudentAlone() {
        List<String> pages = pages(List.of("Ines", "Tuuli"));
        assertFalse(pages.get(0).contains("Tuuli"));
        assertFalse(pages.get(1).contains("Ines"));
    }

    private record Typed(String part, int round, int count) {}

    private record Case(String name, List<Typed> typed, String line) {}

    static Stream<Case> lines() {
        return Stream.of(
                new Case("Ines", List.of(new Typed("Tower", 9, 36)), "Ines: Tower round 9 36"),
                new Case(
                        "Ines",
                        List.of(new Typed("Tower", 9, 36), new Typed("Tower", 10, 36), new Typed("Gallery", 1, 6)),
                        "Ines: Tower round 9 36, round 10 36, Gallery round 1 6"),
                new Case("Jo: a, b; c", List.of(new Typed("Roof", 4, 12)), "Jo a b c: Roof round 4 12"));
    }

    @Test
    void whatIsTypedBecomesALineThatIsReadWithoutLoss() throws Exception {
        assumeTrue(Browser.installed().isPresent(), "no browser on this machine: the page was not tried in one");
        for (Case wanted : lines().toList()) {
            Path file = Files.writeString(home.resolve("page.html"), page(wanted.name()));
            Path profile = Files.createTempDirectory(home, "profile");
            try (Browser browser = Browser.open(Browser.installed().get(), profile, file, true)) {
                for (Typed typed : wanted.typed()) {
                    browser.type(typed.part(), typed.round(), typed.count());
                }
                String said = browser.evaluate("document.getElementById('line').value");
                assertTrue(said.contains(Browser.json(wanted.line())), said);
                assertEquals(wanted.typed(), readBack(wanted.line()));
                assertTrue(browser.evaluate("document.documentElement.scrollWidth <= innerWidth")
                        .contains("true"));
            }
        }
    }

    private static List<Typed> readBack(String line) {
        return new MessagesReader(LIGHT, List.of("Ines", "Jo a b c"))
                .read(line).stream()
                        .map(Reading.class::cast)
                        .flatMap(reading -> IntStream.rangeClosed(reading.from(), reading.to())
                                .mapToObj(round -> new Typed(reading.part().orElse("?"), round, reading.count())))
                        .toList();
    }

    @Test
    void withoutScriptItReadsAndAsksForNothing() throws Exception {
        assumeTrue(Browser.installed().isPresent(), "no browser on this machine: the page was not tried in one");
        Path file = Files.writeString(home.resolve("page.html"), page("Ines"));
        try (Browser browser =
                Browser.open(Browser.installed().get(), Files.createDirectory(home.resolve("profile")), file, false)) {
            String text = browser.evaluate("document.body.textContent");
            assertTrue(text.contains("Work the stitches round both strands of the ring"), text);
            String box = browser.evaluate("getComputedStyle(document.querySelector('.send')).display");
            assertTrue(box.contains("none"), box);
        }
    }
}
