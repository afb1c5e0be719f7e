package roundwright.group.messages;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundwright.notation.Span;

/**
 * Splits a pasted text into messages: a chat export with stamps and names, an e-mail with its headers, a list with a name before each
 * line, or one message alone. A line without a sender goes on with the message above it.
 */
final class ChatReader {
    /** Characters of a message that are read together. */
    private static final int LONGEST = 3_000;

    private static final String NAME = "[\\p{L}\\p{M}][\\p{L}\\p{M}'’.&/,+ -]{0,48}?(?:\\s?\\(\\p{L}{1,20}\\))?";
    private static final String INVISIBLE = "[\\u200e\\u200f\\u202a-\\u202e\\u2066-\\u2069\\ufeff\\s]*";
    private static final String STAMP = "(?<stamp>" + Stamp.ANY + ")";

    /** A sender line: its stamp and name where it has them, and where the words begin. */
    private static final List<Pattern> SENDERS = List.of(
            line("\\[" + STAMP + "\\]\\s*(?:[-–—]\\s*)?[~]?\\s*(?<name>" + NAME + ")\\s*:\\s?"),
            line(STAMP + "\\s*(?:[-–—|,:]\\s*)?[~]?\\s*(?<name>" + NAME + ")\\s*:\\s?"),
            line("(?<name>" + NAME + ")\\s*[\\[(,]\\s*" + STAMP + "\\s*[\\])]?\\s*(?::\\s?|$)"),
            line("(?<name>" + NAME + ")\\s+[-–—]?\\s*" + STAMP + "\\s*(?::\\s|$)"),
            line("<\\s*(?<name>" + NAME + ")\\s*>\\s?"));

    /** A line of the chat program itself: a stamp and words without a name. */
    private static final List<Pattern> SYSTEM =
            List.of(line("\\[" + STAMP + "\\]\\s*"), line(STAMP + "\\s*[-–—|]\\s+"));

    private static final Pattern NAME_ALONE =
            line("(?:[-*•]\\s*|\\d{1,2}[.)]\\s+)?(?<name>" + NAME + ")\\s*(?::|\\s[-–—]|\\s[=]>?)\\s*");
    private static final Pattern DAY_WORD =
            Pattern.compile("(?i)^(today|yesterday|at|(mon|tues|wednes|thurs|fri|satur|sun)day)\\b");
    private static final Pattern STAMP_LINE = line("(?:[\\[(]\\s*)?" + STAMP + "\\s*[\\])]?\\s*$");
    private static final Pattern NAME_LINE = Pattern.compile(
            "^" + INVISIBLE + "\\p{Lu}[\\p{L}\\p{M}'’.-]*(?:[ &]{1,3}(?:and )?\\p{Lu}[\\p{L}\\p{M}'’.-]*){0,3}\\s*$");
    private static final int LONGEST_HEAD = 60;
    private static final int LONGEST_LINE = 200;
    private static final int FIRST_LINES = 2_000;
    private static final Pattern HEADER = line("(?<key>from|sent|date|to|cc|subject|re|von|an)\\s*:\\s*(?<value>.*)$");
    private static final Pattern QUOTE_BEGINS =
            Pattern.compile("(?i)^\\s*on\\b.*\\bwrote:\\s*$|^\\s*-{2,}\\s*(original|forwarded).*");

    private final String text;
    private final Predicate<String> person;
    private final List<Message> messages = new ArrayList<>();
    private final List<Span> quoted = new ArrayList<>();
    private final boolean monthFirst;
    private Optional<String> sender = Optional.empty();
    private Optional<String> stamp = Optional.empty();
    private int begun;
    private int at;
    private boolean quoting;

    private ChatReader(String text, Predicate<String> person) {
        this.text = text;
        this.person = person;
        this.monthFirst = Stamp.monthFirst(stamps());
    }

