package tideover.engine.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class TwoWellsTest {
    private static final long SEED = Long.getLong("tideover.seed", 20_261L);

    private static TwoWells some(Random random) {
        return new TwoWells(.05 + .9 * random.nextDouble(), StrictMath.exp(-4 + 7 * random.nextDouble()));
    }

    @Test
    void twoHalfStepsAreOneAndChargeIsConserved() {
        Random random = new Random(SEED);
        for (int trial = 0; trial < 2000; trial++) {
            TwoWells wells = some(random);
            double hours = 10 * random.nextDouble();
            double available = 100 * random.nextDouble();
            double all = available + 100 * random.nextDouble();
            double current = 40 * random.nextDouble() - 20;
            WellStep whole = wells.step(hours);
            WellStep half = wells.step(hours / 2);
            double between = half.available(available, all, current);
            double twice = half.available(between, half.all(all, current), current);
            assertThat(whole.available(available, all, current))
                    .as("seed %d, trial %d", SEED, trial)
                    .isCloseTo(twice, within(1e-9 * (all + Math.abs(current) * hours)));
            assertThat(whole.all(all, current)).isCloseTo(all - current * hours, within(1e-9));
        }
    }

    @Test
    void aStepOfNoTimeChangesNothing() {
        assertThat(new TwoWells(.3, 1.2).step(0).available(20, 80, 50)).isEqualTo(20);
        assertThat(TwoWells.ONE_WELL.step(0).available(80, 80, 50)).isEqualTo(80);
    }

    /** Full heads stay level at rest, from any content. */
    @Test
    void levelHeadsStayLevel() {
        TwoWells wells = new TwoWells(.3, 1.2);
        assertThat(wells.step(7).available(.3 * 44, 44, 0)).isCloseTo(.3 * 44, within(1e-12));
    }

    @Test
    void theInstantOfEmptinessIsWhereTheContentIsNothing() {
        Random random = new Random(SEED);
        for (int trial = 0; trial < 2000; trial++) {
            TwoWells wells = some(random);
            double available = 30 * random.nextDouble() + 1e-6;
            double bound = 70 * random.nextDouble();
            double current = StrictMath.exp(8 * random.nextDouble() - 4);
            double hours = wells.hoursToEmpty(available, bound, current);
            double all = available + bound;
            assertThat(hours).isPositive().isLessThanOrEqualTo(all / current * (1 + 1e-12));
            assertThat(wells.step(hours).available(available, all, current))
                    .as("seed %d, trial %d", SEED, trial)
                    .isCloseTo(0, within(1e-9 * all));
            for (int part = 1; part < 20; part++) {
                assertThat(wells.step(hours * part / 20).available(available, all, current))
                        .isPositive();
            }
        }
    }

    /** By the capacity equation a full battery lasts T at capacity(T)/T. */
    @Test
    void capacityIsTheLifeTurnedRound() {
        Random random = new Random(SEED);
        for (int trial = 0; trial < 500; trial++) {
            TwoWells wells = some(random);
            double hours = .1 + 100 * random.nextDouble();
            double current = wells.capacity(hours) / hours;
            double c = wells.availableShare();
            assertThat(wells.hoursToEmpty(c, 1 - c, current)).isCloseTo(hours, within(1e-8 * hours));
        }
    }

    @Test
    void edgesOfTheLife() {
        TwoWells wells = new TwoWells(.3, 1.2);
        assertThat(wells.hoursToEmpty(0, 50, 5)).isZero();
        assertThat(wells.hoursToEmpty(10, 50, 0)).isInfinite();
        assertThat(wells.hoursToEmpty(10, 50, -1)).isInfinite();
        assertThat(TwoWells.ONE_WELL.hoursToEmpty(50, 0, 5)).isEqualTo(10);
        assertThat(TwoWells.ONE_WELL.capacity(.01)).isEqualTo(1);
    }

    /** What is missing flows as what is there: filling takes the time that emptying the same would. */
    @Test
    void fillingIsEmptyingOfWhatIsMissing() {
        TwoWells wells = new TwoWells(.3, 1.2);
        double available = 12;
        double all = 60;
        double hours = wells.hoursToEmpty(30 - available, 70 - (all - available), 8);
        assertThat(wells.step(hours).available(available, all, -8)).isCloseTo(30, within(1e-9));
    }

    @Test
    void aSmallShareNearAWholeTankIsContinuous() {
        WellStep nearly = new TwoWells(1 - 1e-9, 1.2).step(3);
        WellStep tank = TwoWells.ONE_WELL.step(3);
        assertThat(nearly.available(80, 80, 5)).isCloseTo(tank.available(80, 80, 5), within(1e-6));
    }

    /** Held full, the second well takes its share of what is missing: small steps of the current say the same. */
    @Test
    void absorptionIsTheSumOfItsCurrents() {
        TwoWells wells = new TwoWells(.3, 1.2);
        double missing = 40;
        double sum = 0;
        int steps = 200_000;
        for (int i = 0; i < steps; i++) {
            sum += wells.absorbingCurrent(missing - sum) * 5 / steps;
        }
        assertThat(wells.absorbed(missing, 5)).isCloseTo(sum, within(1e-3));
        assertThat(wells.absorbed(missing, 1e4)).isCloseTo(missing, within(1e-9));
        assertThat(TwoWells.ONE_WELL.absorbed(0, 5)).isZero();
        // The same flow by the step itself: hold the first well full through many short steps.
        double bound = 30;
        double available = 30;
        WellStep step = wells.step(5.0 / steps);
        for (int i = 0; i < steps; i++) {
            double all = available + bound;
            double current = step.currentFor(30, available, all);
            available = step.available(available, all, current);
            bound = step.all(all, current) - available;
        }
        assertThat(bound - 30).isCloseTo(wells.absorbed(40, 5), within(1e-3));
    }
}
