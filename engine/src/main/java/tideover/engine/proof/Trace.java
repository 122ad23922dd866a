package tideover.engine.proof;

import java.util.List;

/**
 * One outage walked step by step.
 *
 * @param startHour    hour of the weather years in which it began, counted through all years
 * @param stepHours    length of a step
 * @param capacityWh   of the store
 * @param hoursCarried until the first essential watt was missing, or the outage's length
 * @param ledger       the sums
 */
public record Trace(
        int startHour, double stepHours, double capacityWh, double hoursCarried, Ledger ledger, List<TraceStep> steps) {
    public Trace {
        steps = List.copyOf(steps);
    }
}
