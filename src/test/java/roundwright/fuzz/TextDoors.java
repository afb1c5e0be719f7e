package roundwright.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import roundwright.command.CommandRun;
import roundwright.notation.LineMaker;

/** The doors through which text comes: lines of patterns, course files, messages, tables of counts. */
final class TextDoors {
    private static final List<String> COURSES = read(Path.of("lessons"), ".md");
    private static final List<String> BAD_COURSES = read(Path.of("src/test/resources/roundwright/course"), ".md");
    private static final List<String> MESSAGES = read(Path.of("src/test/resources/roundwright/messages"), ".txt");

    private TextDoors() {}

    static List<Door> all() {
        return List.of(
                door("lines", TextDoors::lines),
                door("courses", TextDoors::course),
                door("messages", TextDoors::messages),
                door("counts", TextDoors::counts));
    }

    private interface Once {
        void put(Random chance, Path folder) throws Exception;
    }

    private static Door door(String name, Once once) {
        return new Door() {
            @Override
            public String name() {
                return name;
            }

            @Override
            public void once(Random chance, Path folder) throws Exception {
                once.put(chance, folder);
            }
        };
    }

    private static List<String> read(Path folder, String ending) {
        try (Stream<Path> paths = Files.walk(folder)) {
            List<String> texts = new ArrayList<>();
            for (Path path : paths.filter(each -> each.toString().endsWith(ending))
                    .sorted()
                    .toList()) {
                texts.add(new String(Files.readAllBytes(path), UTF_8));
            }
            return texts;
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }

    private static <V> V any(List<V> values, Random chance) {
        return values.get(chance.nextInt(values.size()));
    }

    private static String write(Path folder, String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes).toString();
    }

    private static void lines(Random chance, Path folder) throws IOException {
        LineMaker maker = new LineMaker(chance.nextLong());
        StringBuilder text = new StringBuilder();
        for (int line = chance.nextInt(20); line >= 0; line--) {
            text.append(chance.nextInt(3) == 0 ? maker.sensible() : maker.line(24))
                    .append('\n');
        }
        Spoiler spoiler = new Spoiler(chance);
        String file = write(folder, "lines.txt", spoiler.encoded(spoiler.text(text.toString())));
        if (chance.nextInt(4) == 0) {
            Saying.command("turn", "--to", chance.nextBoolean() ? "UK" : "US", file);
        } else {
            Saying.command("rounds", "--json", file);
        }
    }

    private static void course(Random chance, Path folder) throws IOException {
        Spoiler spoiler = new Spoiler(chance);
        String good = any(chance.nextInt(4) == 0 ? BAD_COURSES : COURSES, chance);
        String file = write(folder, "course.md", spoiler.encoded(spoiler.text(good)));
        switch (chance.nextInt(4)) {
            case 0 -> Saying.command("explain", file);
            case 1 -> Saying.command("plan", "--json", file);
            case 2 -> {
                Files.createDirectories(folder.resolve("inside"));
                String dates = folder.resolve("inside/dates.ics").toString();
                CommandRun run = Saying.command("dates", file, "--from", "2026-02-03", "--on", "Tue", "--ics", dates);
                Saying.sentence(run.out());
            }
            default -> Saying.command("check", "--json", file);
        }
    }

    private static void messages(Random chance, Path folder) throws IOException {
        Spoiler spoiler = new Spoiler(chance);
        String course = write(folder, "course.md", any(COURSES, chance).getBytes(UTF_8));
        String file = write(folder, "chat.txt", spoiler.encoded(spoiler.text(any(MESSAGES, chance))));
        if (chance.nextBoolean()) {
            String names = IntStream.range(0, 12).mapToObj(n -> spoiler.name()).reduce("Ines", (a, b) -> a + "\n" + b);
            String students = write(folder, "names.txt", spoiler.encoded(names));
            Saying.command("messages", "--json", course, file, "--students", students);
        } else {
            Saying.command("messages", "--json", course, file);
        }
    }

    private static void counts(Random chance, Path folder) throws IOException {
        Spoiler spoiler = new Spoiler(chance);
        StringBuilder table = new StringBuilder("student,part,round,count,date,note,pulled_back,checks\n");
        for (int student = chance.nextInt(3); student >= 0; student--) {
            String name = spoiler.name().replaceAll("[\\r\\n,\"]", " ");
            for (int round = 1; round <= 1 + chance.nextInt(12); round++) {
                table.append(name).append(",Tower,").append(round).append(',');
                table.append(chance.nextInt(10) == 0 ? "" : 4 + 4 * round + chance.nextInt(3));
                table.append(",2026-02-0").append(1 + chance.nextInt(9)).append(",,,");
                table.append(chance.nextInt(8) == 0 ? "look-for-a-gap=yes;recount=same\n" : "\n");
            }
        }
        String course = write(folder, "course.md", COURSES.get(0).getBytes(UTF_8));
        String file = write(folder, "counts.csv", spoiler.encoded(spoiler.text(table.toString())));
        Saying.command("mistakes", "--json", course, file);
    }
}
