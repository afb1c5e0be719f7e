package roundwright.group.messages;

import java.util.List;
import java.util.stream.IntStream;
import roundwright.group.messages.Mark.Kind;

/** What a sentence says of pulling back: to which round, and which counts were counted after it. */
record Pulling(MessageReader message, List<Token> tokens, List<Mark> marks) {
    /** "Pulled back 3": rounds, not stitches. */
    private static final int FEW = 5;

    /** Whether a count was counted after pulling back. */
    boolean before(Mark count) {
        return message.hasPulledBack()
                || marks.stream()
                        .anyMatch(mark -> mark.is(Kind.PULLED_BACK)
                                && (mark.first() < count.first() || afterPulling(mark) || now(count, mark)));
    }

    /** "It's 30 now, had to rip it". */
    private boolean now(Mark count, Mark pulled) {
        return IntStream.range(count.after(), pulled.first())
                .anyMatch(at -> tokens.get(at).is("now"));
    }

    private boolean afterPulling(Mark pulled) {
        return IntStream.rangeClosed(Math.max(0, pulled.first() - 3), pulled.first())
                .anyMatch(at -> List.of("after", "(", "once", "having")
                        .contains(tokens.get(at).folded()));
    }

    /** Whether the sentence pulls back and says no count after that. */
    boolean leavesCountOpen() {
        int last = marks.stream()
                .filter(mark -> mark.is(Kind.PULLED_BACK))
                .mapToInt(Mark::first)
                .max()
                .orElse(0);
        return marks.stream().noneMatch(mark -> mark.number() && mark.first() > last && !isTarget(mark));
    }

    private boolean told(int after) {
        return after < tokens.size() && tokens.get(after).matches("[:=]|is|now");
    }

    /** "Pulled back to round 8": where the work stands, not what was counted. */
    boolean isTarget(Mark mark) {
        int at = mark.first() - 1;
        while (at > 0 && tokens.get(at).matches("the|end|of|start|beginning")) {
            at--;
        }
        boolean to = at >= 0 && tokens.get(at).matches("to|until|till");
        int end = to ? at : mark.first();
        boolean few = mark.number() && mark.value() <= FEW && !told(mark.after());
        return Cues.before(Cue.PULLED_BACK, tokens, end) && (to || few)
                || to && Cues.before(Cue.PULLED_BACK, tokens, at - 1);
    }
}
