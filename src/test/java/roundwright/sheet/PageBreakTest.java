package roundwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import roundwright.course.Course;
import roundwright.sheet.style.Paper;
import roundwright.sheet.style.SheetStyle;
import roundwright.sheet.style.TypeSetting;

/** A round stays whole, however the pages fall; no page is empty and nothing runs off the paper. */
class PageBreakTest {
    private record Case(TypeSetting type, Paper paper, int introduction) {}

    static Stream<Case> cases() {
        return Stream.of(TypeSetting.values())
                .flatMap(type -> Stream.of(1, 4, 9).map(lines -> new Case(type, Paper.values()[lines % 2], lines)));
    }

    /** Rounds of many lines; what comes before them moves the breaks from case to case. */
    private static Course course(int lines) {
        StringBuilder text = new StringBuilder("# Long\n\n## Part: A\n\n- Rnd 1: 6 dc in magic ring. (6)\n");
        for (int i = 0; i < lines; i++) {
            text.append("- Say number ").append(i).append(" aloud.\n");
        }
        for (int round = 2; round <= 16; round++) {
            text.append("- Rnd ")
                    .append(round)
                    .append(": dc, dec, (dc, inc, hdc) x 1, dc, inc ALPHA")
                    .append(round);
            text.append(" and then some more words that make it long enough for several lines OMEGA")
                    .append(round)
                    .append("X (")
                    .append(round)
                    .append(")\n");
        }
        return SampleSheets.read(text + "\n## Lesson 1: One\n\n- rounds: A 1-16\n");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void keepsARoundWhole(Case wanted) throws IOException {
        List<Sheet> sheets = Sheets.of(SheetOrder.of(course(wanted.introduction()))
                .only(EnumSet.of(SheetKind.STUDENT))
                .styled(List.of(SheetStyle.PLAIN.typed(wanted.type())))
                .on(wanted.paper()));
        List<String> pages = pages(sheets.get(0).bytes().get());
        for (int round = 2; round <= 16; round++) {
            String first = "ALPHA" + round + " ";
            String last = "OMEGA" + round + "X";
            List<Integer> begins = holding(pages, first);
            assertEquals(1, begins.size(), first + " in " + pages);
            assertEquals(begins, holding(pages, last), "round " + round + " is split in " + wanted);
        }
        pages.forEach(page -> assertTrue(page.length() > 20, () -> "an empty page among " + pages));
    }

    /** What stands at the end of a sheet ends at another height in each lesson. */
    @ParameterizedTest
    @EnumSource(TypeSetting.class)
    void everyPageHasWordsAndItsNumber(TypeSetting type) throws IOException {
        List<Sheet> sheets = Sheets.of(SheetOrder.of(SampleSheets.course("harbour-light.md"))
                .only(EnumSet.of(SheetKind.STUDENT))
                .styled(List.of(SheetStyle.PLAIN.typed(type))));
        for (Sheet sheet : sheets) {
            List<String> pages = pages(sheet.bytes().get());
            for (int page = 0; page < pages.size(); page++) {
                String words = pages.get(page);
                String number = (page + 1) + " / " + pages.size();
                assertTrue(words.contains(number), () -> number + " is not on " + words + " of " + sheet.file());
                assertTrue(words.length() > number.length() + 20, () -> number + " is empty in " + sheet.file());
            }
        }
    }

    private static List<Integer> holding(List<String> pages, String words) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            if (pages.get(i).contains(words)) {
                found.add(i);
            }
        }
        return found;
    }

    private static List<String> pages(byte[] pdf) throws IOException {
        List<String> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            float width = document.getPage(0).getMediaBox().getWidth();
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition letter) {
                    assertTrue(letter.getX() >= 0 && letter.getEndX() <= width, "runs off the paper");
                    super.processTextPosition(letter);
                }
            };
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document).replaceAll("\\s+", " "));
            }
        }
        return pages;
    }
}
