package roundwright.notation;

import java.util.List;
import roundwright.notation.Node.Note;
import roundwright.notation.Node.Target;
import roundwright.notation.Node.Together;

/** Adds what stands in brackets or between asterisks: all into one place, into each of several, or as a list to be repeated. */
final class Groups {
    private final Reading line;
    private final Cursor cursor;
    private final Items items;

    Groups(Reading line, Items items) {
        this.line = line;
        this.cursor = line.cursor;
        this.items = items;
    }

    /** Adds the steps that were read from {@code begin} on, with the place that follows them if one does. */
    void add(int begin, List<Node> body, boolean parted) {
        if (Items.onlyNotes(body)) {
            for (Node note : body) {
                items.add(note);
            }
            return;
        }
        Place place = cursor.is(Meaning.IN) ? line.places.read() : null;
        Span span = cursor.since(begin);
        if (place != null) {
            add(span, body, place);
        } else if (!parted && body.size() == 1 && Items.shapes(items.last()) && Items.shapes(body.get(0))) {
            items.nodes.add(new Note(span, Feature.OTHER));
        } else {
            items.add(Items.bracket(span, body));
        }
    }

    /** Adds the steps in their place. */
    void add(Span span, List<Node> body, Place place) {
        if (!place.fills() || place.target == Target.SPACE) {
            items.add(together(span, body, place));
            return;
        }
        Node repeat = new Node.Repeat(span, body, place.times(), List.of());
        items.add(
                body.size() > 1 && place.each && Items.plain(body)
                        ? new Node.Choice(span, Habit.GROUP_IN_EACH, List.of(together(span, body, place), repeat))
                        : repeat);
    }

    private Node together(Span span, List<Node> body, Place place) {
        boolean below = place.target == Target.NEXT && !place.same;
        line.worked = true;
        Times times = place.fills() ? place.times() : Times.of(Math.max(1, place.number));
        return new Together(span, body, times, place.target, below ? 1 : 0);
    }

    /** Whether the bracket at the cursor holds steps, and neither a place nor how often comes after it. */
    boolean onlySteps() {
        boolean steps = false;
        int ahead = 1;
        while (!cursor.is(ahead, Meaning.SHUT)) {
            if (cursor.is(ahead, Meaning.FINISH) || cursor.is(ahead, Meaning.OPEN)) {
                return false;
            }
            steps |= cursor.peek(ahead).meaning().makes();
            ahead++;
        }
        boolean more = switch (cursor.peek(ahead + 1).meaning()) {
            case IN, EACH, TIMES, NUMBER, COUNTER, REPEAT -> true;
            default -> false;
        };
        return steps && !more;
    }
}
