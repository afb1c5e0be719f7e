package roundwright.group.messages;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * Matches words against the few expressions that the reader is written with, each made ready once: one of nothing but words is a set to
 * look them up in.
 */
final class Shape {
    private static final Map<String, Predicate<String>> READY = new ConcurrentHashMap<>();
    private static final Pattern WORDS_ALONE = Pattern.compile("[\\p{L}\\d ,:=<>&→–—|-]*");

    private Shape() {}

    /** @param expression one that stands in the program, never one that was typed or pasted */
    static boolean matches(String text, String expression) {
        return READY.computeIfAbsent(expression, Shape::ready).test(text);
    }

    private static Predicate<String> ready(String expression) {
        return WORDS_ALONE.matcher(expression).matches()
                ? new HashSet<>(Arrays.asList(expression.split("\\|", -1)))::contains
                : Pattern.compile(expression).asMatchPredicate();
    }
}
