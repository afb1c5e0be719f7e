package roundwright.sheet.pdf;

import java.awt.Color;
import java.io.IOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Paints pages in one colour, below all else and marked as no part of what is read. */
final class PageGround {
    private PageGround() {}

    static void paint(PDDocument document, Color color) throws IOException {
        for (PDPage page : document.getPages()) {
            PDRectangle sheet = page.getMediaBox();
            try (PDPageContentStream below = new PDPageContentStream(document, page, AppendMode.PREPEND, true, true)) {
                below.beginMarkedContent(COSName.ARTIFACT);
                below.setNonStrokingColor(color);
                below.addRect(0, 0, sheet.getWidth(), sheet.getHeight());
                below.fill();
                below.endMarkedContent();
            }
        }
    }
}
