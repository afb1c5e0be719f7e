package roundwright.sheet.pdf;

import java.awt.image.BufferedImage;
import java.awt.print.Pageable;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A printed sheet opened again, to be looked at on a screen or sent to a printer. One thread at a time; close it. */
public final class PrintedPages implements AutoCloseable {
    private final PDDocument document;
    private final PDFRenderer renderer;

    private PrintedPages(PDDocument document) {
        this.document = document;
        this.renderer = new PDFRenderer(document);
    }

    /** Opens the bytes of a sheet that {@link PdfWriter} wrote. */
    public static PrintedPages open(byte[] pdf) {
        try {
            return new PrintedPages(Loader.loadPDF(pdf));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    public int count() {
        return document.getNumberOfPages();
    }

    /**
     * A page as it will be printed.
     *
     * @param page from 0
     * @param scale pixels a point: 1 is 72 dots to the inch
     */
    public BufferedImage image(int page, double scale) {
        try {
            return renderer.renderImage(page, (float) scale);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** All pages for a printer, at their true size. */
    public Pageable pageable() {
        return new PDFPageable(document);
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
