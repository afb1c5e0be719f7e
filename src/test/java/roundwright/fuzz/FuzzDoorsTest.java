package roundwright.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A short run through every door; {@code -Dfuzz.rounds=N -Dseed=N} for more. */
class FuzzDoorsTest {
    private static final int ROUNDS = Integer.getInteger("fuzz.rounds", 2);
    private static final long SEED = Long.getLong("seed", 1);

    @Test
    void noInputBringsAnythingToAPersonThatIsNotASentence() throws Exception {
        FuzzRun run = new FuzzRun();
        for (int round = 0; round < ROUNDS; round++) {
            run.round(SEED + round, 20);
        }
        System.out.println(run.told());
        assertEquals(List.of(), run.failures());
    }
}
