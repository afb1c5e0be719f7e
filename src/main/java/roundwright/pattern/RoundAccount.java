package roundwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.notation.Habit;
import roundwright.notation.Problem;
import roundwright.notation.WrittenLine;
import roundwright.wording.Wording;

/** What can be told of a line whose rounds were worked out. */
final class RoundAccount implements LineAccount {
    private static final Wording WORDS = Wording.of("pattern");

    private final PartContext part;
    private final WrittenLine written;
    private final List<WrittenLine> worked;
    private final Checked checked;
    private final LineProblems problems;
    private final List<WrittenLine> rest;
    /** Whether it is worked to and fro. */
    private final boolean row;
    /** The last round as it is shown. */
    private final Interpretation way;

    RoundAccount(
            PartContext part,
            boolean row,
            WrittenLine written,
            List<WrittenLine> worked,
            Checked checked,
            Interpretation way,
            LineProblems problems,
            List<WrittenLine> rest) {
        this.part = part;
        this.row = row;
        this.written = written;
        this.worked = worked;
        this.checked = checked;
        this.way = way;
        this.problems = problems;
        this.rest = rest;
    }

    @Override
    public List<Problem> problems() {
        Interpretation last = checked.last();
        if (!checked.fits()) {
            boolean taken = worked.size() > 1 && written.reference().isPresent();
            List<String> mended = taken ? List.of() : part.mends().of(written, checked.start(), last.options(), rest);
            return problems.wrong(last, checked.below(), mended);
        }
        if (worked.size() == 1 && last.stated() < 0 && Assumptions.possible(worked.get(0))) {
            List<Interpretation> ways = part.interpreter().ways(worked.get(0), List.of(), checked.below());
            Assumptions.report(worked.get(0), ways, decisions(worked.get(0)), problems);
        }
        return problems.problems();
    }

    @Override
    public List<Decision> decisions() {
        return decisions(written);
    }

    private List<Decision> decisions(WrittenLine line) {
        List<Decision> decisions = new ArrayList<>();
        for (Habit habit : line.open()) {
            int option = checked.last().options()[habit.ordinal()];
            boolean known = checked.below().stitches() >= 0 && checked.last().stated() >= 0 && checked.fits();
            decisions.add(new Decision(habit, option, part.leaning().because(habit, known)));
        }
        return decisions;
    }

    @Override
    public Optional<Steps> round() {
        return Optional.of(Expansion.of(way.pieces()));
    }

    @Override
    public String sum(Line line) {
        return RoundSum.of(way.pieces(), line.available(), line.stated());
    }

    /** The words of the line's round; of rounds that are taken over from several lines, each in turn. */
    @Override
    public String words(Line read) {
        int cycle = written.reference()
                .map(taken -> taken.last() - taken.first() + 1)
                .orElse(1);
        int rounds = checked.lines().size();
        if (cycle < 2 || rounds < cycle) {
            WrittenLine line = checked.lines().get(rounds - 1);
            String round = RoundWords.of(way.pieces(), line, part.terms(), read.available(), row);
            return rounds == 1 ? round : WORDS.say("words.each-round", StepWords.number(rounds), round);
        }
        int first = written.reference().get().first();
        StringBuilder words = new StringBuilder();
        OptionalInt below = read.available();
        for (int i = 0; i < cycle; i++) {
            Interpretation one = checked.rounds().get(i);
            String round = RoundWords.of(one.pieces(), checked.lines().get(i), part.terms(), below, row);
            words.append(i == 0 ? "" : " ").append(WORDS.say("words.in-turn", first + i, round));
            below = OptionalInt.of((int) one.makes());
        }
        return words.toString();
    }
}
