package roundwright.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * The catalogue of everything the program says to a person: one file of keys and sentences for each
 * room, {@code roundwright/wording/ROOM.properties}.
 *
 * <p>{@code Wording.of("notation").say("used-too-many", 14, 12)} fills {@code {0}} and {@code {1}} of the
 * sentence named {@code used-too-many}. Sentences are {@link MessageFormat} patterns (so a quote is
 * written twice, and {@code {0,choice,…}} chooses between singular and plural). Whole numbers are written
 * without grouping, in the digits of the trade.
 */
public final class Wording {
    private static final Pattern WORD = Pattern.compile("\\p{L}{3,}");
    private static volatile int longer;
    private static final Map<String, Wording> ROOMS = new ConcurrentHashMap<>();

    private final String room;
    private final Properties sentences;

    private Wording(String room) {
        this.room = room;
        this.sentences = load(room);
    }

    /** The wording of one room, such as {@code "notation"}; the file is read once. */
    public static Wording of(String room) {
        return ROOMS.computeIfAbsent(room, Wording::new);
    }

    /** The sentence of a key with its places filled. A key that is not in the catalogue is a programming error. */
    public String say(String key, Object... arguments) {
        String sentence = sentences.getProperty(key);
        if (sentence == null) {
            throw new IllegalArgumentException("no wording '" + key + "' in room '" + room + "'");
        }
        return longer(new MessageFormat(sentence, Locale.UK).format(plainNumbers(sentence, arguments)));
    }

    /**
     * From now on makes every word of more than two letters so many percent longer, as another language would: for looking whether pages
     * bear it.
     */
    public static void lengthen(int percent) {
        longer = percent;
    }

    private static String longer(String sentence) {
        return longer == 0 ? sentence : WORD.matcher(sentence).replaceAll(found -> longerWord(found.group()));
    }

    private static String longerWord(String word) {
        int middle = word.length() / 2;
        int more = (int) Math.round(word.length() * longer / 100.0);
        return word.substring(0, middle) + word.substring(middle, middle + 1).repeat(more) + word.substring(middle);
    }

    public boolean has(String key) {
        return sentences.containsKey(key);
    }

    /** Every key of the room, sorted. */
    public Set<String> keys() {
        return new TreeSet<>(sentences.stringPropertyNames());
    }

    /** Joins things as a sentence does: "a", "a and b", "a, b and c". */
    public static String list(List<String> things) {
        if (things.size() < 2) {
            return String.join("", things);
        }
        List<String> first = new ArrayList<>(things.subList(0, things.size() - 1));
        return String.join(", ", first) + " and " + things.get(things.size() - 1);
    }

    private static Object[] plainNumbers(String sentence, Object... arguments) {
        Object[] plain = arguments.clone();
        for (int place = 0; place < plain.length; place++) {
            if (!sentence.contains("{" + place + ",")) {
                plain[place] = inFigures(plain[place]);
            }
        }
        return plain;
    }

    /**
     * MessageFormat would write 1200 as "1,200", which in this trade reads as two numbers, and would fetch how a country writes numbers
     * for it, which takes long the first time. A choice needs the number itself.
     */
    private static Object inFigures(Object argument) {
        return argument instanceof Integer || argument instanceof Long ? argument.toString() : argument;
    }

    private static Properties load(String room) {
        Properties properties = new Properties();
        String path = "/roundwright/wording/" + room + ".properties";
        try (InputStream stream = Wording.class.getResourceAsStream(path)) {
            if (stream == null) {
                throw new IllegalArgumentException("no wording file " + path);
            }
            properties.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new IllegalStateException("cannot read " + path, failure);
        }
        return properties;
    }
}
