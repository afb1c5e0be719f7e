package roundwright.desktop.ask;

/** Where a card can be laid over the page. */
public interface Asking {
    /** Lays a card over the page. */
    void ask(Question question);

    /** Takes it away again. */
    void close();
}
