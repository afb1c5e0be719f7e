package roundwright.group.messages;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import roundwright.group.messages.Mark.Kind;

/** Finds the counts of a sentence that stand before their rounds: "36 on round 6", "30 r5, 36 r6", "42 at the marker, round 8". */
final class Bindings {
    private final MessageReader message;
    private final Known known;
    private final List<Token> tokens;
    private final List<Mark> marks;
    private final Set<Mark> used;
    private final Map<Mark, Mark> bound = new HashMap<>();
    private final Map<Mark, Integer> places = new HashMap<>();

    /** @param used marks that have their meaning already; rounds that are bound are added */
    Bindings(MessageReader message, Known known, List<Token> tokens, List<Mark> marks, Set<Mark> used) {
        this.message = message;
        this.known = known;
        this.tokens = tokens;
        this.marks = marks;
        this.used = used;
        IntStream.range(0, marks.size()).forEach(index -> places.put(marks.get(index), index));
    }

    /** Counts, each with its rounds. */
    Map<Mark, Mark> find() {
        lists();
        bindings();
        countsFirst();
        namedInTurn();
        oneAndOne();
        return bound;
    }

    /** One count and, farther on in the sentence, one round: what stands between does not matter. */
    private void oneAndOne() {
        List<Mark> said = marks.stream()
                .filter(mark -> !used.contains(mark) && (mark.number() || mark.is(Kind.ROUNDS) || mark.is(Kind.SHIFT)))
                .toList();
        boolean lone = said.size() == 2
                && said.get(0).number()
                && said.get(1).is(Kind.ROUNDS)
                && !bound.containsKey(said.get(0));
        boolean waiting = !message.pending().isEmpty() && !message.answered(message.pending());
        if (lone
                && !waiting
                && said.get(1).rounds().stream()
                        .allMatch(round ->
                                known.near(message.part(), round, said.get(0).value(), 4))) {
            used.add(said.get(1));
            bound.put(said.get(0), said.get(1));
        }
    }

    /** "42, 36 and 36 for rounds 9-11": as many counts as rounds, each for its own. */
    private void lists() {
        for (int index = 1; index < marks.size(); index++) {
            Mark label = marks.get(index);
            int many = label.rounds().size();
            List<Mark> counts = label.is(Kind.ROUNDS) && many > 1 && !used.contains(label) ? joined(index) : List.of();
            if (many > 1 && counts.size() == many && boundTo(counts.get(many - 1), label)) {
                used.add(label);
                IntStream.range(0, many).forEach(place -> bound.put(counts.get(place), oneOf(label, place)));
            }
        }
    }

    private static Mark oneOf(Mark label, int place) {
        return new Mark(
                Kind.ROUNDS, List.of(label.rounds().get(place)), 0, "", label.span(), label.first(), label.after());
    }

    /** The counts before a place, with nothing but what joins between them. */
    private List<Mark> joined(int end) {
        List<Mark> counts = new ArrayList<>();
        for (int index = end - 1; index >= 0; index--) {
            Mark mark = marks.get(index);
            if (mark.number() && !used.contains(mark)) {
                counts.add(0, mark);
            } else if (!mark.is(Kind.JOINT) && !mark.is(Kind.PART)) {
                return counts;
            }
        }
        return counts;
    }

    private boolean boundTo(Mark count, Mark label) {
        return IntStream.range(count.after(), label.first()).anyMatch(at -> Cues.is(Cue.BINDING, tokens.get(at)));
    }

    /** "Dov 12 and Shira 11 on round 16": a count for each name, and the round once for all. */
    private void namedInTurn() {
        List<Mark> said = marks.stream()
                .filter(mark -> mark.number() || mark.is(Kind.ROUNDS) || mark.is(Kind.NAME) || mark.is(Kind.SELF))
                .toList();
        while (said.size() > 2 && !said.get(0).number() && !said.get(1).number()) {
            said = said.subList(1, said.size());
        }
        List<Mark> turn = said;
        Mark label = said.isEmpty() ? null : said.get(said.size() - 1);
        int pairs = said.size() / 2;
        boolean turns = pairs > 1
                && said.size() % 2 == 1
                && label.is(Kind.ROUNDS)
                && IntStream.range(0, 2 * pairs)
                        .allMatch(place -> turn.get(place).number() == (place % 2 == 1))
                && IntStream.range(0, pairs)
                        .noneMatch(pair -> turn.get(2 * pair).is(Kind.ROUNDS))
                && IntStream.range(0, pairs).allMatch(pair -> fits(turn.get(2 * pair + 1), label));
        if (turns) {
            used.add(label);
            IntStream.range(0, pairs).forEach(pair -> bound.put(turn.get(2 * pair + 1), label));
        }
    }

