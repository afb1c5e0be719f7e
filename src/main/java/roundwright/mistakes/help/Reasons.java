package roundwright.mistakes.help;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import roundwright.course.Lesson;
import roundwright.group.Attendance;
import roundwright.group.CountReport;
import roundwright.group.RegisterMark;
import roundwright.group.RoundPlace;
import roundwright.group.Session;
import roundwright.mistakes.Explanation;
import roundwright.mistakes.Sentences;
import roundwright.mistakes.State;
import roundwright.mistakes.help.Reason.Ground;
import roundwright.mistakes.learning.LearnedRates;
import roundwright.wording.Dates;
import roundwright.wording.Wording;

/** Looks through what is known of one student for reasons to help. */
final class Reasons {
    private static final Wording WORDS = Wording.of("mistakes");
    private static final DateTimeFormatter DAY = Dates.as("EEEE d MMMM");
    private static final int SESSIONS_WITHOUT_PROGRESS = 2;
    private static final int ROUNDS_GONE_ON = 2;
    private static final int COUNTS_OF_A_DRIFT = 4;
    private static final double FAILURES = 2;

    private final GroupPicture.Group group;
    private final Sentences sentences;
    private final List<CountReport> reports;
    private final List<Explanation> explanations;
    private final LearnedRates learned;
    private final List<RegisterMark> marks;
    private final List<Reason> found = new ArrayList<>();

    Reasons(
            GroupPicture.Group group,
            List<CountReport> reports,
            List<Explanation> explanations,
            LearnedRates learned,
            List<RegisterMark> marks) {
        this.group = group;
        this.sentences = new Sentences(group.course().pattern().terms());
        this.reports = reports.stream().filter(CountReport::stands).toList();
        this.explanations = explanations;
        this.learned = learned;
        this.marks = marks;
    }

    List<Reason> find() {
        noProgress();
        pulledBack();
        newestCount();
        drift();
        failingTechniques();
        absences();
        askedForHelp();
        return found;
    }

    private void add(Ground ground, double weight, List<RoundPlace> evidence, String words) {
        found.add(new Reason(ground, weight, words, evidence));
    }

    private static RoundPlace place(CountReport report) {
        return new RoundPlace(report.part(), report.round());
    }

    private static LocalDate day(CountReport report) {
        return report.at().atZone(ZoneOffset.UTC).toLocalDate();
    }

    /** Sessions went by since the student last came to a round that they had not worked before. */
    private void noProgress() {
        List<RoundPlace> order = group.places();
        int reached = -1;
        Optional<CountReport> last = Optional.empty();
        for (CountReport report : reports) {
            int place = order.indexOf(place(report));
            if (report.kind() == CountReport.Kind.COUNTED && place > reached) {
                reached = place;
                last = Optional.of(report);
            }
        }
        LocalDate since = last.map(Reasons::day).orElse(LocalDate.MIN);
        List<Session> after = group.held().stream()
                .filter(session -> session.date().isAfter(since))
                .toList();
        boolean done = reached >= 0 && reached == order.size() - 1;
        if (!done && after.size() >= SESSIONS_WITHOUT_PROGRESS) {
            String words = last.map(report -> WORDS.say(
                            "stuck-no-progress", report.part(), report.round(), Sentences.number(after.size())))
                    .orElseGet(() -> WORDS.say("stuck-nothing-yet", Sentences.number(after.size())));
            add(
                    Ground.NO_PROGRESS,
                    1 + after.size(),
                    last.map(Reasons::place).stream().toList(),
                    words);
        }
    }

    /** Pulled back twice or more since the session before the last. */
    private void pulledBack() {
        List<Session> held = group.held();
        LocalDate from =
                held.size() < 2 ? LocalDate.MIN : held.get(held.size() - 2).date();
        List<CountReport> back = reports.stream()
                .filter(report -> report.kind() == CountReport.Kind.PULLED_BACK)
                .filter(report -> !day(report).isBefore(from))
                .toList();
        if (back.size() >= 2) {
            List<RoundPlace> places =
                    back.stream().map(Reasons::place).distinct().toList();
            add(
                    Ground.PULLED_BACK_OFTEN,
                    1 + 0.75 * back.size(),
                    places,
                    WORDS.say("stuck-pulled-back", Sentences.number(back.size()), named(places)));
        }
    }

    private static String named(List<RoundPlace> places) {
        return Wording.list(
                places.stream().map(place -> place.part() + " " + place.round()).toList());
    }

    private void newestCount() {
        if (explanations.isEmpty()) {
            return;
        }
        Explanation newest = explanations.get(explanations.size() - 1);
        RoundPlace here = place(newest.report());
        if (newest.state() == State.CANNOT_EXPLAIN) {
            add(Ground.TO_COUNT_AGAIN, 2, List.of(here), sentences.causes(newest, newest.soFar()));
            return;
        }
        int lastRight = newest.soFar()
                .lastRight()
                .filter(right -> right.part().equals(here.part()))
                .map(RoundPlace::round)
                .orElse(0);
        newest.written()
                .ifPresent(
                        written -> wrong(newest, here, lastRight, newest.soFar().likeliest() - written));
    }

