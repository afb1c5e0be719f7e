package roundwright.workbook;

import java.nio.file.Files;
import java.nio.file.Path;
import roundwright.store.StoreException;

/**
 * A program that edits a file on a disk that fails now and then, and says after each step what the file holds as far as it knows: made
 * to be run under a tracer that puts failures in.
 */
public final class FaultyChild {
    private FaultyChild() {}

    /** Arguments: the file, the seed, how many steps. */
    public static void main(String[] arguments) {
        Path file = Path.of(arguments[0]);
        try (Workbook workbook = Files.exists(file) ? EditingChild.open(file) : EditingChild.create(file)) {
            RandomSteps steps = new RandomSteps(workbook, Long.parseLong(arguments[1]), true);
            System.out.println("ok " + print(workbook));
            for (int step = 0; step < Integer.parseInt(arguments[2]); step++) {
                try {
                    steps.take();
                    System.out.println("ok " + print(workbook));
                } catch (StoreException.Unsure unsure) {
                    System.out.println("unsure " + print(workbook));
                } catch (StoreException refused) {
                    System.out.println("no " + print(workbook) + " " + refused.getMessage());
                }
            }
            System.out.println("end");
        } catch (StoreException refused) {
            System.out.println("shut " + refused.getMessage());
        }
    }

    /** A short print of all that a view holds. */
    static String print(Workbook workbook) {
        return Integer.toHexString(Content.of(workbook.view()).hashCode());
    }
}
