package tideover.engine.cold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** ASHRAE Handbook Refrigeration, Thermal Properties of Foods, table 3. */
class FoodPublishedTest {
    private static final double KJ_PER_WH = 3.6;
    private static final double KJ_PER_BTU_LB = 2.326;
    private static final double KJ_K_PER_BTU_LB_F = 4.1868;

    /** Sums worked out from the table's US figures (.84, .50, 103) for 50 kg of lean beef. */
    @Test
    void aHalfFullFreezerOfBeef() {
        Food printed = new Food("beef", -1.7, .84 * KJ_K_PER_BTU_LB_F, .50 * KJ_K_PER_BTU_LB_F, 103 * KJ_PER_BTU_LB);
        Contents fifty = new Contents(printed, 50, 1);
        double warmWh = -fifty.heatWh(-18);
        double meltWh = fifty.heatWh(Math.nextUp(-1.7));
        assertThat(warmWh * KJ_PER_WH).isCloseTo(1706, within(.5));
        assertThat(meltWh * KJ_PER_WH).isCloseTo(11979, within(.5));
        assertThat((warmWh + meltWh) / 1000).isCloseTo(3.801, within(5e-4));
        assertThat((fifty.heatWh(4.4) - meltWh) / 1000).isCloseTo(.298, within(5e-4));
    }

    /** The constant is the same row in metric: its rounding moves the sum by 2 parts in a thousand at most. */
    @Test
    void theConstantIsThatRow() {
        Contents fifty = Contents.of(Food.LEAN_BEEF, 50);
        assertThat((fifty.heatWh(Math.nextUp(-1.7)) - fifty.heatWh(-18)) / 1000).isCloseTo(3.801, within(.0076));
        assertThat(Food.LEAN_BEEF.aboveKjKgK()).isCloseTo(.84 * KJ_K_PER_BTU_LB_F, within(.005));
        assertThat(Food.LEAN_BEEF.belowKjKgK()).isCloseTo(.50 * KJ_K_PER_BTU_LB_F, within(.005));
        assertThat(Food.LEAN_BEEF.latentKjKg()).isCloseTo(103 * KJ_PER_BTU_LB, within(.5));
    }

    /** 10 kg of ice from -18 degC to water of 0 degC: 1.033 kWh; a kilogram at 0 degC: 92.8 Wh. */
    @Test
    void jugsOfIce() {
        Contents jugs = Contents.of(Food.WATER, 10);
        assertThat((jugs.heatWh(Double.MIN_VALUE) - jugs.heatWh(-18)) / 1000).isCloseTo(1.033, within(5e-4));
        assertThat(Food.WATER.meltWhPerKg()).isCloseTo(92.8, within(.05));
    }

    /** The table's heat of melting is water's times the table's share of water. */
    @Test
    void meltingIsTheWaters() {
        latent(Food.SNAP_BEANS, .9027);
        latent(Food.BROCCOLI, .9069);
        latent(Food.CARROTS, .8779);
        latent(Food.SWEET_CORN, .7596);
    }

    private static void latent(Food food, double waterShare) {
        assertThat(Food.WATER.latentKjKg() * waterShare).as(food.name()).isCloseTo(food.latentKjKg(), within(.5));
    }

    /** An older metric table has 3.22 and 1.67 for beef: none of ours may be that low. */
    @Test
    void theOlderTableIsNotMixedIn() {
        for (Food food : Food.TABLE) {
            assertThat(food.aboveKjKgK()).as(food.name()).isGreaterThan(3.5);
            assertThat(food.belowKjKgK()).as(food.name()).isGreaterThan(1.8);
            assertThat(food.freezingDegC()).as(food.name()).isBetween(-2.2, 0.0);
        }
    }

    /** Heat to warmth and back, over the melting too. */
    @Test
    void heatAndWarmthAreOneCurve() {
        for (Food food : Food.TABLE) {
            Contents lump = Contents.of(food, 7);
            for (double degC = -30; degC <= 20; degC += .37) {
                assertThat(lump.degC(lump.heatWh(degC))).as(food.name()).isCloseTo(degC, within(1e-9));
            }
            double frozen = lump.heatWh(food.freezingDegC());
            double thawed = lump.heatWh(Math.nextUp(food.freezingDegC()));
            // put in at its very freezing point it is all frozen yet
            assertThat(frozen).as(food.name()).isZero();
            assertThat(thawed - frozen).isCloseTo(7 * food.meltWhPerKg(), within(1e-6));
            assertThat(lump.degC((frozen + thawed) / 2)).isEqualTo(food.freezingDegC());
        }
    }
}
