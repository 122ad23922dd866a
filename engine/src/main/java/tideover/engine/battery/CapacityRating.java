package tideover.engine.battery;

import tideover.engine.quantity.Require;

/**
 * A capacity as data sheets state it: so many ampere-hours when emptied at a steady current in so many hours, at 25 degC
 * unless the maker says otherwise.
 */
public record CapacityRating(double hours, double ah) {
    public CapacityRating {
        Require.above(0, "hours", hours, "h");
        Require.above(0, "ah", ah, "Ah");
    }

    /** The steady current, A. */
    public double amps() {
        return ah / hours;
    }
}
