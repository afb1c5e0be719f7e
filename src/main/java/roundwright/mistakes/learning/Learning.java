package roundwright.mistakes.learning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import roundwright.group.CountReport;
import roundwright.group.StudentId;
import roundwright.mistakes.chain.Ledger;
import roundwright.mistakes.chain.PatternStory;
import roundwright.mistakes.chain.StudentChain;
import roundwright.mistakes.story.Rates;
import roundwright.pattern.Pattern;

/** Learns the rates of a group on one pattern, and of each of its students, from all of their reports. */
public final class Learning {
    private static final int MOST_TURNS = 8;
    private static final double SETTLED = 0.03;
    private static final int SAMPLE = 200;

    /** Of a student one turn more is taken with their own rates. */
    private static final int STUDENT_TURNS = 2;

    private final Pattern pattern;
    private final Map<StudentId, List<CountReport>> reports;
    private final Map<StudentId, Ledger> ledgers = new LinkedHashMap<>();
    private final LearnedRates group;
    /** Worked out when they are first asked for, by whatever thread asks. */
    private final Map<StudentId, LearnedRates> students = new ConcurrentHashMap<>();

    private Learning(Pattern pattern, List<CountReport> reports) {
        this.pattern = pattern;
        this.reports = reports.stream()
                .collect(Collectors.groupingBy(CountReport::student, LinkedHashMap::new, Collectors.toList()));
        this.group = learnGroup();
    }

    /** Learns from a group's reports, in the order in which they were entered. */
    public static Learning of(Pattern pattern, List<CountReport> reports) {
        return new Learning(pattern, reports);
    }

    /** Turns on a sample of the students first: of a large group it tells the rates as well, and all are gone through once or twice. */
    private LearnedRates learnGroup() {
        List<StudentId> all = List.copyOf(reports.keySet());
        int every = Math.max(1, all.size() / SAMPLE);
        List<StudentId> sample = IntStream.range(0, all.size())
                .filter(place -> place % every == 0)
                .mapToObj(all::get)
                .toList();
        LearnedRates start = LearnedRates.from(Rates.STORY, new Ledger());
        LearnedRates settled = turns(start, sample, MOST_TURNS);
        return sample.size() == all.size() ? settled : turns(settled, all, 2);
    }

    private LearnedRates turns(LearnedRates start, List<StudentId> students, int most) {
        LearnedRates learned = start;
        for (int turn = 0; turn < most; turn++) {
            Rates before = learned.rates();
            PatternStory story = new PatternStory(pattern, before);
            Ledger all = new Ledger();
            for (StudentId student : students) {
                Ledger own = ledger(story, reports.get(student));
                ledgers.put(student, own);
                all.add(own);
            }
            learned = LearnedRates.from(Rates.STORY, all);
            if (learned.changeFrom(before) < SETTLED) {
                break;
            }
        }
        return learned;
    }

    private static Ledger ledger(PatternStory story, List<CountReport> reports) {
        StudentChain chain = new StudentChain(story);
        reports.forEach(chain::enter);
        Ledger ledger = new Ledger();
        chain.enter(ledger);
        return ledger;
    }

    public LearnedRates group() {
        return group;
    }

    /** What was learned of one student; of one who reported nothing, that they are taken to be like the group. */
    public LearnedRates student(StudentId id) {
        return students.computeIfAbsent(id, this::learn);
    }

    private LearnedRates learn(StudentId id) {
        LearnedRates learned = LearnedRates.from(group.rates(), ledgers.getOrDefault(id, new Ledger()));
        for (int turn = 1; turn < STUDENT_TURNS && reports.containsKey(id); turn++) {
            PatternStory story = new PatternStory(pattern, learned.rates());
            learned = LearnedRates.from(group.rates(), ledger(story, reports.get(id)));
        }
        return learned;
    }
}
