package roundwright.mistakes.story;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import roundwright.notation.Span;
import roundwright.notation.Stitch;
import roundwright.pattern.Step;
import roundwright.pattern.Steps;

/** One round being worked with certain mistakes: first the line is read, then the stitches slip, then the round ends somewhere. */
final class HandsAtWork {
    private static final int FARTHEST_FROM_MARKER = 3;

    /** A step that is done, and whether a mistake stands in it. */
    private record Done(Step step, boolean wrong) {}

    private final List<Done> done = new ArrayList<>();
    private final Step plain;
    private final boolean misread;

    private HandsAtWork(Steps written, boolean misread) {
        this.misread = misread;
        plain = plainOf(written);
    }

    /** The round's own plain stitch, or one of its stitch where it has none. */
    private static Step plainOf(Steps written) {
        Optional<Step> own = written.list().stream().filter(Step::plain).findFirst();
        Stitch stitch = written.list().stream()
                .map(Step::stitch)
                .filter(each -> each != Stitch.CHAIN && each != Stitch.SLIP_STITCH)
                .findFirst()
                .orElse(Stitch.DOUBLE_CROCHET);
        return own.orElse(new Step(Step.Action.PLAIN, stitch, 1, 1, Step.Loop.BOTH, new Span(0, 0), Optional.empty()));
    }

    /** The line as it was read; empty where it cannot be misread so. */
    static Optional<HandsAtWork> reading(Steps written, Kinds kinds) {
        return Reading.of(WrittenRound.of(written)).stream()
                .filter(reading -> reading.misreading().map(kinds::has).orElse(noMisreading(kinds)))
                .findFirst()
                .map(reading -> read(written, reading));
    }

    private static boolean noMisreading(Kinds kinds) {
        return IntStream.rangeClosed(Kind.REPEAT_SHORT.ordinal(), Kind.SHAPING_LEFT_OUT.ordinal())
                .noneMatch(place -> kinds.has(Kind.values()[place]));
    }

    private static HandsAtWork read(Steps written, Reading reading) {
        HandsAtWork hands = new HandsAtWork(written, reading.misreading().isPresent());
        int[] from = reading.from();
        for (int place = 0; place < from.length; place++) {
            boolean strayed = from[place] != (place == 0 ? 0 : from[place - 1] + 1);
            Step step =
                    from[place] == Reading.PLAIN ? hands.plain : written.list().get(from[place]);
            hands.done.add(new Done(step, strayed));
        }
        return hands;
    }

    /** Puts the slips in; false where there is no place for one. */
    boolean slip(Kinds kinds) {
        return slip(kinds.count(Kind.INCREASE_MISSED), Step::increases, step -> List.of(plain))
                && slip(kinds.count(Kind.DECREASE_MISSED), Step::decreases, step -> List.of(plain))
                && workTwice(kinds.count(Kind.WORKED_TWICE))
                && slip(kinds.count(Kind.SKIPPED), step -> step.takes() >= 1, this::skipped);
    }

    private interface Slip {
        List<Step> of(Step step);
    }

    /** Where a plain stitch goes into the plain stitch just worked, the two become an increase. */
    private boolean workTwice(int times) {
        for (int time = times; time >= 1; time--) {
            List<Integer> places = IntStream.range(1, done.size())
                    .filter(place -> plain(place - 1) && plain(place))
                    .boxed()
                    .toList();
            if (places.isEmpty()) {
                return slip(time, step -> step.takes() >= 1, HandsAtWork::twice);
            }
            int place = places.get(places.size() * time / (times + 1));
            Step step = done.remove(place).step();
            Step both = new Step(Step.Action.INCREASE, step.stitch(), 1, 2, step.loop(), step.span(), step.own());
            done.set(place - 1, new Done(both, true));
        }
        return true;
    }

    private boolean plain(int place) {
        return !done.get(place).wrong() && done.get(place).step().plain();
    }

    /** The hook goes into the stitch just worked where it should go on: one stitch fewer is used. */
    private static List<Step> twice(Step step) {
        Step.Action action = step.takes() == 1 ? Step.Action.INTO_RING : step.action();
        return List.of(
                new Step(action, step.stitch(), step.takes() - 1, step.makes(), step.loop(), step.span(), step.own()));
    }

