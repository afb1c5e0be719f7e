package roundwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.notation.Feature;
import roundwright.notation.Node;
import roundwright.notation.Terms;
import roundwright.notation.WrittenLine;
import roundwright.wording.Wording;

/** A round in plain words for a beginner: what to do, how often, and the count it makes. */
final class RoundWords {
    private static final Wording WORDS = Wording.of("pattern");
    private static final Pattern FIGURES = Pattern.compile("\\d{1,4}");

    private final StepWords steps;
    private final WrittenLine line;

    private RoundWords(WrittenLine line, Terms terms, boolean flat) {
        this.steps = new StepWords(terms, flat, line.text());
        this.line = line;
    }

    /**
     * The round in words.
     *
     * @param line where it was written
     * @param flat whether it is a row, worked to and fro
     */
    static String of(List<Piece> pieces, WrittenLine line, Terms terms, OptionalInt available, boolean flat) {
        String doing = new RoundWords(line, terms, flat).sentence(pieces);
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
        long worked = pieces.stream().filter(RoundWords::works).count();
        List<String> parts = new ArrayList<>(beginnings(pieces));
        for (Piece piece : pieces) {
            parts.add(part(piece, worked == 1 && works(piece), parts.isEmpty()));
        }
        if (notes(true).contains(Feature.TURNED)) {
            parts.add(WORDS.say("step.turn"));
        }
        return joined(parts);
    }

    private static boolean works(Piece piece) {
        boolean beside = piece instanceof Piece.Run run
                && (run.step().action() == Step.Action.JOIN || run.step().starts());
        return !beside;
    }

    /** What is made ready before the first stitch: a ring, a chain, a turn. */
    private List<String> beginnings(List<Piece> pieces) {
        List<String> parts = new ArrayList<>();
        boolean chains = false;
        boolean joined = false;
        for (Node node : line.body()) {
            if (!(note(node).orElse(null) instanceof Node.Note note)) {
                break;
            }
            switch (note.feature()) {
                case CHAIN_START, FOUNDATION_CHAIN, RING_OF_CHAINS -> {
                    int number = number(note);
                    if (number > 0) {
                        parts.add(WORDS.say("step.chain", number, StepWords.number(number)));
                    } else if (note.feature() == Feature.RING_OF_CHAINS && !joined) {
                        joined = true;
                        parts.add(WORDS.say("step.into-ring"));
                    }
                    chains = true;
                }
                case TURNED -> parts.add(WORDS.say("step.turn"));
                default -> {}
            }
        }
        boolean ring = line.features().contains(Feature.MAGIC_RING) && Sums.takes(pieces) == 0;
        if (ring && !chains && pieces.stream().anyMatch(RoundWords::intoRing)) {
            parts.add(WORDS.say("step.magic-ring"));
        }
        return parts;
    }

    private static boolean intoRing(Piece piece) {
        return piece instanceof Piece.Run run && run.target() == Node.Target.RING;
    }

    private int number(Node.Note note) {
        Matcher figures = FIGURES.matcher(note.span().of(line.text()));
        return figures.find() ? Integer.parseInt(figures.group()) : 0;
    }

    private static Optional<Node> note(Node node) {
        if (node instanceof Node.Choice choice && choice.options().get(0) instanceof Node.Note note) {
            return Optional.of(note);
        }
        return node instanceof Node.Note ? Optional.of(node) : Optional.empty();
    }

    /** The features of the notes after the line's last step, or before its first. */
    private List<Feature> notes(boolean after) {
        List<Feature> features = new ArrayList<>();
        for (Node node : line.body()) {
            if (node instanceof Node.Note note) {
                features.add(note.feature());
            } else if (after) {
                features.clear();
            }
        }
        return features.size() == line.body().size() ? List.of() : features;
    }

    private String part(Piece piece, boolean alone, boolean first) {
        if (piece instanceof Piece.Run run) {
            return steps.say(run, alone && run.times() > 1);
        }
        Piece.Loop loop = (Piece.Loop) piece;
        List<String> parts = loop.body().stream()
                .map(inner -> part(inner, false, loop.body().size() == 1))
                .toList();
        if (loop.times() == 1) {
            return joined(parts);
        }
        String times = StepWords.times(loop.times());
        return WORDS.say(alone && first ? "repeat.times" : "repeat.nested", inner(parts), times);
    }

    /** Steps within a repeat: commas, and "then" before the last. */
    private static String inner(List<String> parts) {
        return joined(parts, "list.more");
    }

    private static String joined(List<String> parts) {
        return joined(parts, parts.size() > 2 ? "list.clause" : "list.more");
    }

    private static String joined(List<String> parts, String with) {
        if (parts.size() < 2) {
            return String.join("", parts);
        }
        boolean clauses = with.equals("list.clause");
        String before = listed(parts.subList(0, parts.size() - 1), clauses);
        String last = parts.get(parts.size() - 1);
        return clauses ? WORDS.say("then-clause", before, last) : WORDS.say("then", before, last);
    }

    /** Half is joined to half: each part joined to all before it would take the square of their number. */
    private static String listed(List<String> parts, boolean clauses) {
        if (parts.size() == 1) {
            return parts.get(0);
        }
        int middle = parts.size() / 2;
        String before = listed(parts.subList(0, middle), clauses);
        String after = listed(parts.subList(middle, parts.size()), clauses);
        return clauses ? WORDS.say("list.clause", before, after) : WORDS.say("list.more", before, after);
    }

    static String capital(String sentence) {
        return sentence.isEmpty() ? sentence : Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }
}
