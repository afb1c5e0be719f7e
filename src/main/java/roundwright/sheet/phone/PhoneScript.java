package roundwright.sheet.phone;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The script of the page, kept beside the style sheets. */
final class PhoneScript {
    private PhoneScript() {}

    static String read() {
        try (InputStream stream = PhoneScript.class.getResourceAsStream("/roundwright/sheet/phone.js")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new IllegalStateException("cannot read the script of the page", failure);
        }
    }
}
