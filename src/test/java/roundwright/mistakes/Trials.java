package roundwright.mistakes;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import roundwright.group.CountReport;
import roundwright.group.RoundPlace;
import roundwright.group.StudentId;
import roundwright.mistakes.story.Kind;
import roundwright.mistakes.story.Kinds;
import roundwright.mistakes.story.Rates;
import roundwright.notation.Terms;
import roundwright.pattern.Pattern;
import roundwright.pattern.PatternReader;

/** Invented students on a small pattern of ours, with the truth about every round. */
final class Trials {
    static final Pattern BELL = PatternReader.readBare(Optional.of(Terms.UK), """
            # Bell
            Rnd 1: 6 dc in magic ring (6)
            Rnd 2: inc x 6 (12)
            Rnd 3: (dc, inc) x 6 (18)
            Rnd 4: (2 dc, inc) x 6 (24)
            Rnd 5: dc in each st around (24)
            Rnd 6: dc in each st around (24)
            Rnd 7: (3 dc, inc) x 6 (30)
            Rnd 8: dc in each st around (30)
            Rnd 9: dc in each st around (30)
            Rnd 10: (3 dc, dec) x 6 (24)
            Rnd 11: dc in each st around (24)
            Rnd 12: (2 dc, dec) x 6 (18)
            Rnd 13: (dc, dec) x 6 (12)
            Rnd 14: dec x 6 (6)
            """);

    private static final int MOST_TRIES = 3;

    final List<CountReport> reports = new ArrayList<>();
    /** What truly happened in the round of each report, a miscount included. */
    final Map<CountReport, Kinds> truth = new HashMap<>();

    private final Pattern pattern;

    Trials(Pattern pattern) {
        this.pattern = pattern;
    }

    /**
     * Adds a student who works all rounds; one whose count is off is pulled back and worked once more, up to three times. Only what
     * was reported decides that, so that it tells no more than the reports do.
     */
    Trials student(long id, Rates rates, long seed) {
        Trial trial = new Trial(pattern, rates, new SplittableRandom(seed));
        String part = pattern.parts().get(0).name();
        pattern.parts().get(0).rounds().forEach(round -> {
            int written = round.count().orElseThrow();
            int tries = 1;
            while (work(id, trial, new RoundPlace(part, round.number())) != written && tries++ < MOST_TRIES) {
                add(id, new RoundPlace(part, round.number() - 1), CountReport.Kind.PULLED_BACK, OptionalInt.empty());
            }
        });
        return this;
    }

    /** Works a round and returns what is said of it. */
    private int work(long id, Trial trial, RoundPlace place) {
        var worked = trial.work(place).orElseThrow();
        int said = trial.report(worked.made());
        CountReport report = add(id, place, CountReport.Kind.COUNTED, OptionalInt.of(said));
        List<Kind> kinds = new ArrayList<>(worked.kinds().list());
        if (said != worked.made()) {
            kinds.add(Kind.MISCOUNTED);
        }
        truth.put(report, Kinds.of(kinds.toArray(Kind[]::new)));
        return said;
    }

    private CountReport add(long id, RoundPlace place, CountReport.Kind kind, OptionalInt count) {
        CountReport report = report(reports.size() + 1L, id, place, kind, count);
        reports.add(report);
        return report;
    }

    /** A report; those of one day follow each other by minutes. */
    static CountReport report(long sequence, long student, RoundPlace place, CountReport.Kind kind, OptionalInt count) {
        Instant at = LocalDate.of(2026, 3, 3)
                .atStartOfDay()
                .toInstant(ZoneOffset.UTC)
                .plusSeconds(60 * sequence);
        return new CountReport(sequence, new StudentId(student), place.part(), place.round(), kind, count, at, "");
    }

    static CountReport counted(long sequence, int round, int count) {
        return report(sequence, 1, new RoundPlace("Bell", round), CountReport.Kind.COUNTED, OptionalInt.of(count));
    }

    /** Explanations of one student's counts from round 1 on. */
    static List<Explanation> counts(int... counts) {
        List<CountReport> reports = new ArrayList<>();
        for (int count : counts) {
            reports.add(counted(reports.size() + 1L, reports.size() + 1, count));
        }
        return Explanations.of(BELL, reports, student -> Rates.STORY).of(new StudentId(1));
    }
}
