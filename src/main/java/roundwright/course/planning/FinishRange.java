package roundwright.course.planning;

import java.time.LocalDate;
import java.util.Optional;

/**
 * When a student finishes: with a probability of 80 % between the earliest and the latest.
 *
 * @param earliest in one of ten cases it is done before; empty where even that lies after the last session
 * @param middle done by then in half of all cases; empty where that lies after the last session
 * @param latest in one of ten cases it is not done by then; empty where that lies after the last session
 * @param leastMinutes minutes of sessions up to the end, the lower end of the 80 %
 * @param mostMinutes the upper end
 * @param inTime probability that it is done by the last session
 */
public record FinishRange(
        Optional<LocalDate> earliest,
        Optional<LocalDate> middle,
        Optional<LocalDate> latest,
        double leastMinutes,
        double mostMinutes,
        double inTime) {}
