package roundwright.group.messages;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
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
    private static final Map<Cue, List<String[]>> NONE = new EnumMap<>(Cue.class);
    private static final Map<String, Map<Cue, List<String[]>>> PHRASES = load();

    private Cues() {}

    /** The phrases that a word begins, by their roles, the longest first. */
    static Map<Cue, List<String[]>> begunBy(String word) {
        return PHRASES.getOrDefault(word, NONE);
    }

    /** How many tokens from a place on make a phrase of this role, the longest there is; 0 where none does. */
    static int length(Cue cue, List<Token> tokens, int at) {
        List<String[]> phrases =
                at < 0 || at >= tokens.size() ? null : tokens.get(at).begun().get(cue);
        if (phrases != null) {
            for (String[] phrase : phrases) {
                if (matches(phrase, tokens, at)) {
                    return phrase.length;
                }
            }
        }
        return 0;
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
        List<String[]> phrases = tokens.get(start).begun().get(cue);
        return phrases != null
                && phrases.stream().anyMatch(phrase -> start + phrase.length == end && matches(phrase, tokens, start));
    }

    /** Whether the words just before a place say that the number there is the round being worked: "I'm on 25". */
    static boolean onRound(List<Token> tokens, int at) {
        return at > 0
                && tokens.get(at - 1).is("on")
                && (at < 2 || tokens.get(at - 2).matches("im|am|still|now|stuck|working|currently|only|just|is|be"));
    }

    static boolean is(Cue cue, String word) {
        return alone(begunBy(word).get(cue));
    }

    static boolean is(Cue cue, Token token) {
        return alone(token.begun().get(cue));
    }

    private static boolean alone(List<String[]> phrases) {
        return phrases != null && phrases.get(phrases.size() - 1).length == 1;
    }

    /** Whether a word alone has a part in saying something of the work, so that it is nobody's name. */
    static boolean saysSomething(String word) {
        return begunBy(word).entrySet().stream()
                .anyMatch(begun -> WORK.contains(begun.getKey()) && alone(begun.getValue()));
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

    private static Map<String, Map<Cue, List<String[]>>> load() {
        Map<String, Map<Cue, List<String[]>>> phrases = new HashMap<>();
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

    private static void add(Map<String, Map<Cue, List<String[]>>> phrases, String line) {
        int colon = line.indexOf(':');
        Cue cue = Cue.valueOf(line.substring(0, colon).toUpperCase(Locale.ROOT).replace('-', '_'));
        for (String phrase : line.substring(colon + 1).split("\\|")) {
            String[] words = phrase.strip().split(" ");
            List<String[]> same = phrases.computeIfAbsent(words[0], word -> new EnumMap<>(Cue.class))
                    .computeIfAbsent(cue, role -> new ArrayList<>());
            same.add(words);
            same.sort(Comparator.comparingInt((String[] other) -> other.length).reversed());
        }
    }
}
