package tideover.engine.answer;

import tideover.engine.quantity.Require;

/**
 * How the asking is done; never changes what is asked.
 *
 * @param seed          of all randomness; printed in every answer
 * @param years         weather years generated; an imported file has its own number
 * @param confirmYears  years on another seed that the winner must pass too
 * @param stepsPerHour  of the simulation
 * @param threads       how many work beside each other; never changes a figure
 * @param byMass        whether mass against share is told too, which takes a search of its own
 */
public record Options(long seed, int years, int confirmYears, int stepsPerHour, int threads, boolean byMass) {
    public static final Options USUAL = new Options(1, 30, 100, 4, 2);

    public Options(long seed, int years, int confirmYears, int stepsPerHour, int threads) {
        this(seed, years, confirmYears, stepsPerHour, threads, false);
    }

    public Options {
        Require.within(1, 1000, "years", years);
        Require.within(1, 1000, "confirmYears", confirmYears);
        Require.within(1, 60, "stepsPerHour", stepsPerHour);
        Require.within(1, 64, "threads", threads);
    }

    public Options withByMass(boolean asked) {
        return new Options(seed, years, confirmYears, stepsPerHour, threads, asked);
    }

    /** The seed on which a winner is confirmed. */
    public long confirmSeed() {
        return seed + 1;
    }
}
