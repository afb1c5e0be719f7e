package roundwright.course.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundwright.notation.Span;

/** Edits of the {@code - key: value} items of one section. */
final class ItemEdits {
    private final CourseDocument document;
    private final Section section;
    private final Places places;
    private final List<String> order;
    private final List<TextEdit> edits = new ArrayList<>();

    /** Items of the section; new ones are put where the order of the keys has them. */
    ItemEdits(CourseDocument document, Section section, Keys keys) {
        this.document = document;
        this.section = section;
        this.places = Places.of(document.text());
        this.order = keys.inOrder();
    }

    List<TextEdit> edits() {
        return edits;
    }

    /** Makes the items of a key say these values, one item a value; none takes the items away. */
    ItemEdits set(String key, List<String> values) {
        List<Setting> there = section.settings().stream()
                .filter(setting -> setting.key().equals(key))
                .toList();
        for (int index = 0; index < there.size(); index++) {
            if (index < values.size() && !there.get(index).value().isBlank()) {
                change(there.get(index), values.get(index));
            } else {
                remove(there.get(index));
            }
        }
        List<Setting> kept =
                there.stream().filter(setting -> !setting.value().isBlank()).toList();
        if (values.size() > kept.size()) {
            insert(key, values.subList(kept.size(), values.size()));
        }
        return this;
    }

    private void change(Setting setting, String value) {
        String words = Writing.words(value);
        if (!setting.value().text().equals(value.strip())) {
            edits.add(new TextEdit(setting.value().span(), words));
        }
    }

    private void remove(Setting setting) {
        edits.add(new TextEdit(places.wholeLines(withListBelow(setting)), ""));
    }

    private void insert(String key, List<String> values) {
        Optional<Setting> before = before(key);
        Optional<Setting> first = section.settings().stream().findFirst();
        Setting model = before.or(() -> first).orElse(null);
        String margin = model == null ? "- " : Writing.margin(document.text(), places, model.entry());
        List<String> lines = values.stream()
                .map(value -> margin + key + ": " + Writing.words(value))
                .toList();
        String words = Writing.lines(document.text(), lines);
        if (before.isPresent()) {
            after(places.wholeLines(withListBelow(before.get())), words);
        } else if (first.isPresent()) {
            edits.add(TextEdit.insert(
                    places.wholeLines(first.get().entry().span()).start(), words));
        } else {
            underHeading(words);
        }
    }

    /** An item and the list that stands below it. */
    private Span withListBelow(Setting setting) {
        Span item = setting.entry().span();
        int from = section.entries().indexOf(setting.entry()) + 1;
        for (Entry entry : section.entries().subList(from, section.entries().size())) {
            if (!entry.item() || entry.depth() <= setting.entry().depth()) {
                break;
            }
            item = item.to(entry.span());
        }
        return item;
    }

    /** The last item whose key comes no later than the key. */
    private Optional<Setting> before(String key) {
        return section.settings().stream()
                .filter(setting -> setting.entry().depth() <= 1 && rank(setting.key()) <= rank(key))
                .reduce((earlier, later) -> later);
    }

    private int rank(String key) {
        int place = order.indexOf(key);
        return place < 0 ? order.size() : place;
    }

    private void after(Span lines, String words) {
        boolean open = lines.end() == document.text().length() && !endsLine(document.text());
        String end = Writing.lineEnd(document.text());
        edits.add(TextEdit.insert(lines.end(), open ? end + words : words));
    }

    private static boolean endsLine(String text) {
        return text.isEmpty() || text.endsWith("\n") || text.endsWith("\r");
    }

    private void underHeading(String words) {
        String end = Writing.lineEnd(document.text());
        Span heading = places.wholeLines(section.heading());
        String rest = document.text().substring(heading.end());
        String below = rest.isEmpty() || rest.startsWith("\n") || rest.startsWith("\r") ? "" : end;
        after(heading, end + words + below);
    }
}
