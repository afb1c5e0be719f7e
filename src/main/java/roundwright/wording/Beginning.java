package roundwright.wording;

/** The beginning of words that are too long to be shown whole. A letter or picture of two characters is never cut in half. */
public final class Beginning {
    private Beginning() {}

    /** The text, or as many of its characters as may be shown. */
    public static String of(String text, int longest) {
        if (text.length() <= longest) {
            return text;
        }
        boolean half = longest > 0 && Character.isHighSurrogate(text.charAt(longest - 1));
        return text.substring(0, half ? longest - 1 : longest);
    }

    /** As {@link #of}, with an ellipsis where something was left out. */
    public static String shown(String text, int longest) {
        return text.length() <= longest ? text : of(text, longest).stripTrailing() + "…";
    }
}
