package roundwright.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A program that brings a file to the next version, at length; made to be killed meanwhile. */
public final class MigratingChild {
    private MigratingChild() {}

    /** A step of the future that builds the largest table anew, as a change of a column's rules does. */
    private record NextForm(int version) implements Migration {
        @Override
        public void apply(Database database) throws StoreException {
            System.out.println("begun");
            database.execute("ALTER TABLE student ADD COLUMN hook TEXT NOT NULL DEFAULT ''");
            for (int time = 0; time < 6; time++) {
                database.execute("CREATE TABLE anew (id INTEGER PRIMARY KEY, text TEXT NOT NULL) STRICT");
                database.execute("INSERT INTO anew SELECT id, hex(randomblob(600)) FROM report");
                database.execute("DROP TABLE anew");
                database.execute("UPDATE report SET note = note || '.'");
            }
        }
    }

    static Migrations next() {
        List<Migration> steps = new ArrayList<>(Migrations.KNOWN.steps());
        steps.add(new NextForm(steps.size() + 1));
        return new Migrations(steps);
    }

    /** Arguments: the file, the folder for backups. */
    public static void main(String[] arguments) throws StoreException {
        Store.open(Path.of(arguments[0]), Path.of(arguments[1]), next()).close();
        System.out.println("done");
    }
}
