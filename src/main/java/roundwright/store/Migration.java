package roundwright.store;

/** One step of the file's form, from the version before to its own. */
interface Migration {
    /** The version the file has afterwards; steps are numbered from 1 without a gap. */
    int version();

    /** Changes the form, inside a transaction that the caller holds. */
    void apply(Database database) throws StoreException;
}
