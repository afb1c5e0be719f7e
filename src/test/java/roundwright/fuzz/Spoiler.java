package roundwright.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;

/** Spoils good inputs the way hands, programs and disks do: pieces lost, doubled, swapped, bits turned, and words nobody would expect. */
final class Spoiler {
    private static final List<String> UNEXPECTED = List.of(
            "=HYPERLINK(\"x\")",
            "+1+1",
            "@SUM(A1)",
            "-2",
            "<script>alert(1)</script>",
            "\" onload=\"x",
            "&lt;",
            "]]>",
            "../../outside",
            "..\\..\\outside",
            "/etc/outside",
            "CON",
            "{0}",
            "{0,choice,0#a|1<b}",
            "''",
            "%s%n",
            "\0",
            "\uFEFF",
            "\u202E",
            "\uD83E",
            "\u0000\u0001\u001b[2J",
            "999999999999999999999",
            "-1",
            "1e9",
            "NaN",
            "🧶🧶",
            "é\u0301\u0301\u0301",
            "\r",
            "\r\n",
            "\t",
            "\"",
            "\"\"\"",
            ";;;;",
            "sep=;\n",
            "# ",
            "## Part: ",
            "## Lesson 1: ",
            "## Technique: ",
            "- rounds: ",
            "- new: ",
            "- needs: ",
            "Rnds 2-99999: ",
            "(((((((((((((((((",
            "* * * * * *",
            "x 999999",
            "İ",
            "ß",
            "ﬁ",
            "中文",
            "א");

    private final Random chance;

    Spoiler(Random chance) {
        this.chance = chance;
    }

    /** A text spoilt in up to twelve places; once in two hundred it grows to about a megabyte. */
    String text(String good) {
        StringBuilder text = new StringBuilder(good);
        for (int time = chance.nextInt(12); time >= 0; time--) {
            spoil(text);
        }
        if (chance.nextInt(200) == 0) {
            grow(text);
        }
        return text.toString();
    }

    private void spoil(StringBuilder text) {
        int from = chance.nextInt(text.length() + 1);
        int to = Math.min(text.length(), from + chance.nextInt(chance.nextBoolean() ? 4 : 200));
        switch (chance.nextInt(8)) {
            case 0 -> text.delete(from, to);
            case 1 -> text.insert(from, text.substring(from, to).repeat(1 + chance.nextInt(3)));
            case 2 -> text.insert(chance.nextInt(text.length() + 1), text.substring(from, to));
            case 3 -> text.setLength(chance.nextInt(6) == 0 ? from : text.length());
            case 4 -> text.insert(from, (char) chance.nextInt(chance.nextBoolean() ? 256 : 0x10000));
            case 5 -> text.insert(from, chance.nextInt(2_000_000));
            default -> text.insert(from, UNEXPECTED.get(chance.nextInt(UNEXPECTED.size())));
        }
    }

    private void grow(StringBuilder text) {
        int from = chance.nextInt(text.length() + 1);
        String piece = text.substring(from, Math.min(text.length(), from + 1 + chance.nextInt(60)));
        text.insert(from, (piece.isEmpty() ? "a" : piece).repeat(Math.max(1, (1 << 20) / Math.max(1, piece.length()))));
    }

    /** A word or two that a person might have for a name, or might not. */
    String name() {
        StringBuilder name = new StringBuilder();
        for (int word = chance.nextInt(3); word >= 0; word--) {
            name.append(
                    chance.nextBoolean()
                            ? List.of("Ines", "Zoë", "O’Brien", "van der Laan").get(chance.nextInt(4))
                            : UNEXPECTED.get(chance.nextInt(UNEXPECTED.size())));
            name.append(chance.nextBoolean() ? " " : "");
        }
        return name.toString();
    }

    /** Bytes with some turned, some lost, some of another kind; half of it near the beginning, where a file says what it is. */
    byte[] bytes(byte[] good) {
        byte[] bytes = good.clone();
        for (int time = chance.nextInt(10); time >= 0; time--) {
            int reach = chance.nextBoolean() ? Math.min(4096, bytes.length) : bytes.length;
            int at = chance.nextInt(Math.max(1, reach));
            if (at < bytes.length) {
                bytes[at] = (byte) (chance.nextBoolean() ? bytes[at] ^ 1 << chance.nextInt(8) : chance.nextInt(256));
            }
        }
        return chance.nextInt(5) == 0 ? java.util.Arrays.copyOf(bytes, chance.nextInt(bytes.length + 1)) : bytes;
    }

    /** A text as bytes in some encoding, as old editors and spreadsheets write it. */
    byte[] encoded(String text) {
        return switch (chance.nextInt(6)) {
            case 0 -> text.getBytes(StandardCharsets.UTF_16);
            case 1 -> text.getBytes(StandardCharsets.UTF_16LE);
            case 2 -> text.getBytes(StandardCharsets.ISO_8859_1);
            case 3 -> bytes(text.getBytes(StandardCharsets.UTF_8));
            default -> text.getBytes(StandardCharsets.UTF_8);
        };
    }
}
