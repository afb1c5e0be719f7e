package roundwright.group.messages;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import roundwright.group.messages.Mark.Kind;

/** What kind of sentence it is: told, asked, or only imagined. */
final class Spoken {
    /** Words before the word that makes a question. */
    private static final Set<String> BEFORE_QUESTION = Set.of(
            "so",
            "and",
            "but",
            "also",
            "hi",
            "hello",
            "question",
            "ok",
            "please",
            "pls",
            "sorry",
            "um",
            "hey",
            ",",
            ":",
            "-",
            "\n",
            "quick",
            "q",
            "just",
            "oh");

    /** Words that begin tellings as often as questions: "did round 6". */
    private static final Set<String> TELLING = Set.of("did", "have", "has", "am", "if", "is", "are", "will", "can");

    private static final String OTHERS =
            "anyone|anybody|someone|somebody|everyone|everybody|you|u|ye|they|we|others|people";

    private Spoken() {}

    /** The first token of a sentence. */
    static int begin(List<Mark> sentence, List<Token> tokens) {
        int at = sentence.get(0).first();
        while (at > 0 && !ends(tokens.get(at - 1))) {
            at--;
        }
        return at;
    }

    private static boolean ends(Token token) {
        return ".!?;".contains(token.folded()) || token.lineEnd();
    }

    static boolean question(List<Mark> sentence, List<Token> tokens, boolean asked) {
        int at = begin(sentence, tokens);
        while (at < tokens.size() - 1
                && (BEFORE_QUESTION.contains(tokens.get(at).folded())
                        || sentence.get(0).is(Kind.NAME)
                                && at >= sentence.get(0).first()
                                && at < sentence.get(0).after())) {
            at++;
        }
        String word = tokens.get(at).folded();
        if (!Cues.is(Cue.QUESTION, word)) {
            return false;
        }
        if (!TELLING.contains(word)) {
            return asked || !Shape.matches(word, "who|which|should|could|would|does|do") || countsNothing(sentence);
        }
        boolean told = word.equals("is")
                && IntStream.range(at + 1, Math.min(at + 4, tokens.size()))
                        .anyMatch(next -> tokens.get(next).matches("ok|okay|normal|alright"));
        boolean others = at + 1 < tokens.size() && tokens.get(at + 1).matches(OTHERS);
        return asked && !told && (others || !Shape.matches(word, "did|have|has|am"));
    }

    private static boolean countsNothing(List<Mark> sentence) {
        return sentence.stream().noneMatch(Mark::number);
    }

    /** A sentence without what is only imagined in it, or is asked at its end: "r6 36, should r7 be 42?". */
    static List<Mark> without(List<Mark> sentence, List<Token> tokens, boolean asked) {
        List<Mark> told = new ArrayList<>();
        boolean imagined = false;
        for (int index = 0; index < sentence.size(); index++) {
            Mark mark = sentence.get(index);
            boolean joint = mark.is(Kind.JOINT) && ",\nbutand".contains(mark.text());
            boolean questionAfterJoint = asked
                    && joint
                    && index + 1 < sentence.size()
                    && sentence.get(index + 1).is(Kind.QUESTION_WORD)
                    && sentence.get(index + 1).first() == mark.after()
                    && !TELLING.contains(tokens.get(mark.after()).folded().replaceAll("^(is|are|can)$", ""));
            imagined |= mark.is(Kind.HYPOTHETICAL) || questionAfterJoint;
            imagined &= !(mark.is(Kind.JOINT) && mark.text().equals("\n"));
            if (!imagined) {
                told.add(mark);
            }
        }
        return told;
    }

    /** The stretches between commas, line ends, "and" and "but". */
    static List<List<Mark>> clauses(List<Mark> sentence) {
        List<List<Mark>> clauses = new ArrayList<>();
        List<Mark> clause = new ArrayList<>();
        for (Mark mark : sentence) {
            if (mark.is(Kind.JOINT)
                    && List.of(",", "\n", "and", "but", "then", "so").contains(mark.text())) {
                clauses.add(clause);
                clause = new ArrayList<>();
            } else {
                clause.add(mark);
            }
        }
        clauses.add(clause);
        return clauses.stream().filter(other -> !other.isEmpty()).toList();
    }
}
