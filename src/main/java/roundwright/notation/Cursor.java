package roundwright.notation;

import java.util.List;

/** A place among the tokens of a line, and what has been found so far that is not part of the tree. */
final class Cursor {
    private static final Token[] NONE = {};
    private static final Token FINISH = Token.mark(Meaning.FINISH, 0, 0, 0, true);

    private final Token[] tokens;
    private final Token finish;
    int at;

    Cursor(List<Token> tokens) {
        this.tokens = tokens.toArray(NONE);
        int end = tokens.isEmpty() ? 0 : tokens.get(tokens.size() - 1).end();
        this.finish = tokens.isEmpty() ? FINISH : Token.mark(Meaning.FINISH, 0, end, end, true);
    }

    Token peek() {
        return peek(0);
    }

    Token peek(int ahead) {
        int place = at + ahead;
        return place < tokens.length && place >= 0 ? tokens[place] : finish;
    }

    Token next() {
        Token token = peek();
        at++;
        return token;
    }

    boolean is(Meaning meaning) {
        return peek().is(meaning);
    }

    boolean is(int ahead, Meaning meaning) {
        return peek(ahead).is(meaning);
    }

    boolean accept(Meaning meaning) {
        if (is(meaning)) {
            at++;
            return true;
        }
        return false;
    }

    void skip(Meaning meaning) {
        while (is(meaning)) {
            at++;
        }
    }

    void skip(Meaning one, Meaning other) {
        while (is(one) || is(other)) {
            at++;
        }
    }

    void skip(Meaning one, Meaning other, Meaning third) {
        while (is(one) || is(other) || is(third)) {
            at++;
        }
    }

    void skip(Meaning... meanings) {
        while (any(meanings)) {
            at++;
        }
    }

    private boolean any(Meaning[] meanings) {
        Meaning here = peek().meaning();
        for (Meaning meaning : meanings) {
            if (here == meaning) {
                return true;
            }
        }
        return false;
    }

    boolean done() {
        return at >= tokens.length;
    }

    /** Whether a mark, a bracket or the line's end stands at the cursor. */
    boolean clauseEnds() {
        return done() || peek().meaning().parts() || is(Meaning.OPEN) || is(Meaning.EQUALS);
    }

    /** Whether such a token stands anywhere in the line. */
    boolean has(Meaning meaning) {
        for (Token token : tokens) {
            if (token.is(meaning)) {
                return true;
            }
        }
        return false;
    }

    /** From the start of the token at {@code from} to the end of the token before the cursor. */
    Span since(int from) {
        int start = from < tokens.length ? tokens[from].start() : finish.end();
        int end = at > from && at <= tokens.length ? tokens[at - 1].end() : Math.max(start, finish.end());
        return new Span(start, Math.max(start, end));
    }

    /** Whether the bracket that was opened just before the cursor is closed somewhere ahead. */
    boolean shutsAhead() {
        int depth = 1;
        for (int place = at; place < tokens.length && depth > 0; place++) {
            Token token = tokens[place];
            depth += token.is(Meaning.OPEN) ? 1 : token.is(Meaning.SHUT) ? -1 : 0;
        }
        return depth == 0;
    }

    /** Whether a number ahead may be a count: without one, a bracket that never closes is a line cut short. */
    boolean hasCount() {
        for (int place = at; place < tokens.length; place++) {
            if (tokens[place].is(Meaning.OPEN) || tokens[place].is(Meaning.EQUALS) || tokens[place].is(Meaning.TIMES)) {
                return true;
            }
        }
        return false;
    }

    int size() {
        return tokens.length;
    }
}
