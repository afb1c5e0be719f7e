package roundwright.sheet.pdf;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;

/**
 * Joins Arabic letters by choosing for each the form that it has beside its neighbours. The forms are those that Unicode keeps for
 * old typesetters (U+FB50 to U+FEFC); which letter each belongs to is read out of the Java runtime's own tables.
 */
final class ArabicForms {
    private static final int ISOLATED = 0;
    private static final int FINAL = 1;
    private static final int INITIAL = 2;
    private static final int MEDIAL = 3;
    private static final String[] WORDS = {"ISOLATED FORM", "FINAL FORM", "INITIAL FORM", "MEDIAL FORM"};
    private static final Map<Integer, int[]> FORMS = forms();

    private ArabicForms() {}

    private static Map<Integer, int[]> forms() {
        Map<Integer, int[]> forms = new HashMap<>();
        for (int form = 0xFB50; form <= 0xFEFC; form++) {
            String letter = Normalizer.normalize(Character.toString(form), Normalizer.Form.NFKC);
            String name = Character.getName(form);
            if (name != null && letter.codePointCount(0, letter.length()) == 1) {
                for (int kind = 0; kind < WORDS.length; kind++) {
                    if (name.endsWith(WORDS[kind])) {
                        forms.computeIfAbsent(letter.codePointAt(0), key -> new int[4])[kind] = form;
                    }
                }
            }
        }
        return forms;
    }

    /** The text with every letter in the form that joins; other text is left as it is. */
    static String join(String text) {
        int[] letters = text.codePoints().toArray();
        StringBuilder joined = new StringBuilder(text.length());
        for (int i = 0; i < letters.length; i++) {
            int[] forms = FORMS.get(letters[i]);
            boolean before = joins(neighbour(letters, i, -1), INITIAL) && has(forms, FINAL);
            boolean after = joins(neighbour(letters, i, 1), FINAL) && has(forms, INITIAL);
            int kind = before ? after ? MEDIAL : FINAL : after ? INITIAL : ISOLATED;
            joined.appendCodePoint(has(forms, kind) ? forms[kind] : letters[i]);
        }
        return joined.toString();
    }

    /** The next letter that way; marks above and below do not part letters. */
    private static int neighbour(int[] letters, int from, int way) {
        int at = from + way;
        while (at >= 0 && at < letters.length && Character.getType(letters[at]) == Character.NON_SPACING_MARK) {
            at += way;
        }
        return at >= 0 && at < letters.length ? letters[at] : -1;
    }

    private static boolean joins(int letter, int kind) {
        return has(FORMS.get(letter), kind);
    }

    private static boolean has(int[] forms, int kind) {
        return forms != null && forms[kind] != 0;
    }
}
