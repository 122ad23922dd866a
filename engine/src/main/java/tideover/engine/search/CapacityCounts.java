package tideover.engine.search;

import java.util.Arrays;

/**
 * How many outages each of a few store capacities carries: needs are counted as they come, none is kept.
 */
final class CapacityCounts {
    /** Room for rounding between the sums of the screening and those of the walk, Wh. */
    private static final double BREATH_WH = 1e-7;

    private final double[] capacitiesWh;
    private final long[] met;
    private long outages;

    /** @param capacitiesWh inside the store; any order, repeats allowed */
    CapacityCounts(double[] capacitiesWh) {
        this.capacitiesWh = Arrays.stream(capacitiesWh).sorted().distinct().toArray();
        this.met = new long[this.capacitiesWh.length + 1];
    }

    /** Counts the capacities that outages need. */
    void add(double[] neededWh) {
        for (double needed : neededWh) {
            met[firstThatMeets(needed)]++;
        }
        outages += neededWh.length;
    }

    private int firstThatMeets(double needed) {
        int lower = 0;
        int upper = capacitiesWh.length;
        while (lower < upper) {
            int middle = (lower + upper) >>> 1;
            if (capacitiesWh[middle] + BREATH_WH >= needed) {
                upper = middle;
            } else {
                lower = middle + 1;
            }
        }
        return lower;
    }

    /** Share of the outages carried by one of the capacities given, 0..1. */
    double share(double capacityWh) {
        int index = Arrays.binarySearch(capacitiesWh, capacityWh);
        long carried = 0;
        for (int i = 0; i <= index; i++) {
            carried += met[i];
        }
        return (double) carried / outages;
    }
}
