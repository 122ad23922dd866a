package tideover.engine.proof;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;

/**
 * One outage walked step by step.
 *
 * @param startHour    hour of the weather years in which it began, counted through all years
 * @param stepHours    length of a step
 * @param capacityWh   of the store
 * @param hoursCarried until the first essential need was no longer kept, or the outage's length
 * @param ending       why it failed; null where it did not
 * @param ledger       the sums
 * @param kept         the loads that switch themselves
 */
public record Trace(
        int startHour,
        double stepHours,
        double capacityWh,
        double hoursCarried,
        @Nullable Ending ending,
        Ledger ledger,
        List<Load> kept,
        List<TraceStep> steps) {
    public Trace {
        kept = List.copyOf(kept);
        steps = List.copyOf(steps);
    }
}
