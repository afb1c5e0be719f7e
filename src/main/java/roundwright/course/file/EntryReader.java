package roundwright.course.file;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.ListBlock;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SourceSpan;
import roundwright.notation.Span;

/**
 * Collects what a section says: an entry for each list item and for each line of a paragraph.
 *
 * <p>The number of a numbered item belongs to what it says ({@code 1. 6 dc in ring} is round 1); what stands on the same line as a bullet
 * is taken as it is, even where CommonMark would see a list in a list ({@code - 1. 6 dc}). A line that runs on from an item is joined to it unless it
 * begins with a round's label.
 */
final class EntryReader {
    private static final Pattern LABEL = Pattern.compile(
            "(?i)^\\W{0,3}(?:(?:rnds?|rounds?|rds?|rows?|r)\\b?\\.? ?\\d|\\d{1,3}(?:st|nd|rd|th)?[ .):–-])");
    private static final Pattern BULLET = Pattern.compile("^\\s*[-+*](?:\\s+|$)");

    /** Lists nested deeper than this are passed over: nobody writes them, and each level costs stack. */
    private static final int DEEPEST = 40;

    private final String file;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Span> passedOver = new ArrayList<>();
    private int blocks;

    EntryReader(String file) {
        this.file = file;
    }

    List<Entry> entries() {
        return entries;
    }

    List<Span> passedOver() {
        return passedOver;
    }

    void read(Node block) {
        read(block, 0);
    }

    private void read(Node block, int depth) {
        if (block instanceof Paragraph || block instanceof LinkReferenceDefinition) {
            paragraph(spans(block), depth);
        } else if (block instanceof ListBlock && depth < DEEPEST) {
            for (Node item = block.getFirstChild(); item != null; item = item.getNext()) {
                item((ListItem) item, block instanceof OrderedList, depth);
            }
        } else if (block instanceof BlockQuote && depth < DEEPEST) {
            for (Node quoted = block.getFirstChild(); quoted != null; quoted = quoted.getNext()) {
                quoted(quoted, depth + 1);
            }
        } else if (block instanceof IndentedCodeBlock
                || block instanceof FencedCodeBlock
                || block instanceof BlockQuote) {
            passOver(spans(block));
        }
    }

    /** Of what is quoted, rounds are read; so is a line without the mark of a quotation, which only runs on from one. */
    private void quoted(Node block, int depth) {
        if (!(block instanceof Paragraph)) {
            read(block, depth);
            return;
        }
        for (Span line : spans(block)) {
            if (LABEL.matcher(line.of(file)).find() || !markedAsQuoted(line)) {
                add(List.of(line), false, depth);
            } else {
                passOver(List.of(line));
            }
        }
        blocks++;
    }

    private boolean markedAsQuoted(Span line) {
        int begin = file.lastIndexOf('\n', Math.max(0, line.start() - 1)) + 1;
        return file.substring(begin, line.start()).indexOf('>') >= 0;
    }

    private void passOver(List<Span> lines) {
        if (!lines.isEmpty()) {
            passedOver.add(lines.get(0).to(lines.get(lines.size() - 1)));
        }
    }

    private void paragraph(List<Span> lines, int depth) {
        for (Span line : lines) {
            add(List.of(line), false, depth);
        }
        blocks++;
    }

    private void item(ListItem item, boolean numbered, int depth) {
        List<Span> lines = spans(item);
        if (lines.isEmpty()) {
            return;
        }
        Span first = lines.get(0);
        Node leaf = firstLeaf(item, first);
        List<Span> said = new ArrayList<>(List.of(numbered ? first : afterBullet(first)));
        if (leaf instanceof Paragraph) {
            List<Span> all = spans(leaf);
            runOn(all.subList(Math.min(1, all.size()), all.size()), said, depth + 1);
        }
        add(said, true, depth + 1);
        blocks++;
        rest(item, leaf, depth);
    }

    /** Joins the lines that run on to what was said; a line with a label of its own begins a new entry. */
    private void runOn(List<Span> lines, List<Span> said, int depth) {
        for (Span line : lines) {
            if (LABEL.matcher(line.of(file)).find()) {
                add(said, true, depth);
                said.clear();
            }
            said.add(line);
        }
    }

    /** What else the item holds, on lines of its own. */
    private void rest(ListItem item, Node leaf, int depth) {
        Node node = leaf == null ? item.getFirstChild() : leaf;
        while (node != null && node != item) {
            for (Node next = leaf == null ? node : node.getNext(); next != null; next = next.getNext()) {
                read(next, depth + 1);
            }
            if (leaf == null) {
                return;
            }
            node = node.getParent();
        }
    }

    /** The innermost block that begins on the item's first line; null where the item's first line holds only the bullet. */
    private static Node firstLeaf(ListItem item, Span firstLine) {
        Node node = item.getFirstChild();
        Node leaf = null;
        while (node != null && !spans(node).isEmpty() && spans(node).get(0).start() < firstLine.end()) {
            leaf = node;
            node = node.getFirstChild();
        }
        return leaf;
    }

    private Span afterBullet(Span line) {
        var matcher = BULLET.matcher(line.of(file));
        return matcher.find() ? new Span(line.start() + matcher.end(), line.end()) : line;
    }

    private void add(List<Span> lines, boolean item, int depth) {
        Span span = lines.get(0).to(lines.get(lines.size() - 1));
        entries.add(new Entry(Written.of(file, lines), span, item, depth, blocks));
    }

    static List<Span> spans(Node node) {
        return node.getSourceSpans().stream().map(EntryReader::span).toList();
    }

    private static Span span(SourceSpan span) {
        return new Span(span.getInputIndex(), span.getInputIndex() + span.getLength());
    }
}
