package roundwright.sheet.pdf;

import com.openhtmltopdf.bidi.BidiReorderer;
import java.util.ArrayList;
import java.util.List;

/** Puts the letters of right-to-left text in the order in which a pen that goes to the right draws them, joined where they join. */
final class BidiOrder implements BidiReorderer {
    @Override
    public String reorderRTLTextToLTR(String text) {
        List<Integer> letters = new ArrayList<>();
        text.codePoints().forEach(letters::add);
        StringBuilder turned = new StringBuilder(text.length());
        for (int end = letters.size(); end > 0; ) {
            int start = end - 1;
            while (start > 0 && Character.getType(letters.get(start)) == Character.NON_SPACING_MARK) {
                start--;
            }
            letters.subList(start, end).forEach(letter -> turned.appendCodePoint(mirrored(letter)));
            end = start;
        }
        return turned.toString();
    }

    private static int mirrored(int letter) {
        if (!Character.isMirrored(letter)) {
            return letter;
        }
        return switch (letter) {
            case '(' -> ')';
            case ')' -> '(';
            case '[' -> ']';
            case ']' -> '[';
            case '{' -> '}';
            case '}' -> '{';
            case '<' -> '>';
            case '>' -> '<';
            case '«' -> '»';
            case '»' -> '«';
            default -> letter;
        };
    }

    @Override
    public String shapeText(String text) {
        return ArabicForms.join(text);
    }

    @Override
    public String deshapeText(String text) {
        return text;
    }

    @Override
    public boolean isLiveImplementation() {
        return true;
    }
}
