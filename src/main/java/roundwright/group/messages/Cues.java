package roundwright.group.messages;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The phrases that give a number its meaning, from the file {@code cues.txt}: "should be" makes the next number a target. */
final class Cues {
    private static final Set<Cue> WORK = EnumSet.complementOf(EnumSet.of(
            Cue.TEACHER, Cue.QUESTION, Cue.VOCATIVE, Cue.UNIT, Cue.NO_COUNT_BEFORE, Cue.NO_THINGS, Cue.FILLER));
    private static final Map<Cue, Map<String, List<String[]>>> PHRASES = load();
    private static final Map<String, Set<Cue>> BEGUN = begun();

    private Cues() {}

    /** How many tokens from a place on make a phrase of this role, the longest there is; 0 where none does. */
    static int length(Cue cue, List<Token> tokens, int at) {
        if (at < 0 || at >= tokens.size() || !begins(cue, tokens.get(at).folded())) {
            return 0;
        }
        for (String[] phrase : PHRASES.get(cue).get(tokens.get(at).folded())) {
            if (matches(phrase, tokens, at)) {
                return phrase.length;
            }
        }
        return 0;
    }

    private static boolean begins(Cue cue, String word) {
        return BEGUN.getOrDefault(word, Set.of()).contains(cue);
    }

    static boolean at(Cue cue, List<Token> tokens, int at) {
        return length(cue, tokens, at) > 0;
    }

    /** Whether a phrase of this role ends just before a place. */
    static boolean before(Cue cue, List<Token> tokens, int at) {
        for (int start = at - 1; start >= 0 && start >= at - 5; start--) {
            if (matchesEnding(cue, tokens, start, at)) {
                return true;
            }
        }
        return false;
    }

    private static boolean matchesEnding(Cue cue, List<Token> tokens, int start, int end) {
        return begins(cue, tokens.get(start).folded())
                && PHRASES.get(cue).get(tokens.get(start).folded()).stream()
                        .anyMatch(phrase -> start + phrase.length == end && matches(phrase, tokens, start));
    }

    /** Whether the words just before a place say that the number there is the round being worked: "I'm on 25". */
    static boolean onRound(List<Token> tokens, int at) {
        return at > 0
                && tokens.get(at - 1).is("on")
                && (at < 2 || tokens.get(at - 2).matches("im|am|still|now|stuck|working|currently|only|just|is|be"));
    }

    static boolean is(Cue cue, String word) {
        return begins(cue, word) && PHRASES.get(cue).get(word).stream().anyMatch(phrase -> phrase.length == 1);
    }

    /** Whether a word alone has a part in saying something of the work, so that it is nobody's name. */
    static boolean saysSomething(String word) {
        return WORK.stream().anyMatch(cue -> is(cue, word));
    }

    private static boolean matches(String[] phrase, List<Token> tokens, int at) {
        if (at + phrase.length > tokens.size()) {
            return false;
        }
        for (int index = 0; index < phrase.length; index++) {
            if (!tokens.get(at + index).is(phrase[index])) {
                return false;
            }
        }
        return true;
    }

    private static Map<Cue, Map<String, List<String[]>>> load() {
        Map<Cue, Map<String, List<String[]>>> phrases = new EnumMap<>(Cue.class);
        Arrays.stream(Cue.values()).forEach(cue -> phrases.put(cue, new HashMap<>()));
        try (InputStream stream = Cues.class.getResourceAsStream("/roundwright/messages/cues.txt");
                BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            lines.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .forEach(line -> add(phrases, line));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return phrases;
    }

    private static Map<String, Set<Cue>> begun() {
        Map<String, Set<Cue>> begun = new HashMap<>();
        PHRASES.forEach((cue, words) -> words.keySet()
                .forEach(word -> begun.computeIfAbsent(word, first -> EnumSet.noneOf(Cue.class))
                        .add(cue)));
        return begun;
    }

    private static void add(Map<Cue, Map<String, List<String[]>>> phrases, String line) {
        int colon = line.indexOf(':');
        Cue cue = Cue.valueOf(line.substring(0, colon).toUpperCase(Locale.ROOT).replace('-', '_'));
        for (String phrase : line.substring(colon + 1).split("\\|")) {
            String[] words = phrase.strip().split(" ");
            List<String[]> same = phrases.get(cue).computeIfAbsent(words[0], word -> new ArrayList<>());
            same.add(words);
            same.sort(Comparator.comparingInt((String[] other) -> other.length).reversed());
        }
    }
}
