package roundwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import roundwright.notation.Terms;
import roundwright.wording.Wording;

/** A round in plain words for a beginner: what to do, how often, and the count it makes. */
final class RoundWords {
    private static final Wording WORDS = Wording.of("pattern");

    private final StepWords steps;

    private RoundWords(Terms terms) {
        this.steps = new StepWords(terms);
    }

    static String of(List<Piece> pieces, Terms terms, OptionalInt available) {
        String doing = new RoundWords(terms).sentence(pieces);
        long makes = Sums.makes(pieces);
        return WORDS.say("words.round", capital(doing), count(makes, available));
    }

    private static String count(long makes, OptionalInt available) {
        if (available.isEmpty()) {
            return WORDS.say("words.count", makes);
        }
        long difference = makes - available.getAsInt();
        if (difference == 0) {
            return WORDS.say("words.count-same", makes);
        }
        return difference > 0
                ? WORDS.say("words.count-more", makes, StepWords.number(difference))
                : WORDS.say("words.count-fewer", makes, StepWords.number(-difference));
    }

    private String sentence(List<Piece> pieces) {
        long worked = pieces.stream().filter(piece -> piece.takes() > 0).count();
        List<String> parts = new ArrayList<>();
        for (Piece piece : pieces) {
            parts.add(part(piece, worked == 1, pieces.size() == 1));
        }
        return joined(parts);
    }

    private String part(Piece piece, boolean alone, boolean only) {
        if (piece instanceof Piece.Run run) {
            boolean all = alone && run.step().takes() == 1 && run.times() > 1;
            return steps.say(run.step(), run.times(), all);
        }
        Piece.Loop loop = (Piece.Loop) piece;
        List<String> parts = loop.body().stream()
                .map(inner -> part(inner, false, loop.body().size() == 1))
                .toList();
        String times = StepWords.times(loop.times());
        return WORDS.say(only || alone ? "repeat.times" : "repeat.nested", joined(parts), times);
    }

    private static String joined(List<String> parts) {
        String all = parts.isEmpty() ? "" : parts.get(0);
        for (String part : parts.subList(Math.min(1, parts.size()), parts.size())) {
            all = WORDS.say("then", all, part);
        }
        return all;
    }

    private static String capital(String sentence) {
        return sentence.isEmpty() ? sentence : Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }
}
