package roundwright.sheet.phone;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import roundwright.course.Lesson;
import roundwright.group.Student;
import roundwright.sheet.content.CourseWork;
import roundwright.sheet.markup.Element;
import roundwright.sheet.markup.HtmlText;
import roundwright.sheet.style.SheetStyle;
import roundwright.wording.Wording;

/** Puts the page together. */
public final class PhonePage {
    private static final Wording WORDS = Wording.of("sheet");

    private PhonePage() {}

    /**
     * The page in UTF-8.
     *
     * @param lesson the one lesson that is on it; empty for all
     * @param student whose page it is; empty for a page on which anybody can put their name
     */
    public static byte[] bytes(CourseWork work, OptionalInt lesson, Optional<Student> student) {
        return HtmlText.document(html(work, lesson, student)).getBytes(StandardCharsets.UTF_8);
    }

    private static Element html(CourseWork work, OptionalInt lesson, Optional<Student> student) {
        String style = SheetStyle.read("phone");
        String script = script();
        Element head = Element.of(
                "head",
                Element.of("meta").with("charset", "utf-8"),
                Element.of("meta").with("http-equiv", "Content-Security-Policy").with("content", policy(style, script)),
                Element.of("meta").with("name", "viewport").with("content", "width=device-width, initial-scale=1"),
                Element.of("meta").with("name", "referrer").with("content", "no-referrer"),
                Element.of("title", work.course().name()),
                Element.of("style", style));
        Element body = Element.of("body", header(work, student), main(work, lesson, student), send(student));
        body.add(Element.of("script", script));
        return Element.of("html", head, body)
                .with("lang", WORDS.say("language"))
                .with("data-course", work.course().name())
                .with("data-name", student.map(Student::name).orElse(""));
    }

    /** Nothing may be fetched and nothing may be sent; only the page's own style and script may run. */
    private static String policy(String style, String script) {
        return "default-src 'none'; style-src '" + hash(style) + "'; script-src '" + hash(script)
                + "'; base-uri 'none'; form-action 'none'";
    }

    private static String hash(String code) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(code.getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(sum);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("no SHA-256", impossible);
        }
    }

    private static Element header(CourseWork work, Optional<Student> student) {
        Element header = Element.of("header");
        student.ifPresent(one -> header.add(Element.of("p", work.course().name())));
        header.add(Element.of(
                "h1",
                student.map(one -> WORDS.say("phone-hello", one.name()))
                        .orElse(work.course().name())));
        return header.add(Element.of("p", WORDS.say("phone-how")));
    }

    private static Element main(CourseWork work, OptionalInt lesson, Optional<Student> student) {
        List<Lesson> lessons = work.lessons().stream()
                .filter(one -> lesson.isEmpty() || lesson.getAsInt() == one.number())
                .toList();
        PhoneLesson page =
                new PhoneLesson(work, student.map(Student::leftHanded).orElse(false));
        Element main = Element.of("main");
        lessons.forEach(one -> main.add(page.of(one, lessons.size() == 1)));
        return main;
    }

    private static Element send(Optional<Student> student) {
        Element send = Element.of(
                        "section", Element.of("h2", WORDS.say("phone-send")).with("id", "send-head"))
                .with("class", "send")
                .with("aria-labelledby", "send-head");
        if (student.isEmpty()) {
            send.add(Element.of(
                    "label",
                    WORDS.say("phone-name") + " ",
                    Element.of("input")
                            .with("id", "name")
                            .with("autocomplete", "off")
                            .with("maxlength", "60")));
        }
        send.add(
                Element.of("p", WORDS.say("phone-line")).with("id", "line-label"),
                Element.of("textarea")
                        .with("id", "line")
                        .with("readonly", "readonly")
                        .with("rows", "3")
                        .with("aria-labelledby", "line-label"),
                Element.of(
                        "p",
                        Element.of("button", WORDS.say("phone-copy"))
                                .with("id", "copy")
                                .with("type", "button"),
                        " ",
                        Element.of("button", WORDS.say("phone-forget"))
                                .with("id", "forget")
                                .with("type", "button")),
                Element.of("p").with("id", "said").with("role", "status"),
                Element.styled("p", "small", WORDS.say("phone-kept")));
        return Element.of("div", send, Element.of("noscript", Element.of("p", WORDS.say("phone-no-script"))));
    }

    /** The script with the sentences that it says put in as text that cannot end it. */
    private static String script() {
        String words = "{right:" + quoted(WORDS.say("phone-right")) + ",over:" + quoted(WORDS.say("phone-over"))
                + ",under:" + quoted(WORDS.say("phone-under")) + ",copied:" + quoted(WORDS.say("phone-copied"))
                + ",select:" + quoted(WORDS.say("phone-select")) + ",forgotten:" + quoted(WORDS.say("phone-forgotten"))
                + "}";
        return PhoneScript.read().replace("WORDS_OF_THE_PAGE", words);
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("<", "\\u003c") + "\"";
    }
}
