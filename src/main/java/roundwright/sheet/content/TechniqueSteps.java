package roundwright.sheet.content;

import java.util.ArrayList;
import java.util.List;
import roundwright.notation.Terms;
import roundwright.sheet.markup.Element;
import roundwright.technique.Technique;
import roundwright.wording.Wording;

/**
 * A technique, step by step, with what right and wrong look like.
 *
 * @param terms whose words are used
 * @param leftHanded said to the other hand
 */
public record TechniqueSteps(Terms terms, boolean leftHanded) {
    private static final Wording WORDS = Wording.of("sheet");

    List<Element> all(List<Technique> techniques) {
        return techniques.stream().map(this::one).toList();
    }

    Element one(Technique technique) {
        return Element.styled("div", "technique", Element.of("h3", capital(technique.name(terms))), body(technique));
    }

    /** The steps, without the technique's name. */
    public Element body(Technique technique) {
        Element body = Element.styled("div", "steps");
        List<String> how = technique.how(terms, leftHanded);
        if (how.size() > 1) {
            Element steps = Element.of("ol");
            how.forEach(step -> steps.add(Element.of("li", step)));
            body.add(steps);
        } else {
            how.forEach(step -> body.add(Element.of("p", step)));
        }
        technique.right(terms, leftHanded).ifPresent(text -> body.add(look("right", WORDS.say("looks-right"), text)));
        technique.wrong(terms, leftHanded).ifPresent(text -> body.add(look("wrong", WORDS.say("looks-wrong"), text)));
        return body;
    }

    private static Element look(String style, String word, String text) {
        return Element.styled("p", style, Element.of("b", word), " " + text);
    }

    /** Names with how their other terms say them: "double crochet (US: single crochet)". */
    List<String> names(List<Technique> techniques) {
        List<String> names = new ArrayList<>();
        for (Technique technique : techniques) {
            String here = technique.name(terms);
            String there = technique.name(terms.other());
            names.add(here.equals(there) ? here : WORDS.say("name-in-both", here, terms.other(), there));
        }
        return names;
    }

    /** A name as it begins a line. */
    public static String capital(String name) {
        return name.isEmpty()
                ? name
                : name.substring(0, name.offsetByCodePoints(0, 1)).toUpperCase(java.util.Locale.ROOT)
                        + name.substring(name.offsetByCodePoints(0, 1));
    }
}
