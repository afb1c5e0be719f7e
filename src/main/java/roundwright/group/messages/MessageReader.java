package roundwright.group.messages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.group.messages.Mark.Kind;
import roundwright.notation.Span;

/** Reads one message, sentence by sentence: who speaks, of which part, and what each sentence says of counts. */
final class MessageReader {
    /** Marks of a sentence after which the end of a line ends it. */
    private static final int LONG_SENTENCE = 60;

    private final Known known;
    private final Conversation conversation;
    private final Message message;
    private final List<Token> tokens;
    private final List<Mark> marks;
    private final List<Finding> findings = new ArrayList<>();
    private Speaker speaker;
    private List<String> students;
    private Optional<String> named = Optional.empty();
    private Optional<String> part = Optional.empty();
    private List<Integer> pending = List.of();
    private Optional<Mark> loose = Optional.empty();
    private boolean questioned;
    private boolean partFollows;
    private boolean pulledBack;

    MessageReader(
            Known known,
            Conversation conversation,
            Message message,
            Speaker speaker,
            List<Token> tokens,
            List<Mark> marks) {
        this.known = known;
        this.conversation = conversation;
        this.message = message;
        this.speaker = speaker;
        this.students = speaker.students();
        this.tokens = tokens;
        this.marks = new ArrayList<>(marks);
    }

    List<Finding> read() {
        introduction();
        BareLabels.find(marks, tokens, known);
        int from = 0;
        for (int index = 0; index <= marks.size(); index++) {
            if (index == marks.size() || marks.get(index).is(Kind.END) || endsLongSentence(index, from)) {
                boolean asked = index < marks.size() && marks.get(index).text().contains("?");
                sentence(marks.subList(from, index), asked);
                from = index + 1;
            }
        }
        if (readings().isEmpty()) {
            sameAsAnother();
        }
        signature();
        return findings;
    }

    /** Lists go on line after line without a full stop; no sentence does. */
    private boolean endsLongSentence(int index, int from) {
        return index - from > LONG_SENTENCE
                && marks.get(index).is(Kind.JOINT)
                && marks.get(index).text().equals("\n");
    }

    /** The one round a message was about, for those who answer with a bare number. */
    Optional<List<Integer>> topic() {
        return readings().isEmpty() && !pending.isEmpty() ? Optional.of(pending) : Optional.empty();
    }

    List<Reading> readings() {
        return findings.stream()
                .filter(Reading.class::isInstance)
                .map(Reading.class::cast)
                .toList();
    }

    /** "Wendeline here", "this is Wendeline": whose words they are, whatever account they came from. */
    private void introduction() {
        for (Mark mark : marks) {
            if (mark.is(Kind.NAME) && introduces(mark)) {
                speaker = new Speaker(List.of(mark.text()), false);
                students = speaker.students();
                return;
            }
        }
    }

    private boolean introduces(Mark mark) {
        boolean here = word(mark.after()).matches("here|speaking|again")
                && !word(mark.first() - 1).equals("and");
        boolean is = (word(mark.first() - 2) + " " + word(mark.first() - 1)).matches("this is|it is|i am|.* (its|im)")
                && !(word(mark.after()).equals("s"));
        return here || is;
    }

    /** A name below the words of a message that came from nobody in particular. */
    private void signature() {
        if (!speaker.students().isEmpty() || marks.isEmpty()) {
            return;
        }
        Mark end = marks.get(marks.size() - 1);

        if (end.is(Kind.NAME)) {
            findings.replaceAll(finding ->
                    finding instanceof Reading reading && reading.student().isEmpty()
                            ? reading.of(Optional.of(end.text()))
                            : finding);
        }
    }

    private void sentence(List<Mark> sentence, boolean asked) {
        if (sentence.isEmpty()) {
            return;
        }
        if (!speaker.students().isEmpty()) {
            students = speaker.students();
        }
        List<Mark> said = new ArrayList<>(Spoken.without(sentence, tokens, asked));
        boolean guess = questioned && asked && sentence.stream().allMatch(Mark::number);
        questioned = Spoken.question(sentence, tokens, asked);
        if (questioned || guess) {
            question(sentence);
            return;
        }
        unfinished(said);
        new SentenceReader(this, known, tokens, said).read();
    }

    private void question(List<Mark> sentence) {
        sentence.stream()
                .filter(mark -> mark.is(Kind.NAME))
                .findFirst()
                .ifPresent(mark -> named = Optional.of(mark.text()));
        List<Mark> rounds =
                sentence.stream().filter(mark -> mark.is(Kind.ROUNDS)).toList();
        if (rounds.size() == 1 && readings().isEmpty()) {
            pending = rounds.get(0).rounds();
        }
    }

    /** Takes out of a sentence what is said of rounds still being worked. */
    private void unfinished(List<Mark> said) {
        for (List<Mark> clause : Spoken.clauses(said)) {
            Optional<Mark> cue =
                    clause.stream().filter(mark -> mark.is(Kind.UNFINISHED)).findFirst();
            if (cue.isPresent()) {
                List<Mark> rounds =
                        clause.stream().filter(mark -> mark.is(Kind.ROUNDS)).toList();
                List<Mark> numbers = clause.stream().filter(Mark::number).toList();
                OptionalInt soFar = numbers.stream().mapToInt(Mark::value).max();
                List<Integer> which = rounds.isEmpty()
                        ? pending
                        : rounds.get(rounds.size() - 1).rounds();
                unfinished(
                        which,
                        soFar,
                        clause.get(0).span().to(clause.get(clause.size() - 1).span()));
                said.removeAll(rounds);
                said.removeAll(numbers);
            }
        }
    }

