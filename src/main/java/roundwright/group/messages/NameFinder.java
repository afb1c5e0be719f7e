package roundwright.group.messages;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds the students of a group by what people call them: without accents, by the first name alone, with a letter wrong. */
public final class NameFinder {
    /** Shorter names are too near to one another, and to other words, to be guessed at. */
    private static final int SHORTEST_TO_GUESS = 4;

    private static final int LONG_NAME = 7;
    private static final int SHORTEST_SURNAME = 3;
    private static final int MOST_WORDS = 4;
    private static final String SMALL_WORDS =
            "so|ok|no|my|on|in|at|is|it|as|an|am|do|go|he|me|we|us|up|to|of|or|if|by|be|hi|oh|st|sc|dc|tr|ch|rd|r|im|ah|ps";

    private final Map<String, String> exact = new HashMap<>();
    private final Map<String, Optional<String>> seen = new HashMap<>();
    private final Set<String> starts = new HashSet<>();
    private final Map<String, List<String>> initials = new HashMap<>();

    public NameFinder(List<String> names) {
        Map<String, List<String>> first = new HashMap<>();
        for (String name : names) {
            String folded = Folding.fold(name).strip();
            exact.put(folded, name);
            first.computeIfAbsent(firstWord(folded), word -> new ArrayList<>()).add(name);
        }
        starts.addAll(first.keySet());
        names.forEach(this::initials);
        first.forEach(this::alone);
        Map<String, List<String>> last = new HashMap<>();
        for (String name : names) {
            String[] words = Folding.fold(name).strip().split("[\\s.-]+");
            if (words.length > 1 && words[words.length - 1].length() >= SHORTEST_SURNAME) {
                last.computeIfAbsent(words[words.length - 1], word -> new ArrayList<>())
                        .add(name);
            }
        }
        last.forEach(this::alone);
    }

    private void alone(String word, List<String> who) {
        if (who.size() == 1) {
            exact.putIfAbsent(word, who.get(0));
        }
    }

    private void initials(String name) {
        String letters = Arrays.stream(Folding.fold(name).strip().split("[\\s.-]+"))
                .filter(word -> !word.isEmpty())
                .map(word -> word.substring(0, word.offsetByCodePoints(0, 1)))
                .collect(Collectors.joining());
        Stream.of(letters, letters.isEmpty() ? "" : letters.substring(0, letters.offsetByCodePoints(0, 1)))
                .distinct()
                .forEach(some ->
                        initials.computeIfAbsent(some, key -> new ArrayList<>()).add(name));
    }

    /** The student with these initials, where there is one and only one: "C", "O.B.". */
    Optional<String> initials(List<Token> tokens, int at, List<String> first) {
        Token token = tokens.get(at);
        if (!token.capital() || token.matches(SMALL_WORDS)) {
            return Optional.empty();
        }
        List<String> near = initials.getOrDefault(token.folded(), List.of()).stream()
                .filter(first::contains)
                .toList();
        return near.size() == 1 ? Optional.of(near.get(0)) : byInitials(token.folded());
    }

    private Optional<String> byInitials(String letters) {
        return Optional.ofNullable(initials.get(letters.replaceAll("[\\s.]", "")))
                .filter(names -> names.size() == 1)
                .map(names -> names.get(0));
    }

    boolean knowsNobody() {
        return exact.isEmpty();
    }

    /** The student a written name means, where there is one and only one. */
    public Optional<String> find(String written) {
        return seen.computeIfAbsent(Folding.fold(written).strip(), this::look);
    }

    /** The student a word means when it is spelt right, but for accents and capitals. */
    Optional<String> exactly(String written) {
        return Optional.ofNullable(exact.get(Folding.fold(written).strip()));
    }

    private Optional<String> look(String folded) {
        if (exact.containsKey(folded)) {
            return Optional.of(exact.get(folded));
        }
        String first = firstWord(folded);
        if (exact.containsKey(first) && agrees(folded, exact.get(first))) {
            return Optional.of(exact.get(first));
        }
        return near(folded).or(() -> near(first)).or(() -> byInitials(folded));
    }

    /** A name may be nothing but dots. */
    private static String firstWord(String folded) {
        return Stream.of(folded.split("[\\s.-]+"))
                .filter(word -> !word.isEmpty())
                .findFirst()
                .orElse(folded);
    }

    /** "Bram T." is the Bram of the list unless the list's Bram has another initial. */
    private static boolean agrees(String folded, String name) {
        String[] written = folded.split("[\\s.]+");
        String[] listed = Folding.fold(name).split("[\\s.]+");
        return written.length < 2 || listed.length < 2 || written[1].charAt(0) == listed[1].charAt(0);
    }

    private Optional<String> near(String folded) {
        if (folded.length() < SHORTEST_TO_GUESS) {
            return Optional.empty();
        }
        int most = folded.length() >= LONG_NAME ? 2 : 1;
        Map<Integer, List<String>> byDistance = exact.entrySet().stream()
                .filter(entry -> entry.getKey().length() >= SHORTEST_TO_GUESS)
                .filter(entry -> Folding.distance(folded, entry.getKey(), most) <= most)
                .collect(Collectors.groupingBy(
                        entry -> Folding.distance(folded, entry.getKey(), most),
                        Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
        return byDistance.entrySet().stream()
                .min(Comparator.comparingInt(Map.Entry::getKey))
                .map(Map.Entry::getValue)
                .map(names -> names.stream().distinct().toList())
                .filter(names -> names.size() == 1)
                .map(names -> names.get(0));
    }

    /** A name in running text: its student and how many tokens it takes. A word that is written small must be right to the letter. */
    Optional<Named> at(List<Token> tokens, int at) {
        Token token = tokens.get(at);
        boolean known = token.word()
                && (token.capital()
                        || starts.contains(token.folded())
                        || possessive(token.folded()).isPresent());
        if (exact.isEmpty() || !known) {
            return Optional.empty();
        }
        return IntStream.iterate(MOST_WORDS, length -> length >= 1, length -> length - 1)
                .mapToObj(length -> named(tokens, at, length))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<Named> named(List<Token> tokens, int at, int length) {
        if (at + length > tokens.size()
                || !tokens.subList(at, at + length).stream().allMatch(Token::word)) {
            return Optional.empty();
        }
        String words =
                tokens.subList(at, at + length).stream().map(Token::folded).collect(Collectors.joining(" "));
        Optional<String> found = Optional.ofNullable(exact.get(words)).or(() -> possessive(words));
        if (found.isEmpty() && length == 1 && tokens.get(at).capital()) {
            found = seen.computeIfAbsent("~" + words, key -> near(words));
        }
        return found.map(name -> new Named(name, length));
    }

    private Optional<String> possessive(String words) {
        return words.endsWith("s")
                ? Optional.ofNullable(exact.get(words.substring(0, words.length() - 1)))
                : Optional.empty();
    }

    /** A student's name in the text. */
    record Named(String name, int length) {}
}
