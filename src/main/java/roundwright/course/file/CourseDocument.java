package roundwright.course.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import roundwright.course.file.Section.Kind;
import roundwright.notation.Span;

/**
 * The text of a course file with the place of everything in it. Writing it is giving back {@link #text()}.
 *
 * @param text the file as it was read, with its byte order mark and line ends
 * @param sections the stretches from heading to heading, in order; together they are the whole text
 */
public record CourseDocument(String text, List<Section> sections) {
    /** Some editors write this before the first character of a file. */
    static final String BYTE_ORDER_MARK = "\uFEFF";

    /** Inline marks are left unread: what a line says is read by the reader of patterns. */
    private static final Parser PARSER = Parser.builder()
            .includeSourceSpans(IncludeSourceSpans.BLOCKS)
            .inlineParserFactory(context -> (lines, node) -> {})
            .build();

    public CourseDocument {
        sections = List.copyOf(sections);
    }

    /** Any text is a document; what is wrong with it shows when the course is read out of it. */
    public static CourseDocument of(String text) {
        // a mark of equal length that CommonMark takes for white space keeps every offset
        String readable = text.startsWith(BYTE_ORDER_MARK) ? " " + text.substring(1) : text;
        return new Sections(text, PARSER.parse(readable)).read();
    }

    public List<Section> of(Kind kind) {
        return sections.stream().filter(section -> section.kind() == kind).toList();
    }

    /** The section with the course's name and settings; empty where the file has no name. */
    public Optional<Section> course() {
        return of(Kind.COURSE).stream().findFirst();
    }

    public Optional<Section> part(String name) {
        return of(Kind.PART).stream()
                .filter(section -> section.title().text().equals(name))
                .findFirst();
    }

    /** Cuts the blocks of a file into sections. */
    private static final class Sections {
        private static final Pattern MARKS = Pattern.compile("\\s*\uFEFF?\\s*#{1,6}");
        private static final Pattern CLOSING_MARKS = Pattern.compile("(?:^|\\s)\\s*#+\\s*$");

        private final String text;
        private final Node document;
        private final List<Section> sections = new ArrayList<>();
        private boolean named;

        Sections(String text, Node document) {
            this.text = text;
            this.document = document;
        }

        CourseDocument read() {
            List<Node> blocks = new ArrayList<>();
            for (Node node = document.getFirstChild(); node != null; node = node.getNext()) {
                blocks.add(node);
            }
            if (blocks.isEmpty()) {
                section(blocks, text.length());
            }
            int from = 0;
            for (int to = 1; to <= blocks.size(); to++) {
                if (to == blocks.size() || begins(blocks.get(to))) {
                    section(blocks.subList(from, to), to == blocks.size() ? text.length() : start(blocks.get(to)));
                    from = to;
                }
            }
            return new CourseDocument(text, sections);
        }

        /** Headings below the second level belong to the section they stand in, unless they say they are a part or lesson. */
        private boolean begins(Node block) {
            return block instanceof Heading heading
                    && (heading.getLevel() <= 2 || form(heading).kind() != Kind.OTHER);
        }

        private void section(List<Node> blocks, int end) {
            boolean headed = !blocks.isEmpty() && begins(blocks.get(0));
            int start = sections.isEmpty() ? 0 : start(blocks.get(0));
            Span heading = headed ? span(blocks.get(0)) : new Span(start, start);
            HeadingForm form = headed ? form((Heading) blocks.get(0)) : HeadingForm.none(start);
            named |= form.kind() == Kind.COURSE;
            EntryReader reader = new EntryReader(text);
            blocks.subList(headed ? 1 : 0, blocks.size()).forEach(reader::read);
            sections.add(new Section(
                    form.kind(),
                    form.title(),
                    form.number(),
                    form.form(),
                    heading,
                    new Span(start, end),
                    reader.entries(),
                    reader.passedOver()));
        }

        private HeadingForm form(Heading heading) {
            return HeadingForm.of(title(heading), heading.getLevel(), named);
        }

        /** The heading's words without its marks; of an underlined heading, the lines above the underline. */
        private Written title(Heading heading) {
            List<Span> lines = EntryReader.spans(heading);
            if (lines.size() > 1) {
                return Written.of(text, lines.subList(0, lines.size() - 1));
            }
            Matcher marks = MARKS.matcher(text);
            marks.region(lines.get(0).start(), lines.get(0).end());
            int from = marks.lookingAt() ? marks.end() : lines.get(0).start();
            String rest = text.substring(from, lines.get(0).end());
            Matcher closing = CLOSING_MARKS.matcher(rest);
            int to = closing.find() ? from + closing.start() : lines.get(0).end();
            return Written.of(text, List.of(new Span(from, to)));
        }

        private static Span span(Node block) {
            List<Span> lines = EntryReader.spans(block);
            return lines.get(0).to(lines.get(lines.size() - 1));
        }

        private static int start(Node block) {
            return EntryReader.spans(block).get(0).start();
        }
    }
}
