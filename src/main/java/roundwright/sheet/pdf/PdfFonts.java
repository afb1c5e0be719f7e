package roundwright.sheet.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The fonts of the sheets, read once: {@code Sheet} (plain, with figures of one width), {@code Reading} (letters and numbers easily told apart), and
 * {@code Marks}, which steps in for Greek, Cyrillic, Hebrew, Arabic and signs that the others lack.
 */
final class PdfFonts {
    private static final Map<String, byte[]> FILES = new ConcurrentHashMap<>();
    private static final Set<FSFontUseCase> DOCUMENT = EnumSet.of(FSFontUseCase.DOCUMENT);
    private static final Set<FSFontUseCase> STEPS_IN = EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.FALLBACK_FINAL);

    private PdfFonts() {}

    static void use(PdfRendererBuilder builder) {
        for (String family : new String[] {"Sheet", "Reading", "Marks"}) {
            Set<FSFontUseCase> use = family.equals("Marks") ? STEPS_IN : DOCUMENT;
            builder.useFont(() -> open(family + "-Regular"), family, 400, FontStyle.NORMAL, true, use);
            builder.useFont(() -> open(family + "-Bold"), family, 700, FontStyle.NORMAL, true, use);
        }
    }

    /** The font that steps in for the others. */
    static byte[] stepsIn() {
        return FILES.computeIfAbsent("Marks-Regular", PdfFonts::read);
    }

    private static InputStream open(String file) {
        return new ByteArrayInputStream(FILES.computeIfAbsent(file, PdfFonts::read));
    }

    private static byte[] read(String file) {
        String path = "/roundwright/sheet/fonts/" + file + ".ttf";
        try (InputStream stream = PdfFonts.class.getResourceAsStream(path)) {
            return stream.readAllBytes();
        } catch (IOException failure) {
            throw new IllegalStateException("cannot read " + path, failure);
        }
    }
}
