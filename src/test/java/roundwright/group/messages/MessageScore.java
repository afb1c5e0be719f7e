package roundwright.group.messages;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Counts what the reader finds in the messages of tables against what they say; {@code -Dmessages.show=true} lists every difference. */
final class MessageScore {
    private static final boolean SHOW = Boolean.getBoolean("messages.show");

    private final String name;
    private int messages;
    private int right;
    private int missed;
    private int invented;
    private int asked;
    private int unasked;
    private int needless;

    MessageScore(String name) {
        this.name = name;
    }

    static MessageScore of(String name, List<MessageTable> tables) {
        MessageScore score = new MessageScore(name);
        tables.forEach(score::add);
        return score;
    }

    void add(MessageTable table) {
        table.samples().forEach(sample -> add(table, sample));
    }

    private void add(MessageTable table, MessageTable.Sample sample) {
        List<Finding> findings = table.read(sample.text());
        Set<String> found = MessageTable.reports(findings, true);
        Set<String> common = new TreeSet<>(found);
        common.retainAll(sample.reports());
        messages++;
        right += common.size();
        missed += sample.reports().size() - common.size();
        invented += found.size() - common.size();
        boolean decided = decisions(sample, findings);
        if (SHOW && (!found.equals(sample.reports()) || !decided)) {
            System.out.printf(
                    "%s%n    wanted %s %s %s%n    found  %s %s%n",
                    sample.text(), sample.reports(), sample.open(), sample.flags(), found, shown(findings));
        }
    }

    private boolean decisions(MessageTable.Sample sample, List<Finding> findings) {
        Set<String> doubtful = MessageTable.reports(findings, false);
        long open = sample.open().stream().filter(doubtful::contains).count()
                + sample.flags().stream()
                        .filter(round -> flagged(findings, round))
                        .count();
        int wanted = sample.open().size() + sample.flags().size();
        long shown = shown(findings).size();
        asked += (int) open;
        unasked += wanted - (int) open;
        needless += wanted == 0 ? (int) shown : 0;
        return open == wanted && (wanted > 0 || shown == 0);
    }

    private static boolean flagged(List<Finding> findings, int round) {
        return shown(findings).stream()
                .anyMatch(finding -> round == 0
                        || finding instanceof Unplaced unplaced
                                && unplaced.rounds().contains(round)
                        || finding instanceof Reading reading
                                && reading.rounds().contains(round));
    }

    /** What is shown for a decision. */
    private static List<Finding> shown(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> !(finding instanceof Reading reading) || reading.doubtful())
                .toList();
    }

    double f1() {
        return 2.0 * right / (2 * right + missed + invented);
    }

    int invented() {
        return invented;
    }

    @Override
    public String toString() {
        return String.format(
                "%s: %d messages, %d reports, %d missed, %d invented, F1 %.3f; for a decision %d of %d, %d needless",
                name, messages, right + missed, missed, invented, f1(), asked, asked + unasked, needless);
    }
}
