package roundwright.sheet.content;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import roundwright.pattern.Round;
import roundwright.sheet.markup.Element;
import roundwright.wording.Wording;

/** The rounds of a lesson under one another, each written out in full, for large type. */
final class RoundBlocks {
    private static final Wording WORDS = Wording.of("sheet");

    private RoundBlocks() {}

    static List<Element> of(List<WorkItem> items) {
        List<Element> blocks = new ArrayList<>();
        for (List<WorkItem> part : RoundTable.byPart(items)) {
            // the name of a part stands on the page of its first round
            int upTo = firstRound(part) + 1;
            Element first = Element.styled(
                    "div",
                    "first",
                    Element.of("h3", part.get(0).part()),
                    part.stream().limit(upTo).map(RoundBlocks::item).toList());
            List<Element> rest = part.stream().skip(upTo).map(RoundBlocks::item).toList();
            blocks.add(Element.styled("div", "part", first, rest));
        }
        return blocks;
    }

    private static int firstRound(List<WorkItem> part) {
        return IntStream.range(0, part.size())
                .filter(i -> part.get(i).round().isPresent())
                .findFirst()
                .orElse(0);
    }

    private static Element item(WorkItem item) {
        return item.round().map(round -> round(item, round)).orElseGet(() -> between(item));
    }

    private static Element round(WorkItem item, Round round) {
        Element block = Element.styled("div", "block", Element.of("h4", LineText.name(round)));
        block.add(Element.styled("p", "written", LineText.written(item.line())));
        LineText.words(item.line(), round).forEach(words -> block.add(Element.of("p", words)));
        if (LineText.unread(item.line())) {
            block.add(Element.of("p", WORDS.say("unread-student")));
        }
        block.add(Element.of("p", counts(round)));
        return block.add(Element.styled(
                "p",
                "mine",
                Boxes.tick(),
                Element.styled("span", "ready", WORDS.say("done-box")),
                WORDS.say("count-box"),
                Boxes.count()));
    }

    private static String counts(Round round) {
        boolean fromRing = round.steps().filter(steps -> steps.takes() == 0).isPresent();
        return fromRing || LineText.before(round).isEmpty()
                ? WORDS.say("end-with", LineText.number(round.count()))
                : WORDS.say(
                        "start-and-end-with", LineText.number(LineText.before(round)), LineText.number(round.count()));
    }

    private static Element between(WorkItem item) {
        return Element.styled("p", "pause", Boxes.tick(), LineText.written(item.line()));
    }
}
