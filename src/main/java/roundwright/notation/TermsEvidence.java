package roundwright.notation;

/** What the words of one line say about the terms it is written in. */
final class TermsEvidence {
    /** A name that only one side uses. */
    private static final int NAMED = 20;

    private static final int HABIT = 1;
    private static final int SPELLING = 2;
    private static final int HEIGHT = 4;

    private TermsEvidence() {}

    /** How far the line speaks for US terms; below nought for UK; 0 where it says nothing. */
    static int of(Reading line) {
        int sum = 0;
        for (StitchName name : line.names) {
            sum += name.only(Terms.US) ? NAMED : name.only(Terms.UK) ? -NAMED : 0;
        }
        Cursor cursor = line.cursor;
        cursor.at = 0;
        for (int i = 0; i < cursor.size(); i++) {
            sum += word(line.text, cursor.peek(i));
        }
        return sum + height(line);
    }

    private static int word(String text, Token token) {
        return switch (token.meaning()) {
            case SKIP -> begins(text, token, 'm') ? -SPELLING : HABIT;
            case SLIP -> token.end() - token.start() == 2 && begins(text, token, 's') ? -HABIT : 0;
            case COLOUR, NOTE -> spelling(text, token);
            case UNKNOWN -> side(text, token);
            default -> 0;
        };
    }

    private static boolean begins(String text, Token token, char letter) {
        return Fold.of(text.charAt(token.start())) == letter;
    }

    private static int spelling(String text, Token token) {
        String word = text.substring(token.start(), token.end()).toLowerCase(java.util.Locale.ROOT);
        if (word.contains("colour") || word.contains("grey")) {
            return -SPELLING;
        }
        return word.contains("color") || word.contains("gray") ? SPELLING : 0;
    }

    private static int side(String text, Token token) {
        String word = text.substring(token.start(), token.end()).toLowerCase(java.util.Locale.ROOT);
        return switch (word) {
            case "uk", "british" -> -HEIGHT;
            case "us", "usa", "american" -> HEIGHT;
            default -> 0;
        };
    }

    /** A tall stitch begins with three chains and comes twelve to a ring, a short one with one and six to a ring. */
    private static int height(Reading line) {
        boolean dc = line.names.contains(StitchName.DC);
        boolean tr = line.names.contains(StitchName.TR);
        if (line.names.size() > 3 || !dc && !tr || dc && tr) {
            return 0;
        }
        boolean started = line.features.contains(Feature.STARTING_CHAIN);
        int sum = 0;
        if (started && dc) {
            sum += line.chains >= 2 ? HEIGHT : -HABIT;
        } else if (started) {
            sum += line.chains == 3 ? -HEIGHT : line.chains == 4 ? HEIGHT : 0;
        }
        int count = line.counts.isEmpty() ? 0 : line.counts.get(0).value();
        if (line.ring && dc && count > 0) {
            sum += count >= 10 ? HEIGHT : count <= 8 ? -HEIGHT : 0;
        }
        return sum;
    }
}
