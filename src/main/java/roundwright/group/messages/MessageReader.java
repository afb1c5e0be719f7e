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

    /** Marks after which a sentence ends in any case: reading one takes longer than its length. */
    private static final int LONGEST_SENTENCE = 160;

    private final Known known;
    private final Conversation conversation;
    private final List<Token> tokens;
    private final List<Mark> marks;
    private final Filing filing;
    private Speaker speaker;
    private List<String> students;
    private Optional<String> named = Optional.empty();
    private Optional<String> part = Optional.empty();
    private List<Integer> pending = List.of();
    private boolean questioned;
    private boolean partFollows;
    private boolean pulledBack;
    private boolean correcting;
    private OptionalInt pulledTo = OptionalInt.empty();

    MessageReader(
            Known known,
            Conversation conversation,
            Message message,
            Speaker speaker,
            List<Token> tokens,
            List<Mark> marks) {
        this.known = known;
        this.conversation = conversation;
        this.filing = new Filing(known, message);
        this.speaker = speaker;
        this.students = speaker.students();
        this.tokens = tokens;
        this.marks = new ArrayList<>(marks);
    }

    List<Finding> read() {
        introduction();
        signedBelow();
        BareLabels.find(marks, tokens, known);
        int from = 0;
        for (int index = 0; index <= marks.size(); index++) {
            if (index == marks.size() || marks.get(index).is(Kind.END) || endsLongSentence(index, from)) {
                boolean asked = index < marks.size() && marks.get(index).text().contains("?");
                sentence(marks.subList(from, index), asked);
                boolean parts = index == marks.size()
                        || marks.get(index).is(Kind.END)
                        || marks.get(index).is(Kind.JOINT);
                from = parts ? index + 1 : index;
            }
        }
        if (readings().isEmpty()) {
            sameAsAnother();
        }
        filing.finish();
        signature();
        return filing.findings();
    }

    /** Files what a table in the message holds. */
    void table(PastedTable table) {
        for (PastedTable.Cell cell : table.cells()) {
            Said said = new Said(cell.count(), false, Sureness.PLAIN, false);
            List<String> whose = cell.students().orElse(students);
            filing.file(whose, cell.part().or(() -> part), cell.from(), cell.to(), said, cell.source());
        }
    }

    /** Lists go on line after line without a full stop; no sentence does. */
    private boolean endsLongSentence(int index, int from) {
        return index - from > LONGEST_SENTENCE
                || index - from > LONG_SENTENCE
                        && marks.get(index).is(Kind.JOINT)
                        && marks.get(index).text().equals("\n");
    }

    /** The one round a message was about, for those who answer with a bare number. */
    Optional<List<Integer>> topic() {
        return readings().isEmpty() && !pending.isEmpty() ? Optional.of(pending) : Optional.empty();
    }

    List<Reading> readings() {
        return filing.readings().toList();
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
        boolean here = Shape.matches(word(mark.after()), "here|speaking|again")
                && !word(mark.first() - 1).equals("and");
        boolean is = Shape.matches(
                        word(mark.first() - 2) + " " + word(mark.first() - 1),
                        "this is|it is|i am|here is|name is|.* (its|im|heres)")
                && !(word(mark.after()).equals("s"));
        return here || is;
    }

    /** A name alone below what is said is whose words they are, where nobody else is known to have sent them. */
    private void signedBelow() {
        if (!speaker.students().isEmpty()) {
            return;
        }
        for (int index = marks.size() - 1; index >= 0 && !marks.get(index).number(); index--) {
            Mark name = marks.get(index);
            if (name.is(Kind.NAME) && alone(name)) {
                speaker = new Speaker(List.of(name.text()), false);
                students = speaker.students();
                marks.remove(index);
                return;
            }
        }
    }

    private boolean alone(Mark name) {
        int before = name.first() - 1;
        while (before > 0
                && Shape.matches(word(before), "love|from|regards|best|cheers|thanks|thank|you|yours|x+|,|-|–|—")) {
            before--;
        }
        int after = name.after();
        while (after < tokens.size() && Shape.matches(word(after), "x+|[.,!]")) {
            after++;
        }
        return before > 0
                && Shape.matches(word(before), "[\\n.!?]")
                && (after >= tokens.size() || tokens.get(after).lineEnd());
    }

    /** A name below the words of a message that came from nobody in particular. */
    private void signature() {
        if (!speaker.students().isEmpty() || marks.isEmpty()) {
            return;
        }
        Mark end = marks.get(marks.size() - 1);

        if (end.is(Kind.NAME)) {
            filing.findings()
                    .replaceAll(finding -> finding instanceof Reading reading
                                    && reading.student().isEmpty()
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
        List<Mark> imagined = new ArrayList<>(sentence);
        imagined.removeAll(said);
        asked(imagined, 1);
        unfinished(said);
        new SentenceReader(this, known, tokens, said).read();
        boolean silent = said.stream().noneMatch(mark -> mark.number() || mark.is(Kind.ROUNDS));
        correcting = silent && correcting
                || said.stream()
                        .anyMatch(mark -> mark.is(Kind.CORRECTION)
                                && (silent || mark.text().equals(Marker.WRONG)));
    }

    /** Whether the sentence before began to put something right: "Found it! 36". */
    boolean correcting() {
        return correcting;
    }

    /** "If yes 19, if no 18 (round 3)": counts within what is asked are for the teacher to look at. */
    private void asked(List<Mark> marks, int fewest) {
        List<Mark> rounds = marks.stream().filter(mark -> mark.is(Kind.ROUNDS)).toList();
        List<Mark> numbers = marks.stream().filter(Mark::number).toList();
        List<Integer> which = rounds.isEmpty() ? pending : rounds.get(0).rounds();
        boolean counts = rounds.size() < 2
                && which.size() == 1
                && numbers.size() >= fewest
                && numbers.stream().allMatch(number -> known.near(part, which.get(0), number.value(), 3))
                && numbers.stream().anyMatch(number -> !known.near(part, which.get(0), number.value(), 0));
        if (counts) {
            Span span = marks.get(0).span().to(marks.get(marks.size() - 1).span());
            set(Unplaced.Reason.ASKED, which, span);
        }
    }

    private void question(List<Mark> sentence) {
        asked(sentence, 1);
        sentence.stream()
                .filter(mark -> mark.is(Kind.NAME))
                .findFirst()
                .ifPresent(mark -> named = Optional.of(mark.text()));
        List<Mark> rounds =
                sentence.stream().filter(mark -> mark.is(Kind.ROUNDS)).toList();
        if (rounds.size() == 1 && readings().isEmpty()) {
            pending = rounds.get(0).rounds();
        }
        List<Mark> numbers = sentence.stream()
                .filter(mark -> mark.number() || mark.is(Kind.TARGET))
                .toList();
        if (rounds.isEmpty()) {
            bareRound(numbers).ifPresent(round -> pending = List.of(round.value()));
        }
    }

    /** "What's everyone's count on 17?", "has anyone got 12 on 16?", "should 13 be 30?" */
    private Optional<Mark> bareRound(List<Mark> numbers) {
        if (numbers.isEmpty() || numbers.size() > 2) {
            return Optional.empty();
        }
        Mark first = numbers.get(0);
        Mark last = numbers.get(numbers.size() - 1);
        boolean bound = Shape.matches(word(last.first() - 1), "on|for|of|at") && known.has(part, last.value());
        if (numbers.size() == 1) {
            return Optional.of(last).filter(round -> bound && !known.expects(round.value()));
        }
        boolean labelled = known.near(part, first.value(), last.value(), 0);
        return bound && known.near(part, last.value(), first.value(), 3)
                ? Optional.of(last)
                : Optional.of(first).filter(round -> labelled);
    }

    /** Takes out of a sentence what is said of rounds still being worked. */
    private void unfinished(List<Mark> said) {
        for (List<Mark> clause : Spoken.clauses(said)) {
            Unfinished.in(clause, tokens, known, part).ifPresent(found -> {
                List<Integer> which = found.rounds().isEmpty() ? roundsBefore(said, found) : found.rounds();
                filing.unfinished(named(said, found).or(this::student), which, pending, found);
                said.removeAll(found.used());
            });
        }
    }

    /** "Nico 11, Kofi not yet": whose round it is, where the sentence names somebody before. */
    private static Optional<String> named(List<Mark> said, Unfinished found) {
        return said.stream()
                .filter(mark ->
                        mark.is(Kind.NAME) && mark.span().start() < found.span().end())
                .reduce((first, second) -> second)
                .map(Mark::text);
    }

    /** "Done up to round 10, not counted yet": the round named before, if nothing else is said of it. */
    private List<Integer> roundsBefore(List<Mark> said, Unfinished found) {
        List<Mark> before = said.stream()
                .filter(mark -> mark.span().end() <= found.span().start())
                .filter(mark -> mark.number() || mark.is(Kind.ROUNDS) || mark.is(Kind.SHIFT))
                .toList();
        boolean named = !before.isEmpty() && before.get(before.size() - 1).is(Kind.ROUNDS);
        return named ? before.get(before.size() - 1).rounds() : pending;
    }

    /** "Same here", "same as Bram". */
    private void sameAsAnother() {
        Optional<Mark> same = marks.stream().filter(mark -> mark.is(Kind.SAME)).findFirst();
        if (same.isEmpty() || marks.stream().anyMatch(Mark::number)) {
            return;
        }
        List<Integer> rounds = marks.stream()
                .filter(mark -> mark.is(Kind.ROUNDS))
                .flatMap(mark -> mark.rounds().stream())
                .toList();
        sameAsAnother(same.get(), rounds);
    }

    /** Files for some rounds what another has, or for all of that one's where none is named; says whether there was anything. */
    boolean sameAsAnother(Mark same, List<Integer> rounds) {
        Optional<String> other = marks.stream()
                .filter(mark -> mark.is(Kind.NAME) && mark.first() >= same.after())
                .map(Mark::text)
                .findFirst();
        boolean found = false;
        for (Reading reading : other.map(conversation::last).orElseGet(conversation::last)) {
            if (rounds.isEmpty() || rounds.contains(reading.from())) {
                Said said = new Said(reading.count(), false, Sureness.SAME, reading.inferred());
                filing.file(students, reading.part(), reading.from(), reading.to(), said, same.span());
                found = true;
            }
        }
        return found;
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

    /** The last round that was left when the work was pulled back: those after it are made again. */
    void pulledTo(int round) {
        pulledTo = OptionalInt.of(round);
    }

    /** A count whose round nobody has named so far. */
    void loose(Mark number) {
        OptionalInt count = OptionalInt.of(number.value());
        filing.loose(number, new Unplaced(Unplaced.Reason.NO_ROUND, student(), List.of(), count, number.span()));
    }

    Optional<Mark> takeLoose() {
        return filing.takeLoose();
    }

    boolean answered(List<Integer> rounds) {
        return readings().stream()
                .anyMatch(reading -> rounds.contains(reading.from())
                        && !reading.doubtful()
                        && reading.student().equals(student())
                        && (part.isEmpty() || filing.parts(part).contains(reading.part())));
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
        filing.add(new Unplaced(reason, student(), rounds, OptionalInt.empty(), source));
    }

    /** Files a reading for everybody the sentence speaks of. */
    void file(int from, int to, Said told, Span source) {
        boolean remade = pulledTo.isPresent() && from > pulledTo.getAsInt();
        Said said = remade ? new Said(told.count(), true, told.sureness(), told.inferred()) : told;
        filing.file(students, part, from, to, said, source);
    }

    void allRight(List<Integer> rounds, Span source) {
        filing.allRight(students, part, rounds, source);
    }

    private String word(int at) {
        return at >= 0 && at < tokens.size() ? tokens.get(at).folded() : "";
    }
}
