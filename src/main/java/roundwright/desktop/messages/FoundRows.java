package roundwright.desktop.messages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JCheckBox;
import roundwright.desktop.look.Prose;
import roundwright.desktop.look.Stack;
import roundwright.desktop.look.Text;
import roundwright.desktop.look.TickRow;
import roundwright.desktop.look.Tone;
import roundwright.desktop.look.Type;
import roundwright.wording.Wording;
import roundwright.workbook.NewCount;

/** What was found in messages, to be ticked: first what has to be decided, then what is sure, then what gives no count. */
final class FoundRows extends Stack {
    private static final Wording WORDS = Wording.of("desktop");
    private static final int MOST = 400;

    private final transient Map<JCheckBox, FoundCount> boxes = new LinkedHashMap<>();

    void show(FoundCounts found) {
        removeAll();
        boxes.clear();
        List<FoundCount> open =
                found.counts().stream().filter(count -> !count.way().sure()).toList();
        List<FoundCount> sure =
                found.counts().stream().filter(count -> count.way().sure()).toList();
        group("messages-open", open, found);
        group("messages-sure", sure, found);
        if (found.counts().isEmpty() && !found.text().isBlank()) {
            below(0, Prose.muted(WORDS.say("messages-none")));
        }
        undecided(found);
    }

    private void group(String heading, List<FoundCount> counts, FoundCounts found) {
        if (!counts.isEmpty()) {
            below(2, new Text(WORDS.say(heading, counts.size()), Type.SMALL_STRONG, Tone.INK));
            counts.stream().limit(MOST).forEach(count -> add(count, found));
        }
        if (counts.size() > MOST) {
            below(1, Prose.muted(WORDS.say("messages-more", counts.size() - MOST)));
        }
    }

    private void add(FoundCount count, FoundCounts found) {
        JCheckBox box = new JCheckBox("", count.way().sure());
        String words = found.words(count.source());
        box.setToolTipText(words);
        box.getAccessibleContext().setAccessibleDescription(words);
        box.addActionListener(pressed -> chosen(box));
        boxes.put(box, count);
        below(0.75, new TickRow(box, sentence(count)));
        below(0.25, Prose.muted("“" + words + "”" + remark(count)));
    }

    /** Of two counts of one round only one can be filed. */
    private void chosen(JCheckBox box) {
        if (box.isSelected()) {
            boxes.forEach((other, count) -> {
                if (other != box && count.excludes(boxes.get(box))) {
                    other.setSelected(false);
                }
            });
        }
    }

    private static String sentence(FoundCount count) {
        String key = switch (count.way()) {
            case UNFINISHED -> count.count().isPresent() ? "messages-unfinished-at" : "messages-unfinished";
            case PULLED_BACK -> "messages-pulled-back";
            default -> "messages-count";
        };
        boolean off = count.way() != FoundCount.Way.UNFINISHED
                && count.expected().isPresent()
                && !count.expected().equals(count.count());
        return WORDS.say(
                key,
                count.student().name(),
                count.place().part(),
                count.place().round(),
                count.count().orElse(0),
                off ? WORDS.say("messages-instead", count.expected().getAsInt()) : "");
    }

    private static String remark(FoundCount count) {
        String key = switch (count.way()) {
            case DOUBTFUL -> "messages-unsure";
            case SAID_TO_BE_RIGHT -> "messages-inferred";
            case THERE_ALREADY -> "messages-there";
            case CONTRADICTED -> "messages-contradicted";
            default -> "";
        };
        String before = count.before().isEmpty()
                ? ""
                : " "
                        + WORDS.say(
                                "messages-before",
                                count.before().get(count.before().size() - 1).count());
        return (key.isEmpty() ? "" : " " + WORDS.say(key)) + before;
    }

    private void undecided(FoundCounts found) {
        if (found.undecided().isEmpty()) {
            return;
        }
        below(2, Prose.body(WORDS.say("messages-undecided", found.undecided().size())));
        for (Undecided passage :
                found.undecided().subList(0, Math.min(MOST, found.undecided().size()))) {
            String who = passage.student().map(name -> name + ": ").orElse("");
            String why = WORDS.say("messages-why." + passage.why());
            below(0.5, Prose.muted(who + "“" + found.words(passage.source()) + "” " + why));
        }
    }

    /** What is filed for the ticked rows, in the order of the text. */
    List<NewCount> wanted() {
        List<FoundCount> ticked = new ArrayList<>();
        boxes.forEach((box, count) -> {
            if (box.isSelected()) {
                ticked.add(count);
            }
        });
        return ticked.stream()
                .sorted((left, right) ->
                        Integer.compare(left.source().start(), right.source().start()))
                .flatMap(count -> count.filed().stream())
                .toList();
    }
}
