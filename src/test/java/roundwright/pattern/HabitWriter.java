package roundwright.pattern;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import roundwright.notation.Terms;

/** An invented writer: one way for everything, who writes a ball or a tube; the truth is known before the words are. */
final class HabitWriter {
    private static final String[] WORDS = {
        "zero",
        "one",
        "two",
        "three",
        "four",
        "five",
        "six",
        "seven",
        "eight",
        "nine",
        "ten",
        "eleven",
        "twelve",
        "thirteen",
        "fourteen",
        "fifteen",
        "sixteen",
        "seventeen",
        "eighteen",
        "nineteen"
    };
    private static final String[] TENS = {"", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty"};

    /** A line and what is true of it; {@code below} and {@code stated} are -1 where there is none. */
    record Told(String text, int takes, int makes, int stated, int below, List<HabitBook.Way> ways) {}

    final Terms terms;
    private final Random random;
    private final HabitBook book;
    private final boolean counted;
    private final boolean joined;
    private final boolean shapingFirst;
    private final int manner;
    private final String stitch;
    private final String stitches;
    private final Map<String, HabitBook.Way> style = new LinkedHashMap<>();
    private final List<Told> lines = new ArrayList<>();
    private List<HabitBook.Way> used = new ArrayList<>();
    private int number;
    private int below = -1;

    HabitWriter(long seed, HabitBook book) {
        this.random = new Random(seed * 7919 + 17);
        this.book = book;
        this.terms = random.nextBoolean() ? Terms.US : Terms.UK;
        this.counted = random.nextInt(5) > 0;
        this.joined = random.nextInt(4) == 0;
        this.shapingFirst = random.nextInt(5) == 0;
        this.manner = random.nextInt(24);
        String[][] names = terms == Terms.US
                ? new String[][] {
                    {"sc", "sc"},
                    {"sc", "sc"},
                    {"sc", "sc"},
                    {"hdc", "hdc"},
                    {"dc", "dc"},
                    {"SC", "SC"},
                    {"Sc", "Sc"},
                    {"single crochet", "single crochets"},
                    {"single crochet", "single crochet"}
                }
                : new String[][] {
                    {"dc", "dc"},
                    {"dc", "dc"},
                    {"dc", "dc"},
                    {"htr", "htr"},
                    {"tr", "tr"},
                    {"DC", "DC"},
                    {"double crochet", "double crochets"},
                    {"double crochet", "double crochet"}
                };
        String[] name = names[random.nextInt(names.length)];
        this.stitch = name[0];
        this.stitches = name[1];
    }

    /** The lines of the piece, in order. */
    List<Told> pattern() {
        int begin = 5 + random.nextInt(4);
        line(1, start(begin), 0, begin);
        line(1, all("grow-all", begin), begin, 2 * begin);
        int growths = 1 + random.nextInt(4);
        for (int plain = 1; plain <= growths; plain++) {
            grow(plain, begin);
        }
        line(1, even(), below, below);
        line(2 + random.nextInt(5), even(), below, below);
        list();
        for (int plain = below / begin - 2; plain >= 1 && below % begin == 0; plain--) {
            line(1, repeat(plain, begin, "decrease", (plain + 2) * begin == below), below, below - begin);
            if (random.nextInt(3) == 0) {
                line(1, even(), below, below);
            }
        }
        if (below == 2 * begin) {
            line(1, all("shrink-all", begin), below, begin);
        }
        return lines;
    }

    private void grow(int plain, int times) {
        int kind = random.nextInt(6);
        if (kind == 0 && plain > 1) {
            line(1, staggered(plain, times), below, below + times);
        } else if (kind == 1 && plain < 9) {
            line(1, every(plain + 1), below, below + times);
        } else {
            line(1, repeat(plain, times, "increase", true), below, below + times);
        }
        if (random.nextInt(4) == 0) {
            line(1, even(), below, below);
        }
    }

    /** Increases and decreases in the midst of plain stitches, that leave the count where it was, or change it. */
    private void list() {
        int shaped = 2 + random.nextInt(3);
        int before = 1 + random.nextInt(Math.max(1, below / 2 - shaped));
        int after = below - before - shaped;
        if (random.nextInt(3) > 0 && after > 1) {
            String separator = separator();
            line(
                    1,
                    plain(before) + separator + shaping("increase", shaped) + separator + plain(after),
                    below,
                    below + shaped);
            after = below - before - 2 * shaped;
            line(
                    1,
                    plain(before) + separator + shaping("decrease", shaped) + separator + plain(after),
                    below,
                    below - shaped);
        }
    }

    private HabitBook.Way way(String slot) {
        HabitBook.Way way = style.computeIfAbsent(slot, name -> book.any(name, counted, shortName(), random));
        used.add(way);
        return way;
    }

    /** Another way each time: what a writer words anew in every round. */
    private HabitBook.Way anew(String slot) {
        HabitBook.Way way = book.any(slot, counted, shortName(), random);
        used.add(way);
        return way;
    }

    private boolean shortName() {
        return stitch.indexOf(' ') < 0;
    }

    private String separator() {
        return way("separator").one().replace('␠', ' ');
    }

    private String start(int begin) {
        return fill(anew("start").one(), begin, begin);
    }

    private String all(String slot, int times) {
        return fill(anew(slot).one(), times, times);
    }

    private String even() {
        return fill(anew("even").one(), below, below);
    }

    private String every(int nth) {
        return fill(anew("every").one().replace("{nth}", ordinal(nth)), 0, 0);
    }

    private String plain(int number) {
        return count("plain", number);
    }

    private String shaping(String slot, int number) {
        return count(slot, number);
    }

    private String count(String slot, int number) {
        HabitBook.Way way = way(slot);
        return fill(number == 1 ? way.one() : way.many(), number, number);
    }

    private String repeat(int plain, int times, String slot, boolean exact) {
        String first = plain(plain);
        String second = shaping(slot, 1);
        String body = shapingFirst ? second + separator() + first : first + separator() + second;
        String form = exact && random.nextInt(2) == 0
                ? way("fill").one()
                : way("times").one();
        return fill(form, times, times).replace("{body}", body);
    }

    /** "2 sc, inc, (5 sc, inc) x 5, 3 sc": the increases do not stand above those of the round below. */
    private String staggered(int plain, int times) {
        int first = 1 + random.nextInt(plain - 1);
        HabitBook.Way form = way("times");
        if (!form.one().matches("[(\\[{].*[0-9a-z}]") || form.one().contains("total") || form.counted()) {
            style.put("times", book.ways("times").get(0));
            return staggered(plain, times);
        }
        String inner = plain(plain) + separator() + shaping("increase", 1);
        String repeat = fill(form.one(), times - 1, times - 1).replace("{body}", inner);
        return plain(first)
                + separator()
                + shaping("increase", 1)
                + separator()
                + repeat
                + separator()
                + plain(plain - first);
    }

    private void line(int rounds, String steps, int takes, int makes) {
        int first = number + 1;
        number += rounds;
        String label = random.nextInt(200) == 0 ? "" : label(first, number);
        String text = glue(label, sentence(steps, makes, label.isEmpty()));
        lines.add(new Told(mannered(text), takes, makes, counted ? makes : -1, below, used));
        used = new ArrayList<>();
        below = makes;
    }

    private String label(int first, int last) {
        HabitBook.Way way = way("label");
        String form = first == last ? way.one() : way.many();
        return form.replace("{n}", "" + first)
                .replace("{a}", "" + first)
                .replace("{b}", "" + last)
                .replace("{r}", "" + (last - first + 1))
                .replace("{nth}", ordinal(first))
                .replace("{ath}", ordinal(first))
                .replace("{bth}", ordinal(last))
                .replace("{word}", words(first))
                .replace("{aword}", words(first))
                .replace("{bword}", words(last));
    }

    private String sentence(String steps, int makes, boolean unlabelled) {
        boolean count = counted || unlabelled;
        String stated = count ? fill(way("count").one(), makes, makes) : "";
        boolean capital = random.nextInt(3) == 0;
        String begun = capital ? Character.toUpperCase(steps.charAt(0)) + steps.substring(1) : steps;
        if (joined) {
            HabitBook.Way join = way("join");
            String after = fill(join.many(), makes, makes);
            String before = below < 0 || join.one().isBlank() ? "" : join.one() + " ";
            boolean last = manner % 2 == 0;
            return before + (last ? glue(glue(begun, stated), after) : glue(begun + after, stated));
        }
        String told = glue(begun, stated);
        return random.nextInt(12) == 0 ? remarked(told, anew("remark").one()) : told;
    }

    /** A remark is a sentence of its own, unless it begins with a mark. */
    private static String remarked(String told, String remark) {
        boolean ended = ".)]}>*".indexOf(told.charAt(told.length() - 1)) >= 0 || !Character.isLetter(remark.charAt(1));
        return told + (ended ? "" : ".") + remark;
    }

    private static String glue(String before, String after) {
        boolean close = before.isEmpty() || after.isEmpty() || " ,.;:…|".indexOf(after.charAt(0)) >= 0;
        String left = before.endsWith(".") && after.startsWith(".") ? before.substring(0, before.length() - 1) : before;
        return left + (close ? "" : " ") + after;
    }

    private String fill(String form, int count, int times) {
        int change = below < 0 ? count : count - below;
        return form.replace("{st}", stitch)
                .replace("{sts}", stitches)
                .replace("{c}", "" + count)
                .replace("{n}", "" + count)
                .replace("{k}", "" + count)
                .replace("{t}", "" + times)
                .replace("{m}", "" + (times - 1))
                .replace("{d}", "" + Math.abs(change))
                .replace("{e}", "" + Math.max(0, below))
                .replace("{kword}", words(count))
                .replace("{cword}", words(count))
                .replace("{tword}", words(times))
                .replace("{mword}", words(Math.max(0, times - 1)));
    }

    /** How the characters were typed or pasted. */
    private String mannered(String text) {
        return switch (manner) {
            case 0, 1 -> text.replace(" x ", " × ").replace("-", "–").replace("\"", "”");
            case 2 -> text.replace(' ', '\u00a0');
            case 3 -> text.toUpperCase(java.util.Locale.ROOT);
            case 4, 5 -> text.toLowerCase(java.util.Locale.ROOT);
            case 6 -> text.replace(", ", ",");
            case 7 -> text.replace(" ", "  ");
            case 8 -> text + " ";
            case 9 -> "\t" + text;
            case 10 -> text.replace('(', '（').replace(')', '）').replace(',', '，');
            case 11 -> text.replace("* ", "*").replace("(", "( ").replace(")", " )");
            default -> text;
        };
    }

    private static String ordinal(int number) {
        int last = number % 10;
        boolean teen = number % 100 / 10 == 1;
        return number + (teen || last == 0 || last > 3 ? "th" : last == 1 ? "st" : last == 2 ? "nd" : "rd");
    }

    private static String words(int number) {
        if (number < WORDS.length) {
            return WORDS[number];
        }
        if (number >= TENS.length * 10) {
            return "" + number;
        }
        return TENS[number / 10] + (number % 10 == 0 ? "" : "-" + WORDS[number % 10]);
    }
}
