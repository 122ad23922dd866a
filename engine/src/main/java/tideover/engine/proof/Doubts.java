package tideover.engine.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import tideover.engine.electronics.InverterLoss;
import tideover.engine.load.Load;
import tideover.engine.part.InverterRating;
import tideover.engine.part.PlainStore;
import tideover.engine.part.RatedStore;
import tideover.engine.part.Store;
import tideover.engine.quantity.RandomStream;
import tideover.engine.rig.Rig;

/**
 * What the unknown does to the carried share: every doubt is let go through its range, one by one and all together.
 *
 * <p>Together: {@link #DRAWS} draws by Latin hypercube (McKay, Beckman and Conover 1979, Technometrics 21), half of each
 * doubt's chance below the figure taken and half above, straight within either half. The spread is the middle nine tenths
 * of those shares, moved to the share that the whole proof found, and joined with that share's own interval as independent errors are: by
 * the root of the squares. To keep it quick each case walks some of the weather years at some of the hours; the difference to the same
 * walk of the figures as taken is what counts.
 *
 * @param low    of the share, 0..1
 * @param high   of the share
 * @param ranked what to measure first: the widest in share, then in hours
 */
public record Doubts(double low, double high, List<Effect> ranked) {
    static final int DRAWS = 24;
    static final double TAIL = 0.05;

    public Doubts {
        ranked = List.copyOf(ranked);
    }

    /**
     * What one doubt alone does.
     *
     * @param shareAtLeast carried share were the figure the least of its range
     * @param shareAtMost  were it the most
     * @param hoursBetween mean hours carried between the two ends
     */
    public record Effect(Doubt doubt, double shareAtLeast, double shareAtMost, double hoursBetween) {
        /** What measuring it takes out of the share's spread. */
        public double width() {
            return Math.abs(shareAtMost - shareAtLeast);
        }
    }

    /** Whether a doubt means anything to a rig and its loads. */
    private static boolean matters(Doubt doubt, Rig rig) {
        return switch (doubt.kind()) {
            case SUN -> rig.arrayRatedW() > 0;
            case STANDING -> rig.inverter() != null && rig.inverter().standingW() > 0;
            default -> true;
        };
    }

    /**
     * @param some     a prover of some of the years
     * @param proven   the share that the whole proof found
     * @param capHours how far hours are followed
     */
    static Doubts of(
            Prover some, Rig rig, Prover.Case taken, CarriedShare proven, List<Doubt> all, long seed, int capHours) {
        List<Doubt> doubts = all.stream().filter(doubt -> matters(doubt, rig)).toList();
        double[] base = some.score(taken, capHours);
        List<Effect> effects = new ArrayList<>();
        for (Doubt doubt : doubts) {
            double[] least = some.score(changed(taken, List.of(doubt), new double[] {doubt.leastTimes()}), capHours);
            double[] most = some.score(changed(taken, List.of(doubt), new double[] {doubt.mostTimes()}), capHours);
            effects.add(new Effect(
                    doubt,
                    held(proven.share() + least[0] - base[0]),
                    held(proven.share() + most[0] - base[0]),
                    Math.abs(most[1] - least[1])));
        }
        effects.sort(Comparator.comparingDouble(Effect::width)
                .thenComparingDouble(Effect::hoursBetween)
                .reversed());
        double[] shares = new double[DRAWS];
        double[][] times = draws(doubts, seed);
        for (int draw = 0; draw < DRAWS; draw++) {
            shares[draw] =
                    held(proven.share() + some.score(changed(taken, doubts, times[draw]), capHours)[0] - base[0]);
        }
        Arrays.sort(shares);
        double below = Math.max(0, proven.share() - Quantile.of(shares, TAIL));
        double above = Math.max(0, Quantile.of(shares, 1 - TAIL) - proven.share());
        return new Doubts(
                held(proven.share() - StrictMath.hypot(below, proven.share() - proven.low())),
                held(proven.share() + StrictMath.hypot(above, proven.high() - proven.share())),
                effects);
    }

    private static double held(double share) {
        return Math.max(0, Math.min(1, share));
    }

    /** One factor for each draw and doubt: every stratum of a doubt is met once. */
    static double[][] draws(List<Doubt> doubts, long seed) {
        double[][] times = new double[DRAWS][doubts.size()];
        RandomStream random = RandomStream.of(seed, 0, RandomStream.Purpose.DOUBTS);
        for (int d = 0; d < doubts.size(); d++) {
            Doubt doubt = doubts.get(d);
            int[] strata = new int[DRAWS];
            for (int i = 0; i < DRAWS; i++) {
                int at = random.nextIndex(i + 1);
                strata[i] = strata[at];
                strata[at] = i;
            }
            for (int draw = 0; draw < DRAWS; draw++) {
                double place = (strata[draw] + random.nextUniform()) / DRAWS;
                times[draw][d] = place < 0.5
                        ? doubt.leastTimes() + (1 - doubt.leastTimes()) * 2 * place
                        : 1 + (doubt.mostTimes() - 1) * (2 * place - 1);
            }
        }
        return times;
    }

    private static Prover.Case changed(Prover.Case taken, List<Doubt> doubts, double[] times) {
        Rig rig = taken.rig();
        List<Load> loads = taken.loads();
        double sunTimes = taken.sunTimes();
        for (int d = 0; d < times.length; d++) {
            Doubt doubt = doubts.get(d);
            switch (doubt.kind()) {
                case CAPACITY -> rig = rig.with(sized(rig.store(), times[d]));
                case STANDING -> rig = standing(rig, times[d]);
                case SUN -> sunTimes *= times[d];
                default -> loads = doubt.onLoads(loads, times[d]);
            }
        }
        return new Prover.Case(rig, loads, taken.outage(), sunTimes);
    }

    static Store sized(Store store, double times) {
        return store instanceof PlainStore plain ? plain.times(times) : ((RatedStore) store).times(times);
    }

    private static Rig standing(Rig rig, double times) {
        InverterRating inverter = rig.inverter();
        if (inverter == null) {
            return rig;
        }
        InverterLoss loss = inverter.loss();
        return rig.with(inverter.with(loss.withStanding(loss.standingW() * times)));
    }
}