    private List<Step> skipped(Step step) {
        Step skip = new Step(Step.Action.SKIP, plain.stitch(), 1, 0, Step.Loop.BOTH, step.span(), Optional.empty());
        return List.of(skip, step);
    }

    private boolean slip(int times, Predicate<Step> where, Slip slip) {
        if (times == 0) {
            return true;
        }
        List<Integer> places = IntStream.range(0, done.size())
                .filter(place ->
                        !done.get(place).wrong() && where.test(done.get(place).step()))
                .boxed()
                .toList();
        if (places.size() < times) {
            return false;
        }
        for (int time = times; time >= 1; time--) {
            int place = places.get(places.size() * time / (times + 1));
            Step step = done.remove(place).step();
            List<Step> slipped = slip.of(step);
            for (int i = 0; i < slipped.size(); i++) {
                done.add(place + i, new Done(slipped.get(i), i == 0));
            }
        }
        return true;
    }

    /** The round as it ends with a count: at the marker, with the line, before the marker or past it. */
    Optional<ProbableRound> end(Kinds kinds, int below, int count) {
        List<Done> atMarker = toMarker(below);
        if (kinds.has(Kind.STOPPED_SHORT) || kinds.has(Kind.RAN_PAST)) {
            int off = count - makes(atMarker);
            boolean possible = Math.abs(off) <= FARTHEST_FROM_MARKER && off != 0 && off > 0 == kinds.has(Kind.RAN_PAST);
            return possible
                    ? Optional.of(round(off > 0 ? past(atMarker, off) : shortOf(atMarker, count)))
                    : Optional.empty();
        }
        if (kinds.has(Kind.WRONG_START)) {
            int off = count - makes(done);
            return off == 0 ? Optional.empty() : Optional.of(round(off > 0 ? past(done, off) : shortOf(done, count)));
        }
        return makes(atMarker) == count
                ? Optional.of(round(atMarker))
                : makes(done) == count ? Optional.of(round(done)) : Optional.empty();
    }

    /** Steps for which too few stitches are left are not begun; what is left below is worked plain. */
    private List<Done> toMarker(int below) {
        List<Done> worked = new ArrayList<>();
        int used = 0;
        for (Done each : done) {
            if (used + each.step().takes() > below) {
                break;
            }
            worked.add(each);
            used += each.step().takes();
        }
        for (; used < below; used++) {
            worked.add(new Done(plain, misread));
        }
        return worked;
    }

    private List<Done> past(List<Done> worked, int stitches) {
        List<Done> more = new ArrayList<>(worked);
        Step last = worked.isEmpty() ? plain : worked.get(worked.size() - 1).step();
        Step again = last.takes() == 0 && last.makes() == 1 ? last : plain;
        for (int stitch = 0; stitch < stitches; stitch++) {
            more.add(new Done(again, true));
        }
        return more;
    }

    /** Without the last stitches; the last that is left is where it went wrong. */
    private List<Done> shortOf(List<Done> worked, int count) {
        List<Done> fewer = new ArrayList<>(worked);
        while (!fewer.isEmpty() && makes(fewer) > count) {
            fewer.remove(fewer.size() - 1);
        }
        while (makes(fewer) < count) {
            fewer.add(new Done(plain, true));
        }
        if (!fewer.isEmpty()) {
            fewer.add(new Done(fewer.remove(fewer.size() - 1).step(), true));
        }
        return fewer;
    }

    private static int makes(List<Done> worked) {
        return worked.stream().mapToInt(each -> each.step().makes()).sum();
    }

    private static ProbableRound round(List<Done> worked) {
        Set<Integer> wrong = new HashSet<>();
        for (int place = 0; place < worked.size(); place++) {
            if (worked.get(place).wrong()) {
                wrong.add(place);
            }
        }
        return new ProbableRound(new Steps(worked.stream().map(Done::step).toList(), Optional.empty()), wrong);
    }
}
