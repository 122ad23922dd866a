package tideover.engine.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.battery.Chemistry;
import tideover.engine.part.Battery;
import tideover.engine.part.Condition;
import tideover.engine.part.Listing;
import tideover.engine.part.RatedStore;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;

/** What batteries cost over the years, worked by hand from the lives of the models page. */
class StandbyCostTest {
    /**
     * Two AGM batteries of 12 V, 100 Ah at 200.00, 95 % of the label, half of it used: 1.14 kWh a cycle. By the calendar 6
     * years; 365 cycles a year of 600: 1/6 + 365/600 = 0.775 of a life a year, so 1.29032 years and 1.14 x 365 x 1.29032 =
     * 536.903 kWh.
     */
    @Test
    void twoLeadBatteriesByHand() {
        StandbyCost cost = Objects.requireNonNull(StandbyCost.of(rig(20_000, Condition.NEW), 25));

        assertThat(cost.priceCents()).isEqualTo(40_000);
        assertThat(cost.kwhPerCycle()).isCloseTo(1.14, within(1e-12));
        assertThat(cost.standbyYears()).isCloseTo(6, within(1e-12));
        assertThat(cost.centsPerStandbyYear()).isCloseTo(6666.67, within(0.005));
        assertThat(cost.dailyYears()).isCloseTo(1.29032, within(0.000005));
        assertThat(cost.centsPerKwh()).isCloseTo(40_000 / 536.903, within(0.0005));
        assertThat(cost.allNew()).isTrue();
    }

    /** Ten kelvin warmer, lead ages twice as fast by the calendar: 3 years; cold lengthens nothing. */
    @Test
    void warmthCostsAndColdSavesNothing() {
        StandbyCost warm = Objects.requireNonNull(StandbyCost.of(rig(20_000, Condition.NEW), 35));
        StandbyCost cold = Objects.requireNonNull(StandbyCost.of(rig(20_000, Condition.NEW), 5));

        assertThat(warm.centsPerStandbyYear()).isCloseTo(13_333.33, within(0.005));
        assertThat(warm.centsPerKwh()).isGreaterThan(cold.centsPerKwh());
        assertThat(cold.centsPerStandbyYear()).isCloseTo(6666.67, within(0.005));
    }

    @Test
    void whatIsNotNewIsMarkedAndWhatCannotBeToldIsLeftOut() {
        assertThat(Objects.requireNonNull(StandbyCost.of(rig(20_000, Condition.USED), 25))
                        .allNew())
                .isFalse();
        assertThat(StandbyCost.of(rig(0, Condition.OWNED), 25)).isNull();
        assertThat(StandbyCost.of(new Invented(3).rig(), 25))
                .as("a plain store: nobody knows its chemistry")
                .isNull();
    }

    private static Rig rig(long cents, Condition condition) {
        RatedStore store = new RatedStore(
                Chemistry.AGM_LEAD,
                RatedStore.Capacity.of(100, 20),
                12,
                Double.NaN,
                20,
                80,
                RatedStore.Guard.UNKNOWN,
                RatedStore.Heater.NONE,
                0.5,
                new RatedStore.Worth(0.95, 1),
                29);
        Listing listing =
                new Listing("B", "invented B", cents, "USD", LocalDate.of(2026, 1, 1), condition, 4, 29, "test");
        Invented invented = new Invented(4);
        return Objects.requireNonNull(Assembly.of(List.of(
                        new Chosen(new Battery(listing, store, 4), 2),
                        new Chosen(invented.inverter("I", 6, 9_000), 1),
                        new Chosen(invented.controller("C", 20, 4_000), 1)))
                .rig());
    }
}
