package roundwright.notation;

import java.util.Optional;

/** Finds stitch names in a line's text. */
public final class NameFinder {
    private NameFinder() {}

    /** The first name that only writers in the other terms use. */
    public static Optional<Span> ofOtherTerms(String text, Terms terms) {
        return Scanner.scan(text, new Vocabulary()).stream()
                .filter(token -> token.name() != null && token.name().only(terms.other()))
                .map(Token::span)
                .findFirst();
    }
}
