package roundwright.group.counts;

import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import roundwright.group.CountReport;
import roundwright.group.RoundPlace;
import roundwright.group.counts.Column.Kind;
import roundwright.group.messages.Folding;
import roundwright.wording.Beginning;
import roundwright.wording.Wording;

/** One row of a table on its way to reports: whose it is, then each count in it. */
final class RowReading {
    private static final Wording WORDS = Wording.of("group");
    private static final Set<String> NO = Set.of("", "no", "n", "false", "0", "-", "nein", "non", "nee");
    private static final int LONGEST_SHOWN = 60;

    private final CountsReader reader;
    private final Table.Row row;
    private final boolean pulledBack;
    private Optional<LocalDateTime> said = Optional.empty();
    private Map<String, String> checks = Map.of();

    RowReading(CountsReader reader, Table.Row row) {
        this.reader = reader;
        this.row = row;
        this.pulledBack = !NO.contains(Folding.fold(at(Kind.PULLED_BACK)));
    }

    void read() {
        String course = at(Kind.COURSE);
        if (!reader.roll().ofCourse(course)) {
            reader.unknowns().course(course);
            trouble(Kind.COURSE, WORDS.say("table.other-course", shown(course)), true);
            return;
        }
        boolean ofStudents = reader.column(Kind.STUDENT).isPresent();
        Optional<String> student = ofStudents && says() ? student() : Optional.empty();
        if (student.isEmpty() && ofStudents) {
            return;
        }
        said = said();
        checks = checks();
        for (int column : reader.countColumns()) {
            Column meaning = reader.meaning(column);
            meaning.student().or(() -> student).ifPresent(name -> count(column, meaning, name));
        }
    }

    /** A row of a person who counted nothing yet is no trouble, whoever they are. */
    private boolean says() {
        boolean rows = reader.column(Kind.COUNT).isPresent();
        return rows || pulledBack || counts() > 0;
    }

    private int counts() {
        return (int) reader.countColumns().stream()
                .filter(column -> cell(column).kind() != CountCell.Kind.NOTHING)
                .count();
    }

    private Optional<String> student() {
        String written = Harmless.undone(at(Kind.STUDENT));
        Optional<String> found = reader.roll().student(written);
        if (found.isEmpty()) {
            if (!written.isEmpty()) {
                reader.unknowns().student(written, counts());
            }
            String key = written.isEmpty() ? "table.nobody" : "table.unknown-student";
            trouble(Kind.STUDENT, WORDS.say(key, shown(written)), true);
        }
        found.ifPresent(name -> reader.unknowns().taken(written, name));
        return found;
    }

    private CountCell cell(int column) {
        return CountCell.of(Harmless.undone(row.cell(column)));
    }

    private void count(int column, Column meaning, String student) {
        CountCell cell = cell(column);
        boolean back = pulledBack || cell.kind() == CountCell.Kind.PULLED_BACK;
        boolean empty = cell.kind() == CountCell.Kind.NOTHING && !back;
        if (empty && !meaning.is(Kind.COUNT)) {
            return;
        }
        Optional<RoundLabel> label = label(meaning);
        Optional<String> part = label.isPresent() ? part(column, meaning, label.get()) : Optional.empty();
        for (int round = part.isPresent() ? label.get().from() : 1;
                part.isPresent() && round <= label.get().to();
                round++) {
            Optional<RoundPlace> place = place(column, part.get(), round, back);
            if (place.isPresent() && !empty) {
                report(column, student, place.get(), back, cell);
            }
        }
    }

    private Optional<RoundLabel> label(Column meaning) {
        if (meaning.is(Kind.COUNTS_OF_ROUND)) {
            return Optional.of(new RoundLabel(meaning.part(), meaning.round(), meaning.round()));
        }
        String written = Harmless.undone(at(Kind.ROUND));
        Optional<RoundLabel> label = RoundLabel.read(written, reader.roll());
        if (label.isEmpty()) {
            trouble(Kind.ROUND, WORDS.say("table.not-a-number", WORDS.say("table.round"), shown(written)), true);
        }
        return label;
    }

