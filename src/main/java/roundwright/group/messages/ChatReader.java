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

    private static final String NAME = "[\\p{L}\\p{M}][\\p{L}\\p{M}'’.&/,+ -]{0,48}?";
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
        int at = 0;
        while (at < text.length()) {
            int end = text.indexOf('\n', at);
            int next = end < 0 ? text.length() : end + 1;
            reader.line(at, end < 0 ? text.length() : end);
            at = next;
        }
        reader.finish(text.length());
        return reader.messages;
    }

    private List<String> stamps() {
        return text.lines()
                .limit(2_000)
                .map(this::senderOf)
                .flatMap(Optional::stream)
                .map(matcher -> matcher.group("stamp"))
                .toList();
    }

    private Optional<Matcher> senderOf(String line) {
        String start = line.length() > 200 ? line.substring(0, 200) : line;
        return SENDERS.subList(0, 4).stream()
                .map(pattern -> pattern.matcher(start))
                .filter(Matcher::find)
                .findFirst();
    }

    private void line(int from, int to) {
        String line = text.substring(from, Math.min(to, from + 200));
        if (line.stripLeading().startsWith(">") || QUOTE_BEGINS.matcher(line).find()) {
            quoting |= !line.stripLeading().startsWith(">");
            quoted.add(new Span(from, to));
            return;
        }
        Optional<Matcher> found = senderOf(line).or(() -> bracketed(line));
        if (found.isPresent()) {
            boolean stamped = found.get().pattern() != SENDERS.get(4);
            begin(from, found.get(), stamped ? Optional.of(found.get().group("stamp")) : Optional.empty());
        } else if (SYSTEM.stream().anyMatch(pattern -> pattern.matcher(line).find())) {
            finish(from);
            begun = Math.min(to + 1, text.length());
        } else {
            unstamped(line, from, to);
        }
    }

    private Optional<Matcher> bracketed(String line) {
        return Optional.of(SENDERS.get(4).matcher(line)).filter(Matcher::find);
    }

    private void unstamped(String line, int from, int to) {
        Matcher header = HEADER.matcher(line);
        Matcher alone = NAME_ALONE.matcher(line);
        if (header.find()) {
            header(header, from, to);
        } else if (alone.find() && person.test(alone.group("name"))) {
            begin(from, alone, stamp.filter(same -> false));
        } else if (quoting) {
            quoted.add(new Span(from, to));
        }
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
