package roundwright.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Sheets whose course, parts, lessons and students have names that would like to be paths, markup or scripts. */
final class SheetsDoor implements Door {
    private static final Pattern TAG = Pattern.compile("<(script|iframe|img|object|embed|link|meta|base|form)\\b");

    @Override
    public String name() {
        return "sheets";
    }

    /** Each makes some twenty PDF files. */
    @Override
    public int seconds() {
        return 60;
    }

    @Override
    public void once(Random chance, Path folder) throws IOException {
        Spoiler spoiler = new Spoiler(chance);
        StringBuilder course = new StringBuilder("# " + line(spoiler) + "\n\n" + line(spoiler) + "\n\n- terms: UK\n\n");
        course.append("## Part: ").append(line(spoiler)).append("\n\n- Rnd 1: 6 dc in magic ring (6)\n");
        course.append("- Rnd 2: inc x 6 (12)\n- ").append(line(spoiler)).append("\n\n");
        course.append("## Lesson 1: ")
                .append(line(spoiler))
                .append("\n\n- caution: ")
                .append(line(spoiler))
                .append('\n');
        Path file = Files.write(folder.resolve("course.md"), course.toString().getBytes(UTF_8));
        Path names = Files.write(
                folder.resolve("names.txt"), (line(spoiler) + "\n" + line(spoiler) + "\nInes\n").getBytes(UTF_8));
        Path inside = folder.resolve("inside");
        Saying.command("sheets", file.toString(), "--out", inside.toString(), "--students", names.toString());
        Saying.onlyInside(folder, Set.of(file, names));
        look(inside);
    }

    private static String line(Spoiler spoiler) {
        return spoiler.name().replaceAll("[\\r\\n]", " ");
    }

    private static void look(Path inside) throws IOException {
        if (Files.notExists(inside)) {
            return;
        }
        try (Stream<Path> paths = Files.walk(inside)) {
            List<Path> files = paths.filter(Files::isRegularFile).toList();
            for (Path file : files) {
                if (!file.getParent().equals(inside) || Files.isSymbolicLink(file)) {
                    throw new AssertionError("a sheet in another folder: " + file);
                }
                if (file.toString().endsWith(".html")) {
                    markup(file);
                }
            }
        }
    }

    /** The page has one script, its own; whatever people wrote has become text. */
    private static void markup(Path file) throws IOException {
        String html = Files.readString(file);
        Matcher tags = TAG.matcher(html);
        int scripts = 0;
        while (tags.find()) {
            scripts += tags.group(1).equals("script") ? 1 : 0;
            if (!Set.of("script", "meta").contains(tags.group(1))) {
                throw new AssertionError("markup in " + file + ": " + tags.group());
            }
        }
        if (scripts > 1 || html.contains("alert(1)</script>")) {
            throw new AssertionError("a script came into " + file);
        }
    }
}