    private static Pattern line(String expression) {
        return Pattern.compile("^" + INVISIBLE + expression, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /**
     * @param person whether a name that stands alone before a colon, without a stamp, is a person's
     */
    static List<Message> read(String text, Predicate<String> person) {
        ChatReader reader = new ChatReader(text, person);
        while (reader.at < text.length()) {
            int from = reader.at;
            int end = text.indexOf('\n', from);
            reader.at = end < 0 ? text.length() : end + 1;
            reader.line(from, end < 0 ? text.length() : end);
        }
        reader.finish(text.length());
        return reader.messages;
    }

    private List<String> stamps() {
        return text.lines()
                .limit(FIRST_LINES)
                .filter(line -> Stamp.mayBeIn(line.substring(0, Math.min(LONGEST_LINE, line.length()))))
                .map(this::senderOf)
                .flatMap(Optional::stream)
                .map(matcher -> matcher.group("stamp"))
                .toList();
    }

    /** How many of the first lines have a name before them that is a known person's. */
    static int ledByNames(String text, Predicate<String> known) {
        return (int) text.lines()
                .limit(FIRST_LINES)
                .filter(line -> line.length() <= LONGEST_LINE)
                .map(NAME_ALONE::matcher)
                .filter(matcher -> matcher.lookingAt() && known.test(matcher.group("name")))
                .count();
    }

    private Optional<Matcher> senderOf(String line) {
        String start = line.length() > LONGEST_LINE ? line.substring(0, LONGEST_LINE) : line;
        return SENDERS.subList(0, 4).stream()
                .map(pattern -> pattern.matcher(start))
                .filter(Matcher::lookingAt)
                .filter(matcher -> !DAY_WORD.matcher(matcher.group("name")).lookingAt())
                .findFirst();
    }

    private void line(int from, int to) {
        String line = text.substring(from, Math.min(to, from + LONGEST_LINE));
        if (line.stripLeading().startsWith(">") || QUOTE_BEGINS.matcher(line).lookingAt()) {
            quoting |= !line.stripLeading().startsWith(">");
            quoted.add(new Span(from, to));
            return;
        }
        boolean stamps = Stamp.mayBeIn(line);
        if (headed(line, stamps, from, to)) {
            return;
        }
        Optional<Matcher> found = (stamps ? senderOf(line) : Optional.<Matcher>empty()).or(() -> bracketed(line));
        if (found.isPresent()) {
            boolean stamped = found.get().pattern() != SENDERS.get(4);
            begin(from, found.get(), stamped ? Optional.of(found.get().group("stamp")) : Optional.empty());
        } else if (stamps
                && SYSTEM.stream().anyMatch(pattern -> pattern.matcher(line).lookingAt())) {
            finish(from);
            begun = Math.min(to + 1, text.length());
        } else {
            unstamped(line, from, to);
        }
    }

    private Optional<Matcher> bracketed(String line) {
        return Optional.of(SENDERS.get(4).matcher(line)).filter(Matcher::lookingAt);
    }

    private void unstamped(String line, int from, int to) {
        Matcher header = HEADER.matcher(line);
        Matcher alone = NAME_ALONE.matcher(line);
        if (header.lookingAt()) {
            header(header, from, to);
        } else if (alone.lookingAt() && person.test(alone.group("name"))) {
            begin(from, alone, Optional.empty());
        } else if (quoting) {
            quoted.add(new Span(from, to));
        }
    }

    /**
     * A stamp on a line of its own, with the name on the line before or after it.
     *
     * @param stamps whether there may be a stamp in the line
     */
    private boolean headed(String line, boolean stamps, int from, int to) {
        String next = lineAt(to + 1);
        Matcher here = STAMP_LINE.matcher(line);
        if (stamps && here.lookingAt() && NAME_LINE.matcher(next).lookingAt()) {
            begin(from, next, here.group("stamp"), to + 1 + next.length());
            return true;
        }
        Matcher below = STAMP_LINE.matcher(next);
        if (NAME_LINE.matcher(line).lookingAt() && below.lookingAt()) {
            begin(from, line, below.group("stamp"), to + 1 + next.length());
            return true;
        }
        return false;
    }

    private void begin(int from, String name, String newStamp, int end) {
        finish(from);
        sender = Optional.of(name.strip());
        stamp = Optional.of(newStamp);
        begun = Math.min(end, text.length());
        at = Math.min(end + 1, text.length());
    }

    private String lineAt(int from) {
        if (from >= text.length()) {
            return "";
        }
        int end = text.indexOf('\n', from);
        int to = end < 0 ? text.length() : end;
        return to - from > LONGEST_HEAD ? "" : text.substring(from, to);
    }

    private void header(Matcher header, int from, int to) {
        String value = header.group("value").replaceAll("<[^>]*>|\"", "").strip();
        if (header.group("key").equalsIgnoreCase("from") && !value.isEmpty()) {
            finish(from);
            sender = Optional.of(value);
        } else if (header.group("key").matches("(?i)sent|date")) {
            stamp = Optional.of(value);
        }
        if (!header.group("key").equalsIgnoreCase("subject")) {
            quoted.add(new Span(from, to));
        }
    }

    private void begin(int from, Matcher found, Optional<String> newStamp) {
        finish(from);
        sender = Optional.of(found.group("name").strip());
        stamp = newStamp;
        begun = from + found.end();
    }

    private void finish(int end) {
        if (begun < end && (sender.isPresent() || !text.substring(begun, end).isBlank())) {
            Optional<LocalDateTime> at = stamp.flatMap(written -> Stamp.read(written, monthFirst));
            for (Span piece : pieces(begun, end)) {
                List<Span> inside = quoted.stream()
                        .filter(span -> span.start() < piece.end() && piece.start() < span.end())
                        .toList();
                messages.add(new Message(sender, at, piece, inside));
            }
        }
        quoted.clear();
        quoting = false;
        sender = Optional.empty();
        stamp = Optional.empty();
        begun = end;
    }

    /** What nobody would type in one go is read in pieces, so that reading it takes no longer than its length allows. */
    private List<Span> pieces(int from, int to) {
        List<Span> pieces = new ArrayList<>();
        int at = from;
        while (to - at > LONGEST) {
            int line = text.lastIndexOf('\n', at + LONGEST);
            int end = line > at ? line + 1 : at + LONGEST;
            pieces.add(new Span(at, end));
            at = end;
        }
        pieces.add(new Span(at, to));
        return pieces;
    }
}