    private boolean fits(Mark count, Mark label) {
        return label.rounds().stream()
                .allMatch(round -> Sureness.possible(known, message.part(), round, count.value()));
    }

    private void bindings() {
        boolean open = false;
        boolean said = false;
        for (int index = 0; index + 1 < marks.size(); index++) {
            Mark mark = marks.get(index);
            if (mark.is(Kind.ROUNDS)) {
                open = !used.contains(mark) && !said;
                said = false;
            } else if (mark.is(Kind.SAME) || mark.is(Kind.RIGHT)) {
                said = true;
                open = false;
            } else if ((mark.number() || mark.is(Kind.SHIFT) || mark.is(Kind.UNCLEAR_SHIFT)) && !used.contains(mark)) {
                if (!open) {
                    bind(mark, index);
                }
                open = false;
            }
        }
    }

    private void bind(Mark count, int index) {
        Optional<Mark> next = marks.subList(index + 1, marks.size()).stream()
                .filter(mark -> !mark.is(Kind.TARGET)
                        && !mark.is(Kind.PART)
                        && !mark.is(Kind.OTHER)
                        && !(mark.is(Kind.NAME) && possessive(mark))
                        && !(mark.is(Kind.JOINT) && mark.text().equals("(")))
                .findFirst();
        if (next.isPresent() && !used.contains(next.get()) && binds(count, next.get()) && !countFollows(next.get())) {
            used.add(next.get());
            bound.put(count, next.get());
        }
    }

    /** "30 for r5 36 …": the round already has its own count after it. */
    private boolean countFollows(Mark rounds) {
        int index = places.get(rounds);
        return rounds.is(Kind.ROUNDS)
                && index + 1 < marks.size()
                && marks.get(index + 1).number()
                && marks.get(index + 1).first() == rounds.after();
    }

    private boolean binds(Mark count, Mark next) {
        boolean word = false;
        for (int at = afterTarget(count); at < next.first(); at++) {
            if (inPart(at) || inOwner(at)) {
                continue;
            }
            String between = tokens.get(at).folded();
            word |= Cues.is(Cue.BINDING, between);
            if (!Cues.is(Cue.BINDING, between) && !Cues.is(Cue.BETWEEN, between)) {
                return false;
            }
        }
        if (next.is(Kind.ROUNDS)) {
            return word || count.is(Kind.SHIFT) && count.after() == next.first();
        }
        boolean fits = !count.number()
                ? known.has(message.part(), next.value())
                : known.near(message.part(), next.value(), count.value(), 4);
        return next.is(Kind.NUMBER) && word && fits;
    }

    /** "30 for Shira's round 13": whose it is stands between. */
    private boolean inOwner(int token) {
        return marks.stream()
                .anyMatch(mark ->
                        (mark.is(Kind.NAME) || mark.is(Kind.OTHER)) && mark.first() <= token && token < mark.after());
    }

    private boolean possessive(Mark name) {
        return tokens.get(name.after() - 1).folded().endsWith("s")
                || name.after() < tokens.size() && tokens.get(name.after()).is("s");
    }

    /** "12 in lantern round 2": the part stands between. */
    private boolean inPart(int token) {
        return marks.stream().anyMatch(mark -> mark.is(Kind.PART) && mark.first() <= token && token < mark.after());
    }

    /** "35 out of 36 on round 6": the count that is due stands between. */
    private int afterTarget(Mark count) {
        int next = places.get(count) + 1;
        boolean target = next < marks.size()
                && marks.get(next).is(Kind.TARGET)
                && marks.get(next).first() == count.after();
        return target ? marks.get(next).after() : count.after();
    }

    /** "30 r5, 36 r6": every count before its round. */
    private void countsFirst() {
        List<Mark> said = marks.stream()
                .filter(mark ->
                        !used.contains(mark) && !bound.containsKey(mark) && (mark.number() || mark.is(Kind.ROUNDS)))
                .toList();
        boolean turns = !said.isEmpty()
                && said.size() % 2 == 0
                && message.pending().isEmpty()
                && IntStream.range(0, said.size())
                        .allMatch(index -> said.get(index).number() == (index % 2 == 0))
                && IntStream.range(0, said.size() / 2)
                        .allMatch(pair -> near(said.get(2 * pair), said.get(2 * pair + 1)));
        if (turns) {
            for (int index = 0; index < said.size(); index += 2) {
                used.add(said.get(index + 1));
                bound.put(said.get(index), said.get(index + 1));
            }
        }
    }

    private boolean near(Mark count, Mark label) {
        return label.first() - count.after() <= 3 && fits(count, label);
    }
}
