package roundwright.notation;

import java.util.List;

/** A line of a pattern that may be looked at more than once: it is cut into its words anew only where the pattern has defined words since. */
public final class ScannedLine {
    private final String text;
    private final Vocabulary vocabulary;
    private List<Token> tokens;
    private int definitions;

    public ScannedLine(String text, Vocabulary vocabulary) {
        this.text = text;
        this.vocabulary = vocabulary;
    }

    /** The line as written. */
    public String text() {
        return text;
    }

    Vocabulary vocabulary() {
        return vocabulary;
    }

    /** Its words, numbers and marks. */
    List<Token> tokens() {
        if (tokens == null || definitions != vocabulary.definitions()) {
            tokens = Scanner.scan(text, vocabulary);
            definitions = vocabulary.definitions();
        }
        return tokens;
    }
}
