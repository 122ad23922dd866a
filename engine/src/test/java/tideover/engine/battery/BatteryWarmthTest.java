package tideover.engine.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tideover.engine.quantity.Series;

class BatteryWarmthTest {
    private static final long SEED = Long.getLong("tideover.seed", 20_263L);
    private static final double KG = 30;
    private static final double LAG_H = BatteryWarmth.lagH(KG, Chemistry.AGM_LEAD);
    private static final double LOSS = BatteryWarmth.lossWPerK(KG, Chemistry.AGM_LEAD);

    private static Series step(double before, double after, int hours) {
        double[] degC = new double[hours];
        Arrays.fill(degC, 0, hours / 2, before);
        Arrays.fill(degC, hours / 2, hours, after);
        return Series.owning(degC);
    }

    @Test
    void lagsAreOfAFewHours() {
        assertThat(LAG_H).isBetween(3.0, 5.0);
        assertThat(BatteryWarmth.lagH(11, Chemistry.IRON_PHOSPHATE)).isBetween(1.0, 3.0);
        assertThat(BatteryWarmth.lagH(60, Chemistry.AGM_LEAD)).isGreaterThan(LAG_H);
    }

    /** The neglected heat of its own at a tenth of 100 Ah: .2 K for lead, .8 K for iron phosphate. */
    @Test
    void ownHeatIsSmallAtSlowRates() {
        double lead = 10 * 10 * Chemistry.AGM_LEAD.traits().innerOhm(12, 100) / LOSS;
        double iron = 10
                * 10
                * Chemistry.IRON_PHOSPHATE.traits().innerOhm(12.8, 100)
                / BatteryWarmth.lossWPerK(11, Chemistry.IRON_PHOSPHATE);
        assertThat(lead).isCloseTo(.2, within(.05));
        assertThat(iron).isCloseTo(.8, within(.05));
    }

    /** The closed answer of a first-order lag. */
    @Test
    void aStepIsFollowed() {
        BatteryWarmth warmth = BatteryWarmth.of(step(20, 0, 400), KG, Chemistry.AGM_LEAD, 0, 5);
        assertThat(warmth.degC().at(199)).isCloseTo(20, within(1e-6));
        for (int hour = 0; hour < 20; hour++) {
            assertThat(warmth.degC().at(200 + hour)).isCloseTo(20 * StrictMath.exp(-(hour + 1) / LAG_H), within(1e-6));
        }
        assertThat(warmth.heaterW().sum()).isZero();
    }

    /** The first hours follow the last: room cold at the end, battery still cold at the start. */
    @Test
    void yearsGoRound() {
        BatteryWarmth warmth = BatteryWarmth.of(step(20, 0, 400), KG, Chemistry.AGM_LEAD, 0, 5);
        assertThat(warmth.degC().at(0)).isCloseTo(20 * (1 - StrictMath.exp(-1 / LAG_H)), within(1e-6));
    }

    /** A heater that is strong enough holds, and in the end draws what is lost. */
    @Test
    void aStrongHeaterHolds() {
        BatteryWarmth warmth = BatteryWarmth.of(step(20, -10, 400), KG, Chemistry.AGM_LEAD, 1000, 5);
        for (int hour = 0; hour < 400; hour++) {
            assertThat(warmth.degC().at(hour)).isGreaterThanOrEqualTo(5 - 1e-9);
        }
        assertThat(warmth.degC().at(399)).isEqualTo(5);
        assertThat(warmth.heaterW().at(399)).isCloseTo(LOSS * 15, within(1e-9));
        // The first cold hours need none: it falls from 20 degC, and passes 5 after lag * ln 2.
        assertThat(warmth.heaterW().at(200)).isZero();
        int passes = (int) (LAG_H * StrictMath.log(2));
        double share = passes + 1 - LAG_H * StrictMath.log(2);
        assertThat(warmth.heaterW().at(200 + passes)).isCloseTo(LOSS * 15 * share, within(1e-4));
    }

    /** A weak one only lifts the battery by its watts over the loss. */
    @Test
    void aWeakHeaterLiftsByItsWatts() {
        double watts = LOSS * 6;
        BatteryWarmth warmth = BatteryWarmth.of(step(20, -10, 400), KG, Chemistry.AGM_LEAD, watts, 5);
        assertThat(warmth.degC().at(399)).isCloseTo(-4, within(1e-6));
        assertThat(warmth.heaterW().at(399)).isCloseTo(watts, within(1e-9));
    }

    /** Against the equation in a thousand small steps an hour with a thermostat, in weather that goes up and down. */
    @Test
    void smallStepsSayTheSame() {
        Random random = new Random(SEED);
        double[] room = new double[300];
        for (int hour = 0; hour < room.length; hour++) {
            room[hour] = 12 * StrictMath.sin(hour / 7.0) + 8 * random.nextGaussian();
        }
        for (double heaterW : new double[] {0, 10, 30, 200}) {
            BatteryWarmth warmth = BatteryWarmth.of(Series.of(room), KG, Chemistry.AGM_LEAD, heaterW, 5);
            int parts = 4000;
            double now = warmth.degC().at(0);
            double sum = 0;
            for (int hour = 1; hour < room.length; hour++) {
                for (int part = 0; part < parts; part++) {
                    double hold = LOSS * (5 - room[hour]) + LOSS * LAG_H * parts * (5 - now);
                    double watts = Math.max(0, Math.min(heaterW, hold));
                    now += (room[hour] + watts / LOSS - now) / LAG_H / parts;
                    sum += watts / parts;
                }
                assertThat(warmth.degC().at(hour))
                        .as("seed %d, heater %s, hour %d", SEED, heaterW, hour)
                        .isCloseTo(now, within(.005));
            }
            assertThat(warmth.heaterW().sum() - warmth.heaterW().at(0)).isCloseTo(sum, within(1 + 1e-3 * sum));
        }
    }

    /** Heat in less heat lost is what the battery holds more: over the whole round nothing is left. */
    @Test
    void heatIsConservedOverTheRound() {
        Series room = step(2, -12, 400);
        BatteryWarmth warmth = BatteryWarmth.of(room, KG, Chemistry.AGM_LEAD, 25, 5);
        double rise = warmth.degC().at(399) - warmth.degC().at(0);
        double lost = 0;
        for (int hour = 1; hour < 400; hour++) {
            double from = warmth.degC().at(hour - 1);
            double to = warmth.degC().at(hour);
            // Mean of the battery's temperature in the hour, by the balance itself where the heat is steady in the
            // hour.
            lost += (from + to) / 2 - room.at(hour);
        }
        double heat = warmth.heaterW().sum() - warmth.heaterW().at(0);
        assertThat(heat).isCloseTo(LOSS * (lost + LAG_H * rise), within(.01 * heat));
    }
}
