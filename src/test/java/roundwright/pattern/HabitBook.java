package roundwright.pattern;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;

/** The ways of writing in {@code habits.txt}, slot by slot. */
final class HabitBook {
    /** What no one writes with a name of two words. */
    private static final Pattern JAMMED = Pattern.compile("\\{st}[a-z0-9{]|\\{st}-[^ ]|[0-9}]-?\\{st}");

    private static final Path FILE = Path.of("src/test/resources/roundwright/notation/habits.txt");

    /**
     * One way of writing.
     *
     * @param counted whether it is clear only where the round states its count
     * @param one what is written for one of a thing, or before the steps
     * @param many what is written for several, or after the steps
     */
    record Way(String slot, boolean counted, String one, String many) {
        static Way of(String slot, String line) {
            boolean counted = line.startsWith("!");
            String[] sides = line.substring(counted ? 1 : 0).split(" \\|\\| ", 2);
            return new Way(slot, counted, sides[0], sides[sides.length - 1]);
        }

        @Override
        public String toString() {
            return slot + "\t" + one + (one.equals(many) ? "" : " || " + many);
        }
    }

    private final Map<String, List<Way>> slots = new LinkedHashMap<>();

    HabitBook() {
        String slot = "";
        for (String line : lines()) {
            if (line.matches("\\[[a-z-]+\\]") && Character.isLetter(line.charAt(1)) && heads(line)) {
                slot = line.substring(1, line.length() - 1);
                slots.put(slot, new ArrayList<>());
            } else if (!line.isEmpty() && !slot.isEmpty()) {
                slots.get(slot).add(Way.of(slot, line));
            }
        }
    }

    private static boolean heads(String line) {
        return !line.equals("[inc]") && !line.equals("[dec]");
    }

    private static List<String> lines() {
        try {
            return Files.readAllLines(FILE, StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    List<Way> ways(String slot) {
        return slots.get(slot);
    }

    /** Any way of the slot; one that is clear without a count where the writer states none. */
    Way any(String slot, boolean counted, boolean shortName, Random random) {
        List<Way> ways = slots.get(slot).stream()
                .filter(way -> counted || !way.counted())
                .filter(way -> shortName
                        || !JAMMED.matcher(way.one()).find()
                                && !JAMMED.matcher(way.many()).find())
                .toList();
        return ways.get(random.nextInt(ways.size()));
    }
}
