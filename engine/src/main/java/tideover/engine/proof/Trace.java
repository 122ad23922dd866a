package tideover.engine.proof;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One outage walked step by step.
 *
 * @param startHour    hour of the weather years in which it began, counted through all years
 * @param stepHours    length of a step
 * @param capacityWh   of the store
 * @param hoursCarried until the first essential watt was missing, or the outage's length
 * @param ending       why it failed; null where it did not
 * @param ledger       the sums
 */
public record Trace(
        int startHour,
        double stepHours,
        double capacityWh,
        double hoursCarried,
        @Nullable Ending ending,
        Ledger ledger,
        List<TraceStep> steps) {
    public Trace {
        steps = List.copyOf(steps);
    }
}
