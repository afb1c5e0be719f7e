package roundwright.store;

import java.util.List;

/** What the file remembers for the program. */
final class SettingStore implements Shelf<Setting> {
    private final Database database;

    SettingStore(Database database) {
        this.database = database;
    }

    @Override
    public List<Setting> all() throws StoreException {
        return database.query(
                "SELECT name, value FROM setting ORDER BY name",
                row -> new Setting(row.text("name"), row.text("value")));
    }

    @Override
    public void insert(Setting setting) throws StoreException {
        database.write(1, "INSERT INTO setting (name, value) VALUES (?, ?)", setting.name(), setting.value());
    }

    @Override
    public void replace(Setting before, Setting after) throws StoreException {
        database.write(1, "UPDATE setting SET value = ? WHERE name = ?", after.value(), before.name());
    }

    @Override
    public void delete(Setting setting) throws StoreException {
        database.write(1, "DELETE FROM setting WHERE name = ?", setting.name());
    }
}
