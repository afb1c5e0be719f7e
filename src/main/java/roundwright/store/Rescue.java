package roundwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import roundwright.store.pages.FoundRow;
import roundwright.store.pages.PageFile;

/**
 * Saves what can still be read of a damaged file into a new one. The old file is only read. Every page is looked at by itself, so that
 * a broken one takes only its own rows with it, whatever the pages above it say; what the lost rows were needed for gets a stand-in
 * where that makes sense.
 */
public final class Rescue {
    private static final long LARGEST = 1L << 30;
    private static final Map<String, List<String>> DATES = Map.of(
            "course_group", List.of("start"),
            "session", List.of("date"));
    private static final Map<String, List<String>> TIMES = Map.of("report", List.of("at", "withdrawn"));
    private static final Map<String, List<String>> WORDS = Map.of(
            "course_group", List.of("name"),
            "student", List.of("name"),
            "note", List.of("text"));

    private final Database database;
    private final PageFile file;
    private final List<TableForm> forms;
    private final Map<Integer, String> owners = new HashMap<>();
    private final Set<Integer> ofIndexes = new HashSet<>();
    private final Map<String, Integer> refused = new LinkedHashMap<>();
    private int doubtful;

    private Rescue(Database database, PageFile file) throws StoreException {
        this.database = database;
        this.file = file;
        this.forms = TableForm.of(database);
    }

    /** Saves what can be read of one file into another, which must not be there yet. */
    public static Rescued of(Path damaged, Path into) throws StoreException {
        byte[] bytes = bytes(damaged);
        PageFile pages = PageFile.read(bytes);
        Migrations then = Migrations.KNOWN.upTo(version(bytes));
        Map<String, Rescued> told = new HashMap<>();
        NewFile.make(into, passing -> {
            Opening.make(passing, then);
            try (Database database = Opening.connect(passing)) {
                told.put("of", new Rescue(database, pages).run(into));
            }
            try (Store store = Store.upToDate(passing, Migrations.KNOWN)) {
                store.readAll();
            }
        });
        return told.get("of");
    }

    private static byte[] bytes(Path damaged) throws StoreException {
        try {
            if (Files.size(damaged) > LARGEST) {
                throw StoreException.Failed.tooLarge(damaged);
            }
            return Files.readAllBytes(damaged);
        } catch (IOException failure) {
            throw Failures.of(damaged, failure);
        }
    }

    /** The version that the file says it has, or the newest where what it says makes no sense. */
    private static int version(byte[] bytes) {
        int said = bytes.length < Heading.LENGTH ? 0 : Heading.versionOf(bytes);
        return said >= 1 && said <= Migrations.KNOWN.newest() ? said : Migrations.KNOWN.newest();
    }

    private Rescued run(Path into) throws StoreException {
        findOwners();
        database.execute("PRAGMA foreign_keys = OFF");
        StandIns standIns = new StandIns(database);
        database.transaction(() -> {
            for (FoundRow row : file.rows()) {
                take(row);
            }
            standIns.fill();
            standIns.dropped().forEach((table, rows) -> refused.merge(table, rows, Integer::sum));
            Soundness.checkReferences(database);
        });
        database.execute("PRAGMA foreign_keys = ON");
        Map<String, Integer> saved = new LinkedHashMap<>(Copy.rows(database));
        Set<Integer> lost = file.unreadablePages();
        lost.removeAll(ofIndexes);
        long broken = file.brokenRows().stream()
                .filter(page -> !ofIndexes.contains(page))
                .count();
        return new Rescued(into, saved, refused, (int) broken, lost.size(), file.pages(), doubtful, standIns.names());
    }

    /** The file's own list of its tables says which pages are whose, as far as it can be read. */
    private void findOwners() {
        for (FoundRow row : file.rows()) {
            List<Object> values = row.values();
            if (row.page() != 1 && !file.below(1).contains(row.page()) || values.size() != 5) {
                continue;
            }
            if (values.get(0) instanceof String kind
                    && values.get(1) instanceof String name
                    && values.get(3) instanceof Long root) {
                Set<Integer> pages = file.below(root.intValue());
                if (kind.equals("table")) {
                    pages.forEach(page -> owners.put(page, name));
                } else {
                    ofIndexes.addAll(pages);
                }
            }
        }
        ofIndexes.removeAll(owners.keySet());
    }

    private void take(FoundRow row) throws StoreException {
        if (ofIndexes.contains(row.page())) {
            return;
        }
        Optional<TableForm> form = form(row);
        if (form.isEmpty()) {
            refuseIfOwned(row);
            return;
        }
        TableForm table = form.get();
        Object[] values = table.values(row);
        if (!sensible(table, values) || !keep(table, values)) {
            refused.merge(table.name(), 1, Integer::sum);
        } else if (!row.whole()) {
            doubtful++;
        }
    }

    /** The one table that the row fits; where its page is known to be of a table, only that one. */
    private Optional<TableForm> form(FoundRow row) {
        String owner = owners.get(row.page());
        List<TableForm> fitting = forms.stream()
                .filter(form -> owner == null || form.name().equals(owner))
                .filter(form -> form.fits(row))
                .toList();
        return fitting.size() == 1 || owner != null ? fitting.stream().findFirst() : Optional.empty();
    }

    private void refuseIfOwned(FoundRow row) {
        String owner = owners.get(row.page());
        if (owner != null && forms.stream().anyMatch(form -> form.name().equals(owner))) {
            refused.merge(owner, 1, Integer::sum);
        }
    }

    /** Whether the program could read the row again. */
    private static boolean sensible(TableForm table, Object[] values) {
        try {
            for (String column : DATES.getOrDefault(table.name(), List.of())) {
                text(table, values, column).ifPresent(IsoDates::date);
            }
            for (String column : TIMES.getOrDefault(table.name(), List.of())) {
                text(table, values, column).ifPresent(IsoDates::time);
            }
            return WORDS.getOrDefault(table.name(), List.of()).stream()
                    .noneMatch(column -> text(table, values, column).orElse("").isBlank());
        } catch (DateTimeException noDate) {
            return false;
        }
    }

    private static Optional<String> text(TableForm table, Object[] values, String column) {
        return Optional.ofNullable((String) table.value(values, column));
    }

    /** Whether the row is in the new file now; a row that was found twice is there once. */
    private boolean keep(TableForm table, Object[] values) throws StoreException {
        try {
            // a row that breaks a rule of the table is passed over, as is one that is there already
            return database.change(table.insertion(), values) == 1 || there(table, values);
        } catch (StoreException.Constraint broken) {
            return false;
        }
    }

    private boolean there(TableForm table, Object[] values) throws StoreException {
        String same = String.join(
                " AND ",
                table.columns().stream().map(column -> column.name() + " IS ?").toList());
        return !database.query("SELECT 1 AS n FROM " + table.name() + " WHERE " + same, row -> row.number("n"), values)
                .isEmpty();
    }
}