    private Optional<String> part(int column, Column meaning, RoundLabel label) {
        String written = Harmless.undone(at(Kind.PART));
        Optional<String> part = meaning.part()
                .or(label::part)
                .or(() -> written.isEmpty()
                        ? reader.roll().usualPart()
                        : reader.roll().part(written));
        if (part.isEmpty()) {
            reader.unknowns().part(written);
            String parts = Wording.list(reader.roll().parts());
            trouble(
                    reader.column(Kind.PART).orElse(column),
                    written.isEmpty()
                            ? WORDS.say("table.which-part", parts)
                            : WORDS.say("table.unknown-part", shown(written), parts),
                    true);
        }
        return part;
    }

    private Optional<RoundPlace> place(int column, String part, int round, boolean back) {
        if (back && round == 0) {
            return Optional.of(new RoundPlace(part, 0));
        }
        Optional<RoundPlace> place = reader.roll().place(part, round);
        if (place.isEmpty()) {
            reader.unknowns().place(new RoundPlace(part, round));
            int[] rounds = reader.roll().rounds(part);
            trouble(
                    reader.column(Kind.ROUND).orElse(column),
                    WORDS.say("table.no-round", part, round, rounds[0], rounds[rounds.length - 1]),
                    true);
        }
        return place;
    }

    private void report(int column, String student, RoundPlace place, boolean back, CountCell cell) {
        OptionalInt count =
                cell.kind() == CountCell.Kind.AS_PATTERN ? reader.roll().count(place) : cell.count();
        boolean unreadable =
                cell.kind() == CountCell.Kind.UNREADABLE || cell.kind() == CountCell.Kind.AS_PATTERN && count.isEmpty();
        String written = row.cell(column);
        if (unreadable) {
            trouble(column, WORDS.say("table.not-a-number", WORDS.say("table.count"), shown(written)), true);
        } else if (count.isPresent() && count.getAsInt() < 0) {
            trouble(column, WORDS.say("table.negative", count.getAsInt()), true);
        } else if (count.isPresent() && reader.roll().absurd(count.getAsInt())) {
            OptionalInt due = reader.roll().count(place);
            String key = due.isPresent() ? "table.absurd" : "table.absurd-at-all";
            trouble(column, WORDS.say(key, count.getAsInt(), due.orElse(0)), true);
        } else {
            reader.found(new CountRow(
                    row.line(),
                    reader.column(Kind.ROUND).orElse(column) + 1,
                    student,
                    place,
                    kind(back, cell),
                    count,
                    said,
                    Harmless.undone(at(Kind.NOTE)),
                    checks));
        }
    }

    private static CountReport.Kind kind(boolean back, CountCell cell) {
        if (back) {
            return CountReport.Kind.PULLED_BACK;
        }
        boolean open = cell.kind() == CountCell.Kind.UNFINISHED;
        return open ? CountReport.Kind.UNFINISHED : CountReport.Kind.COUNTED;
    }

    private Optional<LocalDateTime> said() {
        String written = Harmless.undone(at(Kind.DATE));
        Optional<LocalDateTime> day = DayCell.read(written, reader.monthFirst());
        if (day.isEmpty() && !written.isEmpty()) {
            trouble(Kind.DATE, WORDS.say("table.no-day", shown(written)), false);
        }
        return day;
    }

    /** Answers such as {@code look-for-a-gap=yes;recount=same}; one that is no answer is a trouble, the row is used. */
    private Map<String, String> checks() {
        String written = Harmless.undone(at(Kind.CHECKS));
        if (written.isEmpty()) {
            return Map.of();
        }
        Map<String, String> answers = new LinkedHashMap<>();
        for (String answer : written.split("[;|]")) {
            String[] pair = answer.strip().split("\\s*=\\s*", 2);
            if (pair.length == 2 && reader.roll().answers(pair[0], pair[1])) {
                answers.put(pair[0], pair[1]);
            } else if (!answer.isBlank()) {
                trouble(Kind.CHECKS, WORDS.say("table.no-check", shown(answer.strip())), false);
            }
        }
        return answers;
    }

    private String at(Kind kind) {
        return reader.column(kind).map(row::cell).orElse("");
    }

    private static String shown(String cell) {
        return Beginning.shown(cell.replaceAll("\\s+", " "), LONGEST_SHOWN);
    }

    private void trouble(Kind kind, String message, boolean leftOut) {
        trouble(reader.column(kind).orElse(0), message, leftOut);
    }

    private void trouble(int column, String message, boolean leftOut) {
        reader.trouble(new CellTrouble(row.line(), column + 1, shown(row.cell(column)), message, leftOut));
    }
}
