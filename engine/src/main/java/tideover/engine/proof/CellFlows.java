package tideover.engine.proof;

import org.jspecify.annotations.Nullable;
import tideover.engine.quantity.Series;

/**
 * Demand, sun and the battery's climate over one stretch as flat arrays by the hour, ready for {@link CellWalk}. Belongs to
 * one thread.
 */
final class CellFlows {
    final int stepsPerHour;
    final double stepHours;
    final int stepsPerDay;
    final FlowArrays essential;
    final FlowArrays nice;

    double[] arrayW = {};
    final CellClimate.Hours climate = new CellClimate.Hours();

    /** Amps of the whole array held at even steps of store volts, the steps of one hour side by side. */
    private double[] heldA = {};

    private final int heldSteps;
    private final double leastV;
    private final double perStepV;
    private final double lastPlace;

    private final Series sunPerRatedW;
    private final double arrayRatedW;
    private final CellClimate climateOfYears;
    private final @Nullable HeldArray held;

    CellFlows(
            BusDemand demand,
            Series sunPerRatedW,
            double arrayRatedW,
            CellClimate climateOfYears,
            @Nullable HeldArray held) {
        this.stepsPerHour = demand.stepsPerHour();
        this.stepHours = 1.0 / stepsPerHour;
        this.stepsPerDay = demand.stepsPerDay();
        this.essential = new FlowArrays(stepsPerDay, demand::essential);
        this.nice = new FlowArrays(stepsPerDay, demand::nice);
        this.sunPerRatedW = sunPerRatedW;
        this.arrayRatedW = arrayRatedW;
        this.climateOfYears = climateOfYears;
        this.held = held;
        this.heldSteps = held == null ? 0 : held.amps().size();
        this.leastV = held == null ? 0 : held.leastV();
        this.perStepV = held == null ? 0 : 1 / held.stepV();
        this.lastPlace = heldSteps - 1.000001;
    }

    void fill(Stretch stretch) {
        int hours = stretch.hours();
        int first = stretch.firstStartHour();
        arrayW = copy(sunPerRatedW, first, hours, arrayW);
        for (int hour = 0; hour < hours; hour++) {
            arrayW[hour] *= arrayRatedW;
        }
        climateOfYears.fill(first, hours, climate);
        if (held != null) {
            heldA = heldA.length == hours * heldSteps ? heldA : new double[hours * heldSteps];
            double[] oneStep = new double[hours];
            for (int i = 0; i < heldSteps; i++) {
                held.amps().get(i).copyRound(first, oneStep);
                for (int hour = 0; hour < hours; hour++) {
                    heldA[hour * heldSteps + i] = oneStep[hour];
                }
            }
        }
    }

    private static double[] copy(Series from, int first, int hours, double[] into) {
        double[] copied = into.length == hours ? into : new double[hours];
        from.copyRound(first, copied);
        return copied;
    }

    /** Amps of the array held at the store's volts, straight between the steps. */
    double heldA(int hour, double volts) {
        if (held == null) {
            return 0;
        }
        double place = Math.max(0, Math.min(lastPlace, (volts - leastV) * perStepV));
        int i = (int) place;
        int at = hour * heldSteps + i;
        double lower = heldA[at];
        return lower + (place - i) * (heldA[at + 1] - lower);
    }
}
