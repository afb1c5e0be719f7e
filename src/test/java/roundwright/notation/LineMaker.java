package roundwright.notation;

import java.util.List;
import java.util.Random;

/** Makes lines out of the trade's words, marks and numbers, in and out of order, for tests that must hold for any text. */
public final class LineMaker {
    private static final List<String> WORDS = List.of(
            "sc",
            "dc",
            "inc",
            "dec",
            "sc2tog",
            "hdc",
            "ch",
            "sl st",
            "sk",
            "st",
            "sts",
            "in",
            "each",
            "next",
            "around",
            "rep",
            "from",
            "*",
            "**",
            "(",
            ")",
            "[",
            "]",
            "{",
            "}",
            "x",
            "times",
            "twice",
            "6",
            "12",
            "3",
            "1",
            "2",
            "18",
            "999999999",
            ",",
            ".",
            ";",
            ":",
            "-",
            "–",
            "=",
            "Rnd",
            "R3",
            "Rnds 4-7",
            "round",
            "magic ring",
            "MR",
            "ring",
            "to end",
            "last",
            "same",
            "to",
            "the",
            "of",
            "ch-1 sp",
            "join",
            "turn",
            "counts as",
            "repeat",
            "more",
            "total",
            "(18)",
            "= 24 sts",
            "BLO",
            "FPdc",
            "bobble",
            "picot",
            "İNC",
            "ｓｃ",
            "ѕс",
            "×",
            "every",
            "third",
            "and",
            "then",
            "&",
            "+",
            "/",
            "|",
            "…",
            "?",
            "stuff",
            "red",
            "marker",
            "eyes",
            "2nd ch from hook",
            "other side",
            "skip",
            "miss",
            "6x",
            "5sc",
            "sc5",
            "\u0307",
            "\uD83D\uDC30",
            "evenly",
            "Repeat round 4",
            "as rnd 2",
            "until 3 sts remain",
            "even",
            "#",
            "\t");

    private final Random random;

    public LineMaker(long seed) {
        this.random = new Random(seed);
    }

    /** A line of up to {@code most} words; some are glued together, some are letters at random. */
    public String line(int most) {
        StringBuilder line = new StringBuilder();
        int words = 1 + random.nextInt(most);
        for (int i = 0; i < words; i++) {
            line.append(random.nextInt(40) == 0 ? anyLetters() : WORDS.get(random.nextInt(WORDS.size())));
            if (random.nextInt(4) > 0) {
                line.append(' ');
            }
        }
        return line.toString();
    }

    /** A line that means something: label, repeats of steps, a count. */
    public String sensible() {
        int plain = 1 + random.nextInt(6);
        int times = 2 + random.nextInt(8);
        String step = random.nextBoolean() ? "inc" : "dec";
        String label = List.of("Rnd 5: ", "R5 ", "5. ", "5th round: ", "").get(random.nextInt(5));
        String run = List.of(plain + " sc", "sc " + plain, "sc in next " + plain + " sts")
                .get(random.nextInt(3));
        String repeat = List.of(
                        "(" + run + ", " + step + ") x " + times, "*" + run + ", " + step + "* " + times + " times")
                .get(random.nextInt(2));
        int makes = times * (plain + (step.equals("inc") ? 2 : 1));
        return label + repeat + " (" + makes + ")";
    }

    private String anyLetters() {
        StringBuilder letters = new StringBuilder();
        for (int i = random.nextInt(8); i >= 0; i--) {
            letters.append((char) (random.nextInt(3) == 0 ? random.nextInt(0xD7FF) : 'a' + random.nextInt(26)));
        }
        return letters.toString();
    }
}