    /** "Still on r7, 20 so far" is said of one round. */
    private void unfinished(List<Integer> which, OptionalInt soFar, Span span) {
        Finding last = findings.isEmpty() ? null : findings.get(findings.size() - 1);
        if (last instanceof Unplaced before
                && before.reason() == Unplaced.Reason.UNFINISHED
                && before.soFar().isEmpty()
                && (which.isEmpty() || which.equals(before.rounds()) || which.equals(pending))) {
            findings.remove(before);
            findings.add(new Unplaced(
                    before.reason(),
                    before.student(),
                    before.rounds(),
                    soFar,
                    before.source().to(span)));
        } else {
            findings.add(new Unplaced(Unplaced.Reason.UNFINISHED, student(), which, soFar, span));
        }
    }

    /** "Same here", "same as Bram". */
    private void sameAsAnother() {
        Optional<Mark> same = marks.stream().filter(mark -> mark.is(Kind.SAME)).findFirst();
        if (same.isEmpty() || marks.stream().anyMatch(Mark::number)) {
            return;
        }
        Optional<String> other = marks.stream()
                .filter(mark -> mark.is(Kind.NAME) && mark.first() >= same.get().after())
                .map(Mark::text)
                .findFirst();
        List<Integer> rounds = marks.stream()
                .filter(mark -> mark.is(Kind.ROUNDS))
                .flatMap(mark -> mark.rounds().stream())
                .toList();
        List<Reading> model = other.map(conversation::last).orElseGet(conversation::last);
        for (Reading reading : model) {
            if (rounds.isEmpty() || rounds.contains(reading.from())) {
                file(
                        reading.from(),
                        reading.to(),
                        reading.count(),
                        false,
                        Sureness.SAME,
                        same.get().span(),
                        reading.part());
            }
        }
    }

    void speakingOf(Mark name) {
        named = Optional.of(name.text());
        students = List.of(name.text());
    }

    void speakingOf(List<String> names) {
        students = names;
    }

    void speakingOfSelf() {
        students = speaker.students();
    }

    /** The student who was named last. */
    Optional<String> named() {
        return named;
    }

    Speaker speaker() {
        return speaker;
    }

    Conversation conversation() {
        return conversation;
    }

    void part(String name) {
        part = Optional.of(name);
        partFollows = false;
    }

    /** Whether a part named at the end of a sentence can be that sentence's. */
    boolean partMayFollow() {
        return part.isEmpty() || partFollows;
    }

    void partAfter(String name) {
        part = Optional.of(name);
        partFollows = true;
    }

    /** Whether the work was pulled back in an earlier sentence, so that what is counted now was counted after it. */
    boolean hasPulledBack() {
        return pulledBack;
    }

    void pulledBack(boolean pulled) {
        pulledBack |= pulled;
    }

    /** A count whose round nobody has named so far. */
    void loose(Mark number) {
        set(Unplaced.Reason.NO_ROUND, List.of(), number.span());
        loose = Optional.of(number);
    }

    /** The count without a round that was said last, where it was the last thing said. */
    Optional<Mark> takeLoose() {
        Optional<Mark> taken = loose.filter(
                number -> findings.get(findings.size() - 1).source().equals(number.span()));
        loose = Optional.empty();
        return taken;
    }

    boolean answered(List<Integer> rounds) {
        return readings().stream()
                .anyMatch(reading ->
                        rounds.contains(reading.from()) && reading.student().equals(student()));
    }

    Optional<String> part() {
        return part;
    }

    List<Integer> pending() {
        return pending;
    }

    void pending(List<Integer> rounds) {
        pending = rounds;
    }

    Optional<String> student() {
        return students.isEmpty() ? Optional.empty() : Optional.of(students.get(0));
    }

    void set(Unplaced.Reason reason, List<Integer> rounds, Span source) {
        findings.add(new Unplaced(reason, student(), rounds, OptionalInt.empty(), source));
    }

    /** Files a reading for everybody the sentence speaks of. */
    void file(int from, int to, int count, boolean pulledBack, double sureness, Span source) {
        file(from, to, count, pulledBack, sureness, source, part);
    }

    private void file(
            int from, int to, int count, boolean pulledBack, double sureness, Span source, Optional<String> ofPart) {
        if (!known.has(ofPart, from) || !known.has(ofPart, to)) {
            set(Unplaced.Reason.UNKNOWN_ROUND, List.of(from), source);
            return;
        }
        double confidence = sureness * Sureness.plausible(known, ofPart, from, count);
        double rounded = Math.round(confidence * 100) / 100.0;
        List<Optional<String>> whose = students.isEmpty()
                ? List.of(Optional.empty())
                : students.stream().map(Optional::of).toList();
        for (Optional<String> student : whose) {
            Reading reading = new Reading(student, ofPart, from, to, count, pulledBack, rounded, message.at(), source);
            findings.removeIf(other -> other instanceof Reading earlier && earlier.sameRounds(reading)
                    || other instanceof Unplaced && other.source().equals(source));
            findings.add(reading);
        }
    }

    private String word(int at) {
        return at >= 0 && at < tokens.size() ? tokens.get(at).folded() : "";
    }
}
