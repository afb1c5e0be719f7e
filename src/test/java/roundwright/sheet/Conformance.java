package roundwright.sheet;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Asks an independent checker whether a document keeps the machine-checkable rules of PDF/UA-1. */
final class Conformance {
    private static final Logger QUIET = Logger.getLogger("org.verapdf");

    private Conformance() {}

    /** Every rule that is broken, once, in words; empty where none is. */
    static List<String> broken(byte[] pdf) throws Exception {
        QUIET.setLevel(Level.OFF);
        VeraGreenfieldFoundryProvider.initialise();
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            ValidationResult result = validator.validate(parser);
            return result.getTestAssertions().stream()
                    .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                    .map(assertion -> assertion.getRuleId().getClause() + "-"
                            + assertion.getRuleId().getTestNumber() + " " + assertion.getMessage())
                    .distinct()
                    .toList();
        }
    }
}
