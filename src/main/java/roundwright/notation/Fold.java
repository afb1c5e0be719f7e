package roundwright.notation;

/**
 * What a character stands for in a written round: letters in lower case and in plain Latin, full-width and look-alike
 * forms as the ones they look like, every dash as {@code -}, every blank as a space. One character in, one out, so
 * that places in the folded text are places in the original.
 */
final class Fold {
    /** Stands for a character that shows nothing and means nothing (joiners, soft hyphens, accents on their own). */
    static final char NOTHING = 0;

    /** One more than what was worked out so far; two threads may work the same one out, and find the same. */
    private static final char[] KNOWN = new char[0x10000];

    private static final String LOOK_ALIKES =
            "аa еe оo рp сc хx уy іi ѕs јj кk мm нh тt вb гr пn иu дd ԁd ɡg һh ӏl ıi ɩi οo ρp αa τt νv ιi κk εe χx υu"
                    + " АA ЕE ОO РP СC ХX УY ІI ЅS ЈJ КK МM НH ТT ВB ΟO ΡP ΑA ΤT ΙI ΚK ΕE ΧX ΝN ΒB ΗH ΜM ΖZ ΥY"
                    + " ×x ✕x ✖x ⨯x ⅹx ∗* ＊* ★* ☆* ✱* ✳* ⁎* ✻* †* ‡* ❋* •• –- —- −- ‐- ‑- ‒- ―- ﹣- 〜- ~- „\" “\" ”\" «\" »\" ‘' ’' ′' ´' `'"
                    + " ΣΣ ∑Σ łl øo đd ŁL ØO ĐD ßs ＝= ꞉: ∶: ；; ，, 、, 。. …. ·. （( ）) 【[ 】] 〔[ 〕] ｛{ ｝} ‹< ›> 〈< 〉> ⟨< ⟩> ∕/ ⁄/ ＆& ﬁf ﬂf İi ẞs ∨v ⋁v ∧a ⋀a";

    static {
        for (int i = 0; i < LOOK_ALIKES.length(); i += 3) {
            know(LOOK_ALIKES.charAt(i), Character.toLowerCase(LOOK_ALIKES.charAt(i + 1)));
        }
    }

    private Fold() {}

    /** Every character of a text; of a letter or figure written with two ("𝟏"), the first says what it is and the second nothing. */
    static char[] of(String text) {
        char[] folded = text.toCharArray();
        for (int i = 0; i < folded.length; i++) {
            char c = folded[i];
            folded[i] = of(c);
            if (Character.isHighSurrogate(c) && i + 1 < folded.length && Character.isLowSurrogate(folded[i + 1])) {
                folded[i] = pair(c, Character.toCodePoint(c, folded[i + 1]));
                folded[++i] = NOTHING;
            }
        }
        return folded;
    }

    /** The letters from {@code from} to {@code to} as one word, without what means nothing. */
    static String of(String text, int from, int to) {
        StringBuilder word = new StringBuilder(to - from);
        for (int i = from; i < to; i++) {
            char c = of(text.charAt(i));
            if (c != NOTHING) {
                word.append(c);
            }
        }
        return word.toString();
    }

    private static char pair(char first, int character) {
        String plain = java.text.Normalizer.normalize(Character.toString(character), java.text.Normalizer.Form.NFKD);
        return plain.length() == 1 ? of(plain.charAt(0)) : first;
    }

    static char of(char c) {
        char known = KNOWN[c];
        return known == 0 ? workOut(c) : (char) (known - 1);
    }

    private static char workOut(char c) {
        char folded = plain(c);
        know(c, folded);
        return folded;
    }

    private static void know(char c, char folded) {
        KNOWN[c] = (char) (folded + 1);
    }

    private static char plain(char c) {
        if (c >= 0xFF01 && c <= 0xFF5E) {
            return plain((char) (c - 0xFEE0));
        }
        if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
            return ' ';
        }
        int type = Character.getType(c);
        if (type == Character.NON_SPACING_MARK || type == Character.FORMAT || c == 0xFE0F) {
            return NOTHING;
        }
        if (type == Character.DECIMAL_DIGIT_NUMBER) {
            return (char) ('0' + Character.digit(c, 10));
        }
        return c < 0x80 ? Character.toLowerCase(c) : unaccented(c);
    }

    private static char unaccented(char c) {
        if (!Character.isLetter(c) || ofOtherScript(c)) {
            return c;
        }
        char first = java.text.Normalizer.normalize(String.valueOf(c), java.text.Normalizer.Form.NFKD)
                .charAt(0);
        return first < 0x80 && Character.isLetterOrDigit(first) ? Character.toLowerCase(first) : c;
    }

    /** Whether the letter is Greek, Cyrillic, Chinese, Japanese or Korean: no Latin letter stands in it, and how it is made up need not be looked up. */
    private static boolean ofOtherScript(char c) {
        return c >= 0x370 && c < 0x530 || c >= 0x3040 && c < 0xA000 || c >= 0xAC00 && c < 0xD800;
    }
}
