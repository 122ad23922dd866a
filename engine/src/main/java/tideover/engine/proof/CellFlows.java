package tideover.engine.proof;

import java.util.Arrays;
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

    /** Amps of the whole array held at even steps of store volts; empty where the controller seeks the best point. */
    double[][] heldA = {};

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
            if (heldA.length == 0) {
                heldA = new double[held.amps().size()][];
                Arrays.fill(heldA, new double[0]);
            }
            for (int i = 0; i < heldA.length; i++) {
                heldA[i] = copy(held.amps().get(i), first, hours, heldA[i]);
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
        double place = Math.max(0, Math.min(heldA.length - 1.000001, (volts - held.leastV()) / held.stepV()));
        int i = (int) place;
        double lower = heldA[i][hour];
        return lower + (place - i) * (heldA[i + 1][hour] - lower);
    }
}
