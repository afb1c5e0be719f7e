package roundwright.command;

import java.io.PrintWriter;

/** Prints lines in their order though they come in another, each as soon as all before it are known. */
final class InOrder {
    private final PrintWriter out;
    private final String[] waiting;
    private int next;

    /** Lines numbered from 0 up to {@code size}; some may never come. */
    InOrder(PrintWriter out, int size) {
        this.out = out;
        this.waiting = new String[size];
    }

    /** Takes the line of a number; an empty one is not printed. */
    void put(int number, String line) {
        waiting[number] = line;
        while (next < waiting.length && waiting[next] != null) {
            print();
        }
    }

    /** Prints what still waits for lines that did not come. */
    void end() {
        while (next < waiting.length) {
            print();
        }
    }

    private void print() {
        if (waiting[next] != null && !waiting[next].isEmpty()) {
            out.println(waiting[next]);
        }
        waiting[next++] = null;
    }
}
