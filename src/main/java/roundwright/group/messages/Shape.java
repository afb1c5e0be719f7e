package roundwright.group.messages;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/** Matches words against the few expressions that the reader is written with, each made ready once. */
final class Shape {
    private static final Map<String, Pattern> PATTERNS = new ConcurrentHashMap<>();

    private Shape() {}

    /** @param expression one that stands in the program, never one that was typed or pasted */
    static boolean matches(String text, String expression) {
        return PATTERNS.computeIfAbsent(expression, Pattern::compile)
                .matcher(text)
                .matches();
    }
}
