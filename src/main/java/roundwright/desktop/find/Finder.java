package roundwright.desktop.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import roundwright.course.Lesson;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Names;
import roundwright.desktop.desk.OpenCourse;
import roundwright.desktop.desk.Page;
import roundwright.desktop.look.Glyph;
import roundwright.group.RoundPlace;
import roundwright.group.Student;
import roundwright.technique.FirstUses;
import roundwright.wording.Wording;

/** Finds what a few typed letters may mean: "13", "tower 13", "ann", "back loop", "dec". */
public final class Finder {
    private static final Wording WORDS = Wording.of("desktop");
    private static final int MOST = 8;

    private final Desk desk;

    public Finder(Desk desk) {
        this.desk = desk;
    }

    /** The likeliest first; nothing for nothing. */
    public List<Found> find(String typed) {
        String wanted = plain(typed);
        if (wanted.isEmpty() || desk.course().isEmpty()) {
            return List.of();
        }
        Ranked ranked = new Ranked(wanted);
        OpenCourse course = desk.course().get();
        students(ranked::add);
        lessons(course, ranked::add);
        techniques(course, ranked::add);
        rounds(course, ranked::add);
        return ranked.best();
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).strip().replaceAll("\\s+", " ");
    }

    /** Found things with how well they fit: 0 as written, 1 begins so, 2 a word begins so, 3 somewhere in it. */
    private static final class Ranked {
        private record Fit(int fit, Found found) {}

        private final String wanted;
        private final List<Fit> fits = new ArrayList<>();

        Ranked(String wanted) {
            this.wanted = wanted;
        }

        void add(Found found, String searched) {
            String text = plain(searched);
            int at = text.indexOf(wanted);
            if (at < 0) {
                return;
            }
            boolean word = at > 0 && !Character.isLetterOrDigit(text.charAt(at - 1));
            fits.add(new Fit(text.equals(wanted) ? 0 : at == 0 ? 1 : word ? 2 : 3, found));
        }

        List<Found> best() {
            return fits.stream()
                    .sorted(Comparator.comparingInt(Fit::fit))
                    .map(Fit::found)
                    .distinct()
                    .limit(MOST)
                    .toList();
        }
    }

    private void students(BiConsumer<Found, String> add) {
        for (Student student : desk.students()) {
            String name = Names.of(student, desk);
            add.accept(new Found(Glyph.STUDENT, name, "", () -> desk.chooseStudent(student.id())), name);
        }
    }

    private void lessons(OpenCourse course, BiConsumer<Found, String> add) {
        for (Lesson lesson : course.course().lessons()) {
            String words = WORDS.say("lesson-named", lesson.number(), lesson.name());
            course.places(lesson).stream().findFirst().ifPresent(place -> {
                Found found = new Found(Glyph.PLAN, words, "", () -> desk.choosePlace(place));
                add.accept(found, words);
                add.accept(found, lesson.name());
            });
        }
    }

    private void techniques(OpenCourse course, BiConsumer<Found, String> add) {
        for (FirstUses.Use use : course.uses().all()) {
            String name = use.technique().name(course.terms());
            use.place()
                    .round()
                    .map(number -> new RoundPlace(use.place().part(), number))
                    .ifPresent(place -> {
                        String more = WORDS.say("found-first", place.part(), place.round());
                        Found found = new Found(Glyph.COURSE, name, more, () -> desk.choosePlace(place));
                        add.accept(found, name);
                        use.technique().names(course.terms()).written().forEach(written -> add.accept(found, written));
                    });
        }
    }

    private void rounds(OpenCourse course, BiConsumer<Found, String> add) {
        for (RoundPlace place : course.places()) {
            String words = WORDS.say("part-round", place.part(), place.round());
            String line = course.round(place).map(round -> round.line().text()).orElse("");
            Found found = new Found(Glyph.FIND, words, line, () -> desk.choosePlace(place));
            add.accept(found, String.valueOf(place.round()));
            add.accept(found, place.part() + " " + place.round());
            add.accept(found, words);
            add.accept(found, WORDS.say("round", place.round()));
            add.accept(found, line);
        }
    }

    /** Where what was found can be seen: a student among the counts, all else on the page that is shown. */
    static void showPage(Desk desk, Found found) {
        boolean student = found.glyph() == Glyph.STUDENT;
        if (student && desk.choice().page() == Page.PLAN) {
            desk.choosePage(Page.COUNTS);
        }
    }
}
