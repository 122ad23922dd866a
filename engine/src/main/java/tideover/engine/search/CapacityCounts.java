package tideover.engine.search;

import java.util.Arrays;

/**
 * How many outages each of a few store capacities carries: needs are counted as they come, none is kept.
 */
final class CapacityCounts {
    /** Room for rounding between the sums of the screening and those of the walk, Wh. */
    private static final double BREATH_WH = 1e-7;

    private static final int SLOTS = 2048;

    private final double[] capacitiesWh;
    private final double slotsPerWh;
    private final int[] firstOfSlot = new int[SLOTS];
    private final long[] met;
    private long outages;

    /** @param capacitiesWh inside the store; any order, repeats allowed */
    CapacityCounts(double[] capacitiesWh) {
        this.capacitiesWh = Arrays.stream(capacitiesWh).sorted().distinct().toArray();
        this.met = new long[this.capacitiesWh.length + 1];
        double mostWh = this.capacitiesWh.length == 0 ? 1 : this.capacitiesWh[this.capacitiesWh.length - 1];
        this.slotsPerWh = SLOTS / Math.max(1e-9, mostWh);
        int first = 0;
        for (int slot = 0; slot < SLOTS; slot++) {
            // Of all needs in the slot none is met by what does not reach its beginning; one slot less, for rounding.
            while (first < this.capacitiesWh.length && this.capacitiesWh[first] + BREATH_WH < (slot - 1) / slotsPerWh) {
                first++;
            }
            firstOfSlot[slot] = first;
        }
    }

    /** Counts the capacities that outages need. */
    void add(double[] neededWh) {
        // Neighbours need much alike: mostly the capacity that meets the last is the first that meets the next.
        int first = 0;
        double aboveWh = Double.NEGATIVE_INFINITY;
        double enoughWh = aboveWh;
        for (double needed : neededWh) {
            if (!(needed > aboveWh && needed <= enoughWh)) {
                first = firstThatMeets(needed);
                aboveWh = first == 0 ? Double.NEGATIVE_INFINITY : capacitiesWh[first - 1] + BREATH_WH;
                enoughWh = first == capacitiesWh.length ? Double.POSITIVE_INFINITY : capacitiesWh[first] + BREATH_WH;
            }
            met[first]++;
        }
        outages += neededWh.length;
    }

    /** Looked up by its slot, then the few that share it: halving an array of hundreds costs more than the pass that asks. */
    private int firstThatMeets(double needed) {
        int slot = (int) Math.max(0, Math.min(SLOTS - 1.0, needed * slotsPerWh));
        int first = firstOfSlot[slot];
        while (first < capacitiesWh.length && capacitiesWh[first] + BREATH_WH < needed) {
            first++;
        }
        return first;
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
