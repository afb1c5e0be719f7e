package roundwright.sheet.content;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import roundwright.notation.Stitch;
import roundwright.notation.Terms;
import roundwright.sheet.markup.Element;
import roundwright.technique.Technique;
import roundwright.technique.Techniques;
import roundwright.wording.Wording;

/** The short words that the lines of a lesson use, each with what it means and what the other terms call it. */
final class Abbreviations {
    private static final Wording WORDS = Wording.of("sheet");
    private static final List<String> EVERYDAY = List.of("rnd", "rnds", "st", "sts", "rep", "blo", "flo");
    private static final int LONGEST = 8;

    /** More letters of a name than these are a word, as in "join" and "stuff". */
    private static final int LETTERS = 3;

    private final Terms terms;
    private final Map<String, String> meanings = new LinkedHashMap<>();
    private final Map<String, String> elsewhere = new LinkedHashMap<>();

    private Abbreviations(Terms terms) {
        this.terms = terms;
    }

    /** A table of them, under a sentence that names the terms; empty where the lines use none. */
    static List<Element> of(List<WorkItem> items, Techniques techniques, Terms terms) {
        Abbreviations found = new Abbreviations(terms);
        String text =
                String.join("\n", items.stream().map(item -> item.line().text()).toList());
        found.everyday(text);
        Stream.of(Stitch.values())
                .filter(stitch -> stitch != Stitch.OTHER)
                .forEach(stitch -> found.stitch(stitch, text));
        for (WorkItem item : items) {
            techniques.uses(item.line()).stream()
                    .flatMap(id -> techniques.get(id).stream())
                    .forEach(technique -> found.technique(technique, item.line().text()));
        }
        return found.meanings.isEmpty() ? List.of() : List.of(found.sentence(), found.table());
    }

    private void everyday(String text) {
        for (String word : EVERYDAY) {
            if (stands(word, text)) {
                meanings.put(word, WORDS.say("short." + word));
            }
        }
    }

    private void stitch(Stitch stitch, String text) {
        String written = stitch.written(terms);
        if (stands(written, text) && !written.equals(stitch.name(terms))) {
            meanings.put(written, stitch.name(terms));
            if (!stitch.name(terms).equals(stitch.name(terms.other()))) {
                elsewhere.put(written, stitch.name(terms.other()));
            }
        }
    }

    private void technique(Technique technique, String text) {
        for (String written : technique.names(terms).written()) {
            String name = technique.name(terms);
            boolean wholeWord = written.length() > LETTERS && name.startsWith(written.substring(0, LETTERS + 1));
            boolean shorter = written.length() <= LONGEST && written.length() < name.length() && !wholeWord;
            if (shorter && stands(written, text)) {
                meanings.putIfAbsent(written, name);
            }
        }
    }

    private static boolean stands(String word, String text) {
        return Pattern.compile("(?<![\\p{L}])" + Pattern.quote(word) + "(?![\\p{L}])", Pattern.CASE_INSENSITIVE)
                .matcher(text)
                .find();
    }

    private Element sentence() {
        return Element.styled("p", "lead", WORDS.say("terms." + terms.name().toLowerCase(java.util.Locale.ROOT)));
    }

    private Element table() {
        Element body = Element.of("tbody");
        meanings.forEach((written, meaning) -> body.add(Element.of(
                "tr",
                Boxes.rowHead(written),
                Boxes.cell("meaning", meaning),
                Boxes.cell("other", elsewhere.getOrDefault(written, WORDS.say("the-same"))))));
        return Element.styled(
                "table",
                "short",
                Boxes.headRow(
                        WORDS.say("column-short"),
                        WORDS.say("column-meaning"),
                        WORDS.say("column-other", terms.other())),
                body);
    }
}
