package roundwright.group.messages;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundwright.notation.Span;

/** Goes through the messages of a text, one after another, and remembers what the next one may lean on. */
final class Conversation {
    /** Readings of messages that follow one another from one sender that are kept together. */
    private static final int MOST = 40;

    private final Known known;
    private final Map<String, List<Reading>> said = new HashMap<>();
    private List<Reading> last = List.of();
    private final Map<Optional<String>, Speaker> speakers = new HashMap<>();
    private final Map<String, List<Integer>> open = new HashMap<>();
    private List<Integer> topic = List.of();

    private final List<PastedTable> tables;

    /** Tables that end before the message at hand. */
    private int passed;

    Conversation(Known known, List<PastedTable> tables) {
        this.known = known;
        this.tables = tables;
    }

    List<Finding> next(String text, Message message) {
        Speaker speaker = speakers.computeIfAbsent(message.sender(), sender -> Speaker.of(sender, known.names()));
        List<Span> noise = new ArrayList<>(Noise.in(text, message.body()));
        noise.addAll(message.quoted());
        List<PastedTable> inside = tablesIn(message.body());
        inside.forEach(table -> noise.add(table.span()));
        List<Token> tokens = Tokens.of(text, message.body());
        List<Mark> marks = Marker.mark(tokens, noise, known, speaker.students());
        if (speaker.teacher()) {
            askedFor(marks);
            return List.of();
        }
        MessageReader reader = new MessageReader(known, this, message, speaker, tokens, marks);
        inside.stream()
                .filter(table -> table.span().start() >= message.body().start())
                .forEach(reader::table);
        List<Finding> findings = reader.read();
        remember(findings);
        stillWorked(findings);
        reader.topic().ifPresent(rounds -> topic = rounds);
        oneRound(reader.readings());
        return findings;
    }

    /** Tables and messages both come in the order of the text: a table that ends before one message ends before all that follow. */
    private List<PastedTable> tablesIn(Span body) {
        while (passed < tables.size() && tables.get(passed).span().end() <= body.start()) {
            passed++;
        }
        return tables.subList(passed, tables.size()).stream()
                .takeWhile(table -> table.span().start() < body.end())
                .toList();
    }

    private void stillWorked(List<Finding> findings) {
        for (Finding finding : findings) {
            if (finding instanceof Unplaced unplaced && unplaced.reason() == Unplaced.Reason.UNFINISHED) {
                unplaced.student().ifPresent(name -> open.put(name, unplaced.rounds()));
            } else if (finding instanceof Reading reading) {
                reading.student().ifPresent(open::remove);
            }
        }
    }

    /** What everybody speaks of, until somebody speaks of something else. */
    private void oneRound(List<Reading> readings) {
        List<Integer> rounds = readings.stream()
                .flatMap(reading -> reading.rounds().stream())
                .distinct()
                .toList();
        if (!rounds.isEmpty()) {
            topic = rounds.size() == 1 ? rounds : List.of();
        }
    }

    private void askedFor(List<Mark> marks) {
        List<Mark> rounds =
                marks.stream().filter(mark -> mark.is(Mark.Kind.ROUNDS)).toList();
        if (rounds.size() == 1) {
            topic = rounds.get(0).rounds();
        }
    }

    private void remember(List<Finding> findings) {
        List<Reading> readings = findings.stream()
                .filter(Reading.class::isInstance)
                .map(Reading.class::cast)
                .toList();
        if (!readings.isEmpty()) {
            Optional<String> speaker = readings.get(0).student();
            boolean goesOn = speaker.isPresent()
                    && !last.isEmpty()
                    && last.get(0).student().equals(speaker);
            last = Stream.concat(goesOn ? last.stream() : Stream.empty(), readings.stream())
                    .skip(goesOn ? Math.max(0, last.size() - MOST) : 0)
                    .toList();
            said.putAll(last.stream()
                    .filter(reading -> reading.student().isPresent())
                    .collect(Collectors.groupingBy(reading -> reading.student().orElseThrow())));
        }
    }

    /** What was said last, by anybody. */
    List<Reading> last() {
        return last;
    }

    /** What a student said last. */
    List<Reading> last(String student) {
        return said.getOrDefault(student, List.of());
    }

    /** The round that a student was working when last heard of; else the rounds that were asked for, or that head a list. */
    List<Integer> topic(Optional<String> student) {
        return student.map(open::get).filter(rounds -> !rounds.isEmpty()).orElse(topic);
    }
}
