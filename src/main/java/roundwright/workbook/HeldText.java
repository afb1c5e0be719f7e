package roundwright.workbook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;
import roundwright.group.CountReport;
import roundwright.group.Note;
import roundwright.group.RegisterMark;
import roundwright.group.Student;
import roundwright.store.KeptCourse;
import roundwright.wording.Wording;

/** All that is held about one student, as a text that they can read. */
final class HeldText {
    private static final Wording WORDS = Wording.of("workbook");

    private final WorkbookView view;
    private final Student student;
    private final List<String> lines = new ArrayList<>();

    private HeldText(WorkbookView view, Student student) {
        this.view = view;
        this.student = student;
    }

    static String of(WorkbookView view, Student student, LocalDate today) {
        HeldText text = new HeldText(view, student);
        text.write(today);
        return String.join("\n", text.lines) + "\n";
    }

    private void write(LocalDate today) {
        line("head", student.name());
        line("made", today);
        lines.add("");
        line("name", student.name());
        line("left-handed", yes(student.leftHanded()));
        line("large-print", yes(student.largePrint()));
        ifAny("note", student.note());
        Held.about(view, student.id()).forEach(this::write);
        List<String> mentions = Mentions.of(view, student);
        if (!mentions.isEmpty()) {
            lines.add("");
            line("mentions");
            mentions.forEach(this::item);
        }
    }

    private void write(Held held) {
        lines.add("");
        String course =
                view.course(held.group().group().course()).map(KeptCourse::name).orElse("");
        line("group", held.group().group().name(), course);
        if (!held.marks().isEmpty()) {
            line("register");
            held.marks().forEach(mark -> item(mark(held, mark)));
        }
        if (!held.reports().isEmpty()) {
            line("reports");
            held.reports().forEach(report -> item(report(report)));
        }
        if (!held.notes().isEmpty()) {
            line("notes");
            held.notes().forEach(note -> item(note(note)));
        }
    }

    private static String mark(Held held, RegisterMark mark) {
        return Lookup.session(held.group(), mark.session()).date() + ": "
                + WORDS.say("attendance." + word(mark.attendance()));
    }

    private static String report(CountReport report) {
        StringJoiner said = new StringJoiner("; ");
        said.add(WORDS.say(
                "held-report." + word(report.kind()),
                report.at(),
                report.part(),
                report.round(),
                report.count().isPresent() ? report.count().getAsInt() : "–"));
        report.withdrawn().ifPresent(when -> said.add(WORDS.say("held.withdrawn", when)));
        for (Map.Entry<String, String> check : report.checks().entrySet()) {
            said.add(WORDS.say("held.check", check.getKey(), check.getValue()));
        }
        if (!report.note().isEmpty()) {
            said.add(report.note());
        }
        return said.toString();
    }

    private static String note(Note note) {
        return WORDS.say("held.round-note", note.part(), note.round(), note.text());
    }

    private static String yes(boolean so) {
        return WORDS.say(so ? "held.yes" : "held.no");
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void ifAny(String key, String text) {
        if (!text.isEmpty()) {
            line(key, text);
        }
    }

    private void line(String key, Object... arguments) {
        lines.add(WORDS.say("held." + key, arguments));
    }

    private void item(String text) {
        lines.add("  - " + text.replace("\n", "\n    "));
    }
}
