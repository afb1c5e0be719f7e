package roundwright.store;

/** Version 1: courses, groups, students, register, reports, notes, settings. */
final class FirstForm implements Migration {
    @Override
    public int version() {
        return 1;
    }

    @Override
    public void apply(Database database) throws StoreException {
        database.execute(Migrations.script(1));
    }
}