    /** Off in the newest round: most urgent where rounds were worked on it, cheapest to mend where none was. */
    private void wrong(Explanation newest, RoundPlace here, int lastRight, int over) {
        boolean goneOn = here.round() - lastRight >= ROUNDS_GONE_ON;
        String chance = Sentences.percent(newest.soFar().chance(newest.soFar().likeliest()));
        String off = Sentences.number(Math.abs(over));
        if (goneOn) {
            String key = over > 0 ? "stuck-over" : "stuck-short";
            add(
                    Ground.WRONG_AND_GOING_ON,
                    2 + 0.5 * Math.abs(over),
                    List.of(new RoundPlace(here.part(), lastRight + 1), here),
                    WORDS.say(key, here.part(), lastRight + 1, here.round(), off, chance));
        } else if (over != 0) {
            String key = over > 0 ? "stuck-over-now" : "stuck-short-now";
            add(
                    Ground.WRONG_NOW,
                    1 + 0.25 * Math.abs(over),
                    List.of(here),
                    WORDS.say(key, here.part(), here.round(), off, chance));
        }
    }

    /** Every count a little further off to the same side: not a slip but a habit, of where rounds begin or end. */
    private void drift() {
        int size = explanations.size();
        if (size < COUNTS_OF_A_DRIFT) {
            return;
        }
        List<Explanation> last = explanations.subList(size - COUNTS_OF_A_DRIFT, size);
        boolean consecutive = IntStream.range(1, last.size())
                .allMatch(index -> last.get(index)
                                .report()
                                .part()
                                .equals(last.get(0).report().part())
                        && last.get(index).report().round()
                                == last.get(index - 1).report().round() + 1
                        && last.get(index).written().equals(last.get(0).written()));
        int[] steps = IntStream.range(1, last.size())
                .map(index -> last.get(index).report().count().orElse(0)
                        - last.get(index - 1).report().count().orElse(0))
                .toArray();
        boolean up = Arrays.stream(steps).allMatch(step -> step > 0);
        boolean down = Arrays.stream(steps).allMatch(step -> step < 0);
        if (consecutive && (up || down)) {
            List<String> counts = last.stream()
                    .map(each -> Integer.toString(each.report().count().orElse(0)))
                    .toList();
            add(
                    Ground.DRIFT,
                    2.5,
                    last.stream().map(each -> place(each.report())).toList(),
                    WORDS.say(up ? "stuck-drift-up" : "stuck-drift-down", Wording.list(counts)));
        }
    }

    private void failingTechniques() {
        for (Mastery mastery : Mastery.of(learned)) {
            double usual = group.rates().rate(mastery.kind());
            if (mastery.missed() >= FAILURES && 1 - mastery.high() > usual) {
                String words = WORDS.say(
                        "stuck-technique",
                        sentences.habit(mastery.kind()),
                        Math.round(mastery.missed()),
                        Math.round(mastery.chances()),
                        Math.round(10 * (1 - mastery.value()) / usual) / 10.0);
                add(Ground.FAILING_TECHNIQUE, 1.5 + Math.log((1 - mastery.value()) / usual), evidence(mastery), words);
            }
        }
    }

    /** The rounds in which the mistake more likely happened than not. */
    private List<RoundPlace> evidence(Mastery mastery) {
        return explanations.stream()
                .filter(each -> each.after().causes().stream()
                                .filter(cause -> cause.kinds().has(mastery.kind()))
                                .mapToDouble(cause -> cause.probability())
                                .sum()
                        > 0.5)
                .map(each -> place(each.report()))
                .distinct()
                .toList();
    }

    private void absences() {
        for (RegisterMark mark : marks) {
            if (mark.attendance() == Attendance.ABSENT) {
                group.held().stream()
                        .filter(session -> session.id().equals(mark.session()))
                        .forEach(this::absent);
            }
        }
    }

    private void absent(Session session) {
        List<String> taught = group.course().lessons().stream()
                .filter(lesson -> session.lesson().isPresent()
                        && lesson.number() == session.lesson().getAsInt())
                .map(Lesson::introduces)
                .flatMap(List::stream)
                .map(group::techniqueName)
                .toList();
        if (!taught.isEmpty()) {
            add(
                    Ground.ABSENT_WHEN_TAUGHT,
                    1,
                    List.of(),
                    WORDS.say("stuck-absent", DAY.format(session.date()), Wording.list(taught)));
        }
    }

    private void askedForHelp() {
        List<String> words = List.of(WORDS.say("words-for-asking").split(","));
        reports.stream()
                .filter(report -> words.stream()
                        .anyMatch(word -> report.note().toLowerCase(Locale.ROOT).contains(word.trim())))
                .reduce((first, second) -> second)
                .ifPresent(report -> add(
                        Ground.ASKED_FOR_HELP,
                        2,
                        List.of(place(report)),
                        WORDS.say("stuck-asked", report.part(), report.round(), report.note())));
    }
}
