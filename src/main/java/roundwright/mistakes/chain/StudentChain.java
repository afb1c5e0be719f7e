package roundwright.mistakes.chain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.group.CountReport;
import roundwright.mistakes.story.Check;

/**
 * One student's way through a pattern as far as it was reported. A report is added in constant time where it is on the newest
 * round; a late or corrected one works out anew what was worked onto it.
 */
public final class StudentChain {
    private final PatternStory story;
    private final List<Node> nodes = new ArrayList<>();
    private final Map<String, List<Node>> worked = new HashMap<>();
    private final Map<Long, Node> byReport = new HashMap<>();

    public StudentChain(PatternStory story) {
        this.story = story;
    }

    public PatternStory story() {
        return story;
    }

    /**
     * Adds the next report. A report that was taken back, that is of an unfinished round, or of a part or round that the
     * pattern does not have, says nothing here.
     *
     * @return what this and all earlier reports say of its round, where it gave a count or answers
     */
    public Optional<Finding> add(CountReport report) {
        return take(report).map(this::soFar);
    }

    /** Adds the next report without asking what it says. */
    public void enter(CountReport report) {
        take(report);
    }

    private Optional<Node> take(CountReport report) {
        Optional<PartStory> part = story.part(report.part());
        if (!report.stands() || part.isEmpty() || report.kind() == CountReport.Kind.UNFINISHED) {
            return Optional.empty();
        }
        if (report.kind() == CountReport.Kind.PULLED_BACK) {
            pullBack(part.get(), report.round());
        }
        OptionalInt place = part.get().place(report.round());
        if (place.isEmpty() || report.count().isEmpty() && report.checks().isEmpty()) {
            return Optional.empty();
        }
        Node node = reach(part.get(), place.getAsInt(), seen(report));
        byReport.put(report.sequence(), node);
        return Optional.of(node);
    }

    private static Seen seen(CountReport report) {
        List<Check.Answer> answers = new ArrayList<>();
        report.checks()
                .forEach((check, answer) -> Check.of(check)
                        .filter(known -> known.answers().contains(answer))
                        .ifPresent(known -> answers.add(new Check.Answer(known, answer))));
        return new Seen(report.count(), answers);
    }

    private void pullBack(PartStory part, int round) {
        List<Node> path = path(part);
        while (!path.isEmpty() && path.get(path.size() - 1).round.number() > round) {
            path.remove(path.size() - 1);
        }
    }

    private List<Node> path(PartStory part) {
        return worked.computeIfAbsent(part.name(), name -> new ArrayList<>());
    }

    private Node reach(PartStory part, int place, Seen seen) {
        List<Node> path = path(part);
        if (place < path.size()) {
            Node node = path.get(place);
            node.seen = seen;
            nodes.subList(node.place, nodes.size()).forEach(this::work);
            return node;
        }
        while (path.size() < place) {
            extend(part, path, Seen.NOTHING);
        }
        return extend(part, path, seen);
    }

    private Node extend(PartStory part, List<Node> path, Seen seen) {
        Optional<Node> onto = path.isEmpty() ? part.base().map(this::end) : Optional.of(path.get(path.size() - 1));
        Node node = new Node(nodes.size(), part.rounds().get(path.size()), onto);
        node.seen = seen;
        nodes.add(node);
        path.add(node);
        work(node);
        return node;
    }

    /** The last round of a part, worked but for all we know not reported. */
    private Node end(PartStory part) {
        List<Node> path = path(part);
        while (path.size() < part.rounds().size()) {
            extend(part, path, Seen.NOTHING);
        }
        return path.get(path.size() - 1);
    }

    private void work(Node node) {
        node.work(node.parent.map(onto -> known(onto, node)).orElse(new double[] {1}), story.rates());
    }

    private double[] known(Node onto, Node node) {
        boolean first = onto.children.get(0) == node;
        return first ? onto.belief : new Sweep(nodes.subList(0, node.place)).belief(onto);
    }

    private Finding soFar(Node node) {
        if (node.place == nodes.size() - 1) {
            double[] ones = new double[node.counts.length];
            Arrays.fill(ones, 1);
            return new Inquiry(node, node.outside, ones, story.rates()).finding();
        }
        return finding(node, new Sweep(nodes));
    }

    private Finding finding(Node node, Sweep sweep) {
        return new Inquiry(node, sweep.outside(node), sweep.inside(node), story.rates()).finding();
    }

    /** What all reports say of the round of each report, by the report's sequence number. */
    public Map<Long, Finding> afterAll() {
        Sweep sweep = new Sweep(nodes);
        Map<Node, Finding> byNode = new HashMap<>();
        Map<Long, Finding> findings = new HashMap<>();
        byReport.forEach((sequence, node) ->
                findings.put(sequence, byNode.computeIfAbsent(node, each -> finding(each, sweep))));
        return findings;
    }

    /** Enters every round worked so far, as all reports have it, in the ledger. */
    public void enter(Ledger ledger) {
        Sweep sweep = new Sweep(nodes);
        nodes.forEach(node -> new Inquiry(node, sweep.outside(node), sweep.inside(node), story.rates()).enter(ledger));
    }
}
