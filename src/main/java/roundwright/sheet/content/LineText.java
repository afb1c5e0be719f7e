package roundwright.sheet.content;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.pattern.Line;
import roundwright.pattern.Round;
import roundwright.pattern.Verdict;
import roundwright.wording.Wording;

/** What a sheet says of one line of the pattern. */
final class LineText {
    private static final Wording WORDS = Wording.of("sheet");
    /** Where one instruction ends and the next begins; what stands in brackets is done as one. */
    private static final Pattern NEXT = Pattern.compile("(?<=[.!?;])\\s+|\\R|(?<=,)\\s+(?=then\\b)|\\(|\\)");

    private LineText() {}

    /** The line as written, without its label, which stands beside it. */
    static String written(Line line) {
        return line.text().strip();
    }

    /** The line in plain words, one instruction a line, without the count, which the sheet gives beside it. */
    static List<String> words(Line line, Round round) {
        List<String> all = instructions(line);
        int last = all.size() - 1;
        boolean total = last > 0
                && round.count().isPresent()
                && all.get(last).matches(".*\\b" + round.count().getAsInt() + "\\b.*");
        return total ? all.subList(0, last) : all;
    }

    private static List<String> instructions(Line line) {
        String words = line.words();
        List<String> instructions = new ArrayList<>();
        Matcher next = NEXT.matcher(words);
        int from = 0;
        int depth = 0;
        while (next.find()) {
            depth += next.group().equals("(") ? 1 : next.group().equals(")") ? -1 : 0;
            if (depth == 0 && next.group().isBlank()) {
                instructions.add(words.substring(from, next.start()));
                from = next.end();
            }
        }
        instructions.add(words.substring(from));
        return instructions.stream()
                .map(LineText::sentence)
                .filter(text -> !text.isEmpty())
                .toList();
    }

    /** "then two double crochet in the next stitch," as a sentence of its own. */
    private static String sentence(String instruction) {
        String text = instruction.strip().replaceAll("[,;]$", ".");
        return TechniqueSteps.capital(text);
    }

    static boolean unread(Line line) {
        return line.verdict() == Verdict.NOT_UNDERSTOOD;
    }

    /** Stitches at the start of a round. */
    static OptionalInt before(Round round) {
        OptionalInt takes = round.steps()
                .filter(steps -> steps.takes() > 0)
                .map(steps -> OptionalInt.of(steps.takes()))
                .orElse(OptionalInt.empty());
        boolean fromRing = round.steps().filter(steps -> steps.takes() == 0).isPresent();
        return fromRing || takes.isPresent() ? takes : round.line().available();
    }

    static String number(OptionalInt count) {
        return count.isPresent() ? String.valueOf(count.getAsInt()) : WORDS.say("no-number");
    }

    /** "Round 9", or "Row 9" where the pattern says so. */
    static String name(Round round) {
        return WORDS.say("round", round.number());
    }

    /** "6 to 12", "12", "?": what the count does in a round. */
    static String change(Round round) {
        OptionalInt before = before(round);
        return before.isPresent()
                ? WORDS.say("change", before.getAsInt(), number(round.count()))
                : WORDS.say("change-from-ring", number(round.count()));
    }
}
