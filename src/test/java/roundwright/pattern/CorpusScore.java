package roundwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;
import roundwright.notation.Problem;

/** What a reader made of a corpus: hits by style family, and every miss in words. */
final class CorpusScore {
    /** How many of how many. */
    static final class Tally {
        private int hits;
        private int all;

        void count(boolean hit) {
            all++;
            hits += hit ? 1 : 0;
        }

        double share() {
            return all == 0 ? 1 : (double) hits / all;
        }

        int all() {
            return all;
        }

        @Override
        public String toString() {
            return all == 0 ? "-" : String.format(Locale.ROOT, "%d/%d %.2f %%", hits, all, 100 * share());
        }
    }

    final Tally counts = new Tally();
    final Tally stated = new Tally();
    final Tally available = new Tally();
    final Tally verdicts = new Tally();
    final Tally unsound = new Tally();
    final Tally rightCalledWrong = new Tally();
    final Tally wrongCaught = new Tally();
    final Tally mended = new Tally();
    final Tally unreadCounted = new Tally();
    final List<String> misses = new ArrayList<>();
    private final Map<String, Tally> families = new TreeMap<>();

    /** Compares a writer's lines with what was read of them; a line without a truth may make no round. */
    void add(Corpus.Writer writer, List<Line> read) {
        int at = 0;
        for (Corpus.Entry entry : writer.told()) {
            int found = at;
            while (found < read.size() && !read.get(found).text().equals(entry.text())) {
                found++;
            }
            boolean there = found < read.size();
            compare(writer, entry, there ? read.get(found) : null);
            if (there) {
                read.subList(at, found).forEach(line -> untold(writer, line));
                at = found + 1;
            }
        }
    }

    private void untold(Corpus.Writer writer, Line line) {
        if (line.round().isPresent()) {
            misses.add(writer.name() + "\tround\t" + line.text() + "\twanted none\tgot " + told(line));
        }
    }

    private void compare(Corpus.Writer writer, Corpus.Entry entry, Line line) {
        Corpus.Truth truth = entry.truth().orElseThrow();
        if (line == null || !line.text().equals(entry.text())) {
            miss(writer, entry, line, "line");
            counts.count(false);
            return;
        }
        weigh(writer, entry, line);
        if (truth.isWrong()) {
            compareWrong(writer, entry, truth, line);
        } else if (truth.isRight()) {
            compareRight(writer, entry, truth, line);
        } else {
            compareOther(writer, entry, truth, line);
        }
    }

    /** A line said to add up must make what it states. */
    private void weigh(Corpus.Writer writer, Corpus.Entry entry, Line line) {
        boolean sound = line.verdict() != Verdict.ADDS_UP || makes(line).equals(line.stated());
        unsound.count(!sound);
        if (!sound) {
            miss(writer, entry, line, "unsound");
        }
    }

    private void compareRight(Corpus.Writer writer, Corpus.Entry entry, Corpus.Truth truth, Line line) {
        boolean hit = truth.takes().accepts(takes(line)) && truth.makes().accepts(makes(line));
        if (truth.hasCounts()) {
            counts.count(hit);
            families.computeIfAbsent(writer.family(), family -> new Tally()).count(hit);
        }
        stated.count(truth.stated().accepts(line.stated()));
        available.count(truth.available().accepts(line.available()));
        verdicts.count(truth.accepts(line.verdict()));
        rightCalledWrong.count(line.verdict() == Verdict.DOES_NOT_ADD_UP && !truth.accepts(line.verdict()));
        if (!hit) {
            miss(writer, entry, line, "counts");
        } else if (!truth.stated().accepts(line.stated())) {
            miss(writer, entry, line, "stated");
        } else if (!truth.accepts(line.verdict())) {
            miss(writer, entry, line, "verdict");
        } else if (!truth.available().accepts(line.available())) {
            miss(writer, entry, line, "available");
        }
    }

    private void compareWrong(Corpus.Writer writer, Corpus.Entry entry, Corpus.Truth truth, Line line) {
        boolean caught = truth.accepts(line.verdict());
        wrongCaught.count(caught);
        if (!caught) {
            miss(writer, entry, line, "uncaught");
        }
        entry.mend().ifPresent(mend -> {
            boolean offered = line.problems().stream()
                    .map(Problem::suggestions)
                    .flatMap(List::stream)
                    .anyMatch(mend::equals);
            mended.count(offered);
            if (caught && !offered) {
                misses.add(writer.name() + "\tmend\t" + entry.text() + "\twanted " + mend + "\tgot "
                        + line.problems().stream()
                                .map(Problem::suggestions)
                                .flatMap(List::stream)
                                .toList());
            }
        });
    }

    private void compareOther(Corpus.Writer writer, Corpus.Entry entry, Corpus.Truth truth, Line line) {
        boolean hit = truth.accepts(line.verdict());
        verdicts.count(hit);
        boolean uncounted = truth.verdicts().contains("*") || line.round().isEmpty();
        if (!truth.verdicts().contains("*")) {
            unreadCounted.count(!uncounted);
        }
        if (!hit || !uncounted) {
            miss(writer, entry, line, uncounted ? "verdict" : "counted");
        }
    }

    private void miss(Corpus.Writer writer, Corpus.Entry entry, Line line, String kind) {
        Corpus.Truth truth = entry.truth().orElseThrow();
        String want = truth.takes() + ">" + truth.makes() + "=" + truth.stated() + "@" + truth.available() + " "
                + String.join("|", truth.verdicts());
        misses.add(String.join("\t", writer.name(), kind, entry.text(), "wanted " + want, "got " + told(line)));
    }

    private static String told(Line line) {
        return line == null
                ? "nothing"
                : shown(takes(line)) + ">" + shown(makes(line)) + "=" + shown(line.stated()) + "@"
                        + shown(line.available()) + " " + line.verdict().word() + " "
                        + line.problems().stream().map(Problem::message).collect(Collectors.joining(" / "));
    }

    private static OptionalInt takes(Line line) {
        return line.round().map(steps -> OptionalInt.of(steps.takes())).orElse(OptionalInt.empty());
    }

    private static OptionalInt makes(Line line) {
        return line.round().map(steps -> OptionalInt.of(steps.makes())).orElse(OptionalInt.empty());
    }

    private static String shown(OptionalInt number) {
        return number.isPresent() ? "" + number.getAsInt() : "-";
    }

    /** The table and the misses, fit to be read by a person. */
    String report(String title) {
        StringBuilder text = new StringBuilder("== " + title + "\n");
        families.forEach((family, tally) -> text.append(String.format("%-32s %s%n", family, tally)));
        text.append("takes and makes right     ").append(counts).append('\n');
        text.append("stated right              ").append(stated).append('\n');
        text.append("available right           ").append(available).append('\n');
        text.append("verdict right             ").append(verdicts).append('\n');
        text.append("adds up against its sums  ").append(unsound).append('\n');
        text.append("right lines called wrong  ").append(rightCalledWrong).append('\n');
        text.append("planted mistakes caught   ").append(wrongCaught).append('\n');
        text.append("mend offered              ").append(mended).append('\n');
        text.append("unread lines with a count ").append(unreadCounted).append("\n\n");
        misses.forEach(miss -> text.append(miss).append('\n'));
        return text.append('\n').toString();
    }
}
