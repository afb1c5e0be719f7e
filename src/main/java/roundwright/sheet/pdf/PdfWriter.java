package roundwright.sheet.pdf;

import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import roundwright.sheet.markup.Element;
import roundwright.sheet.markup.HtmlText;

/** Turns a document into a tagged PDF. The same document gives the same bytes at any time and on any machine. */
public final class PdfWriter {
    /** Kept, for a logger that nobody holds may forget its level. */
    private static final List<Logger> QUIET = List.of(
            Logger.getLogger("org.apache.pdfbox"),
            Logger.getLogger("org.apache.fontbox"),
            Logger.getLogger("de.rototor"));

    static {
        XRLog.setLoggingEnabled(false);
        QUIET.forEach(logger -> logger.setLevel(Level.OFF));
    }

    private PdfWriter() {}

    /**
     * The PDF of an {@code html} element with language, title, description and style sheet in its head. Where it has a {@code data-ground}, every page is
     * painted in that colour.
     *
     * @throws IllegalArgumentException where it cannot be laid out
     */
    public static byte[] write(Element html) {
        PdfTree tree = new PdfTree(html);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePdfUaAccessibility(true);
        builder.usePdfVersion(1.7f);
        builder.withProducer("Roundwright");
        builder.useReplacementText("□");
        builder.withW3cDocument(tree.document(), null);
        builder.useObjectDrawerFactory(new PictureDrawer(tree));
        builder.useUnicodeBidiSplitter(BidiRuns::new);
        builder.useUnicodeBidiReorderer(new BidiOrder());
        builder.useExternalResourceAccessControl(
                (uri, type) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        PdfFonts.use(builder);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer();
                PDDocument document = renderer.createPDFKeepOpen()) {
            return save(document, html);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static byte[] save(PDDocument document, Element html) throws IOException {
        String ground = html.attributes().get("data-ground");
        if (ground != null) {
            PageGround.paint(document, Color.decode(ground));
        }
        withoutTime(document);
        document.setDocumentId(checksum(html));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        document.save(bytes);
        return bytes.toByteArray();
    }

    private static long checksum(Element html) {
        CRC32 sum = new CRC32();
        sum.update(HtmlText.of(html).getBytes(StandardCharsets.UTF_8));
        return sum.getValue();
    }

    /** A sheet is the same whenever it is printed. */
    private static void withoutTime(PDDocument document) throws IOException {
        Calendar fixed = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        fixed.clear();
        fixed.set(2026, Calendar.JANUARY, 1);
        document.getDocumentInformation().setCreationDate(fixed);
        PDMetadata metadata = document.getDocumentCatalog().getMetadata();
        String xmp = new String(metadata.toByteArray(), StandardCharsets.UTF_8)
                .replaceAll("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(?:Z|[+-]\\d\\d:\\d\\d)", "2026-01-01T00:00:00Z");
        metadata.importXMPMetadata(xmp.getBytes(StandardCharsets.UTF_8));
    }
}
