package tideover.engine.sun;

/** Where a panel or an array works: volts at its terminals and amps out of them. */
public record OperatingPoint(double volts, double amps) {
    public double watts() {
        return volts * amps;
    }
}
