package roundwright.mistakes;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import roundwright.group.CountReport;
import roundwright.group.RoundPlace;
import roundwright.group.StudentId;
import roundwright.mistakes.story.Rates;
import roundwright.notation.Terms;
import roundwright.pattern.Pattern;
import roundwright.pattern.PatternReader;

/** An invented class on an invented pattern of any size, for measuring. */
public final class TrialClass {
    private static final int REPEATS = 8;

    /** A teacher has a round worked again that is further off than this. */
    private static final int FURTHEST_OFF = 3;

    private final Pattern pattern;
    private final int rounds;
    private final List<CountReport> reports = new ArrayList<>();

    /** So many students over so many rounds of about so many stitches, a multiple of eight. */
    public TrialClass(int students, int rounds, int stitches, long seed) {
        this.rounds = rounds;
        this.pattern = PatternReader.readBare(Optional.of(Terms.UK), lines(rounds, stitches / REPEATS));
        SplittableRandom chance = new SplittableRandom(seed);
        for (int student = 0; student < students; student++) {
            report(new StudentId(student), new Trial(pattern, Rates.STORY, chance.split()));
        }
    }

    public Pattern pattern() {
        return pattern;
    }

    /** In the order in which they were entered. */
    public List<CountReport> reports() {
        return List.copyOf(reports);
    }

    public Set<StudentId> students() {
        return reports.stream().map(CountReport::student).collect(Collectors.toSet());
    }

    /** Grows to the size, then goes up and down about it with plain rounds between. */
    private static String lines(int rounds, int width) {
        StringBuilder lines = new StringBuilder("Rnd 1: 8 dc in magic ring (8)\n");
        int now = 1;
        for (int round = 2; round <= rounds; round++) {
            int phase = round % 10;
            if (now < width) {
                lines.append(shaped(round, now - 1, "inc", now + 1));
                now++;
            } else if (phase == 3 || phase == 7) {
                now = phase == 3 ? now + 1 : now - 1;
                lines.append(phase == 3 ? shaped(round, now - 2, "inc", now) : shaped(round, now - 1, "dec", now));
            } else {
                lines.append("Rnd " + round + ": dc in each st around (" + REPEATS * now + ")\n");
            }
        }
        return lines.toString();
    }

    private static String shaped(int round, int plain, String shaping, int makes) {
        String run = plain == 0 ? "" : plain + " dc, ";
        return "Rnd " + round + ": (" + run + shaping + ") x " + REPEATS + " (" + REPEATS * makes + ")\n";
    }

    private void report(StudentId student, Trial trial) {
        String part = pattern.parts().get(0).name();
        for (int round = 1; round <= rounds; round++) {
            int written = pattern.parts().get(0).round(round).orElseThrow().count().orElseThrow();
            boolean again = round > 1;
            while (Math.abs(work(student, trial, new RoundPlace(part, round)) - written) > FURTHEST_OFF && again) {
                trial.correct(new RoundPlace(part, round - 1));
                add(student, new RoundPlace(part, round - 1), CountReport.Kind.PULLED_BACK, OptionalInt.empty());
            }
        }
    }

    private int work(StudentId student, Trial trial, RoundPlace place) {
        int made = trial.work(place).orElseThrow().made();
        add(student, place, CountReport.Kind.COUNTED, OptionalInt.of(trial.report(made)));
        return made;
    }

    private void add(StudentId student, RoundPlace place, CountReport.Kind kind, OptionalInt count) {
        reports.add(new CountReport(
                reports.size() + 1L, student, place.part(), place.round(), kind, count, Instant.EPOCH, ""));
    }
}
