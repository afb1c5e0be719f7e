package roundwright.group.messages;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import roundwright.group.messages.NameFinder.Named;

/**
 * Finds the parts of the piece by what people call them: "left ear", "L ear", "the ears" for both of them, "hed" before a round. A
 * head that hurts is no part.
 */
final class Parts {
    private static final int SHORTEST_TO_GUESS = 3;
    private static final int MOST_WORDS = 4;

    /** Words that name people's own parts too. */
    private static final Set<String> BODY = Set.of(
            "head", "body", "hand", "hands", "arm", "arms", "leg", "legs", "foot", "feet", "ear", "ears", "eye", "eyes",
            "nose", "neck", "face", "back", "tail");

    private static final String PAIN =
            "hurts?|hurting|ach(?:e|es|ed|ing)|sore|spins|spinning|killing|explod(?:es?|ing)|pains?|infections?|cold|injury|start|over|off|home|out|full|round|around";
    private static final String OWN =
            "in|over|scratching|scratched|shaking|shook|lost|losing|hurt|hit|banged|bumped|broke|sore|wash|washed|of top|use|using|into|through";

    private final List<String> names;
    private final NameFinder finder;
    private final Map<String, List<String>> called = new LinkedHashMap<>();

    private final Set<String> beginnings = new HashSet<>();

    Parts(List<String> names) {
        this.names = List.copyOf(names);
        this.finder = new NameFinder(names);
        names.forEach(this::sides);
        called.keySet().forEach(name -> beginnings.add(name.split(" ")[0]));
    }

    private void sides(String name) {
        String[] words = Folding.fold(name).strip().split("[\\s-]+");
        called.computeIfAbsent(String.join(" ", words), key -> new ArrayList<>())
                .add(name);
        if (words.length == 2) {
            boolean side = words[0].matches("left|right");
            String thing = words[1].matches("\\d+|[a-z]") ? words[0] : words[1];
            together(thing + "s", name);
            if (side) {
                called.put(words[0].charAt(0) + " " + words[1], List.of(name));
                called.put(words[0] + " one", List.of(name));
            }
        }
    }

    private void together(String plural, String name) {
        called.computeIfAbsent(plural, key -> new ArrayList<>()).add(name);
        called.computeIfAbsent("both " + plural, key -> new ArrayList<>()).add(name);
    }

    /** The parts that a name stands for: itself, or all that are called so together. */
    List<String> members(String name) {
        return called.getOrDefault(name, List.of(name));
    }

    /** Whether something written alone names a part. */
    boolean names(String written) {
        return named(written).isPresent();
    }

    /** The part, or the parts together, that something written alone names. */
    Optional<String> named(String written) {
        String folded = Folding.fold(written).strip();
        List<String> those = called.get(folded);
        return those == null ? finder.find(written) : Optional.of(those.size() == 1 ? those.get(0) : folded);
    }

    /** A part named in running text, and how many tokens its name takes. */
    Optional<Named> at(List<Token> tokens, int at) {
        if (names.isEmpty() || !tokens.get(at).word()) {
            return Optional.empty();
        }
        Optional<Named> found = spelt(tokens, at).or(() -> side(tokens, at)).or(() -> misspelt(tokens, at));
        return found.filter(part -> !ownBody(tokens, at, part));
    }

    private Optional<Named> spelt(List<Token> tokens, int at) {
        boolean begins = beginnings.contains(tokens.get(at).folded());
        for (int length = !begins ? 0 : Math.min(MOST_WORDS, tokens.size() - at); length > 0; length--) {
            List<String> parts = called.get(words(tokens, at, length));
            if (parts != null) {
                String name = parts.size() == 1 ? parts.get(0) : words(tokens, at, length);
                return Optional.of(new Named(name, length));
            }
        }
        return finder.at(tokens, at)
                .filter(named -> !Cues.saysSomething(tokens.get(at).folded()));
    }

    private static String words(List<Token> tokens, int at, int length) {
        return tokens.subList(at, at + length).stream().map(Token::folded).collect(Collectors.joining(" "));
    }

    /** "L r4 12, R r4 11", "left: 12": a side alone, before a round or a colon. */
    private Optional<Named> side(List<Token> tokens, int at) {
        String word = tokens.get(at).folded();
        boolean side = Shape.matches(word, "left|right")
                || Shape.matches(word, "[lr]") && tokens.get(at).capital();
        if (!side
                || !(roundAt(tokens, at + 1)
                        || at + 1 < tokens.size() && tokens.get(at + 1).matches("[:=]"))) {
            return Optional.empty();
        }
        List<String> those = names.stream()
                .filter(name -> Folding.fold(name).matches((word.startsWith("l") ? "left" : "right") + "\\b.*"))
                .toList();
        return those.size() == 1 ? Optional.of(new Named(those.get(0), 1)) : Optional.empty();
    }

    /** A letter too many, too few or two that changed places, where a round follows. */
    private Optional<Named> misspelt(List<Token> tokens, int at) {
        for (int length = Math.min(2, tokens.size() - at); length > 0; length--) {
            String words = roundAt(tokens, at + length) ? words(tokens, at, length) : "";
            if (guessable(words)) {
                List<String> near = names.stream()
                        .filter(name -> slip(words, Folding.fold(name)))
                        .toList();
                if (near.size() == 1) {
                    return Optional.of(new Named(near.get(0), length));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean guessable(String words) {
        return words.length() >= SHORTEST_TO_GUESS
                && !Shape.matches(words, "had|heard|ahead|hand|bad|lad")
                && !Cues.saysSomething(words);
    }

    private static boolean slip(String words, String name) {
        boolean otherLetter = words.length() == name.length()
                && !words.chars()
                        .sorted()
                        .boxed()
                        .toList()
                        .equals(name.chars().sorted().boxed().toList());
        return !name.isEmpty()
                && words.charAt(0) == name.charAt(0)
                && (!otherLetter || name.contains(" "))
                && Folding.distance(words, name, 1) == 1;
    }

    private static boolean roundAt(List<Token> tokens, int at) {
        if (at >= tokens.size()) {
            return false;
        }
        boolean word = Cues.length(Cue.ROUND, tokens, at) > 0 || Cues.length(Cue.ROUNDS, tokens, at) > 0;
        return tokens.get(at).number() || word && NumberWords.at(tokens, at + 1).isPresent();
    }

    private static boolean ownBody(List<Token> tokens, int at, Named part) {
        String word = tokens.get(at + part.length() - 1).folded();
        if (!BODY.contains(word)) {
            return false;
        }
        int next = at + part.length();
        while (next < tokens.size() && tokens.get(next).matches("is|are|was|really|so|still|s|a|bit|now")) {
            next++;
        }
        boolean pain = next < tokens.size() && tokens.get(next).matches(PAIN) && !roundAt(tokens, next);
        boolean mine = at > 0 && tokens.get(at - 1).matches("my|your|her|his|the|own");
        boolean idiom = mine
                        && at > 1
                        && tokens.get(at - 1).is("my")
                        && tokens.get(at - 2).matches(OWN)
                || at > 2 && words(tokens, at - 3, 2).equals("top of") && !workFollows(tokens, next);
        return pain
                || idiom && !workFollows(tokens, next)
                || at > 0 && tokens.get(at - 1).is("sore");
    }

    private static boolean workFollows(List<Token> tokens, int next) {
        return IntStream.range(next, Math.min(tokens.size(), next + 2)).anyMatch(at -> roundAt(tokens, at));
    }
}
